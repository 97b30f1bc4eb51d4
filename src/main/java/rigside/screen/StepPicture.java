package rigside.screen;

import java.util.List;
import rigside.protocol.Step;
import rigside.session.Activity;

/** What to do now: one picture for each kind of activity. */
record StepPicture(Scene scene) implements Activity.Cases<List<Line>> {

    static List<Line> of(Scene scene) {
        return scene.state().activity().match(new StepPicture(scene));
    }

    @Override
    public List<Line> cautions(Activity.Cautions activity) {
        return CautionsPicture.of(scene);
    }

    @Override
    public List<Line> nextDonning(Activity.NextDonning activity) {
        return new PausePicture(scene).nextDonning(activity);
    }

    @Override
    public List<Line> checking(Activity.Checking activity) {
        return ChecklistPicture.of(scene, activity);
    }

    @Override
    public List<Line> filling(Activity.Filling activity) {
        return new QuestionPicture(scene, activity.slot()).asked();
    }

    @Override
    public List<Line> waiting(Activity.Waiting activity) {
        Step.Countdown step = scene.step(activity.place(), Step.Countdown.class);
        double left =
                step.seconds()
                        - (activity.startedAt().isEmpty()
                                ? 0
                                : scene.view().secondsSince(activity.startedAt().getAsLong()));
        if (scene.state().isFromPaper()) {
            return Scene.stack(
                    scene.wrapped(step.say()),
                    scene.clock(step.seconds(), scene.columns()),
                    scene.strong("[Enter] when the form says that it was done."));
        }
        String go =
                activity.startedAt().isEmpty()
                        ? "[Enter] starts the clock."
                        : "It goes on by itself when the time is over.";
        return Scene.stack(
                scene.wrapped(step.say()), scene.clock(left, scene.columns()), scene.strong(go));
    }

    @Override
    public List<Line> exercising(Activity.Exercising activity) {
        return ExercisePicture.of(scene, activity);
    }

    @Override
    public List<Line> trialReady(Activity.TrialReady activity) {
        return TrialPicture.of(scene, activity.place(), activity.trial()).ready();
    }

    @Override
    public List<Line> leadIn(Activity.LeadIn activity) {
        return TrialPicture.of(scene, activity.place(), activity.trial())
                .leadIn(activity.startedAt());
    }

    @Override
    public List<Line> pulling(Activity.Pulling activity) {
        return TrialPicture.of(scene, activity.place(), activity.trial())
                .pulling(activity.startedAt());
    }

    @Override
    public List<Line> tracing(Activity.Tracing activity) {
        return TrialPicture.of(scene, activity.place(), activity.trial()).tracing();
    }

    @Override
    public List<Line> holdAsked(Activity.HoldAsked activity) {
        return TrialPicture.of(scene, activity.place(), activity.trial()).holdAsked(activity.why());
    }

    @Override
    public List<Line> voidAsked(Activity.VoidAsked activity) {
        return new QuestionPicture(
                        scene,
                        scene.state().captured().entry(activity.entry()).orElseThrow().slot())
                .voidAsked(activity);
    }

    @Override
    public List<Line> doubting(Activity.Doubting activity) {
        return new QuestionPicture(scene, activity.slot()).doubted(activity);
    }

    @Override
    public List<Line> resting(Activity.Resting activity) {
        return TrialPicture.of(scene, activity.place(), activity.trial()).resting(activity.since());
    }

    @Override
    public List<Line> reading(Activity.Reading activity) {
        return Scene.stack(
                scene.strong(scene.step(activity.place(), Step.Note.class).say()),
                scene.wrapped("[Enter] when it is read, or done."));
    }

    @Override
    public List<Line> gating(Activity.Gating activity) {
        return GatePicture.of(scene, activity.place(), activity.gate()).reading(activity);
    }

    @Override
    public List<Line> gateMissed(Activity.GateMissed activity) {
        return GatePicture.of(scene, activity.place(), activity.gate()).missed(activity);
    }

    @Override
    public List<Line> donningDone(Activity.DonningDone activity) {
        return new PausePicture(scene).donningDone(activity);
    }

    @Override
    public List<Line> recommended(Activity.Recommended activity) {
        return new PausePicture(scene).recommended(activity);
    }

    @Override
    public List<Line> halted(Activity.Halted activity) {
        return new PausePicture(scene).halted(activity);
    }

    @Override
    public List<Line> closing(Activity.Closing activity) {
        return new PausePicture(scene).closing();
    }

    @Override
    public List<Line> closed(Activity.Closed activity) {
        return new PausePicture(scene).closed();
    }
}
