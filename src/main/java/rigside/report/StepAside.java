package rigside.report;

import rigside.protocol.BenchTime;
import rigside.protocol.Step;

/** What kind of step it is, and the time it declares. */
record StepAside() implements Step.Cases<String> {

    static String of(Step step) {
        double declared = BenchTime.declared(step);
        String time = declared > 0 ? ", " + Lengths.of(declared) : "";
        String starts = step.startsByItself() ? ", starts by itself" : "";
        return step.match(new StepAside()) + time + starts;
    }

    @Override
    public String checklist(Step.Checklist step) {
        return "checklist";
    }

    @Override
    public String form(Step.Form step) {
        return "form";
    }

    @Override
    public String countdown(Step.Countdown step) {
        return "countdown";
    }

    @Override
    public String exercises(Step.Exercises step) {
        int count = step.exercises().size();
        return count == 1 ? "1 exercise" : count + " exercises";
    }

    /** The pulls themselves take as long as they take. */
    @Override
    public String trials(Step.Trials step) {
        int count = step.count();
        return (count == 1 ? "1 timed inhalation" : count + " timed inhalations")
                + ", lead-ins and rests";
    }

    @Override
    public String observations(Step.Observations step) {
        return "observations";
    }

    @Override
    public String note(Step.Note step) {
        return "note";
    }

    @Override
    public String gates(Step.Gates step) {
        return "gates";
    }
}
