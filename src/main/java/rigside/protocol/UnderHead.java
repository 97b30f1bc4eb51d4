package rigside.protocol;

/** A step as it is, but under another head. */
record UnderHead(Step.Head head) implements Step.Cases<Step> {
    @Override
    public Step checklist(Step.Checklist step) {
        return new Step.Checklist(head, step.items());
    }

    @Override
    public Step form(Step.Form step) {
        return new Step.Form(head, step.fields());
    }

    @Override
    public Step countdown(Step.Countdown step) {
        return new Step.Countdown(head, step.starting(), step.seconds());
    }

    @Override
    public Step exercises(Step.Exercises step) {
        return new Step.Exercises(
                head,
                step.starting(),
                step.fitFactor(),
                step.pressureTrace(),
                step.unit(),
                step.pressureUnit(),
                step.entering(),
                step.ambientMayMove(),
                step.exercises());
    }

    @Override
    public Step trials(Step.Trials step) {
        return new Step.Trials(
                head,
                step.starting(),
                step.measure(),
                step.count(),
                step.target(),
                step.tolerance(),
                step.heldShare(),
                step.leadInSeconds(),
                step.restSeconds(),
                step.shortest(),
                step.longest());
    }

    @Override
    public Step observations(Step.Observations step) {
        return new Step.Observations(head, step.fields());
    }

    @Override
    public Step note(Step.Note step) {
        return new Step.Note(head);
    }

    @Override
    public Step gates(Step.Gates step) {
        return new Step.Gates(head, step.unit(), step.gates());
    }
}
