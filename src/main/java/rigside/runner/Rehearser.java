package rigside.runner;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import rigside.protocol.Step;
import rigside.rig.Asked;
import rigside.session.Activity;
import rigside.session.Input;
import rigside.session.Procedure;
import rigside.session.State;

/**
 * The keys a rehearsed tester presses: does what is asked, types what is plausible, never skips
 * anything.
 *
 * @param eyes what is read off instruments where it has to be typed, SI
 */
record Rehearser(State state, long now, Function<Asked, OptionalDouble> eyes)
        implements Activity.Cases<Optional<Input>> {
    private static final Optional<Input> WAIT = Optional.empty();
    private static final Optional<Input> GO_ON = Optional.of(new Input.GoOnPressed());
    private static final Optional<Input> YES = Optional.of(new Input.Answered(true));

    /** The same where nothing is read off. */
    static Optional<Input> key(State state, long now) {
        return key(state, now, asked -> OptionalDouble.empty());
    }

    /** The key pressed now; empty while time has to pass. */
    static Optional<Input> key(State state, long now, Function<Asked, OptionalDouble> eyes) {
        return state.activity().match(new Rehearser(state, now, eyes));
    }

    @Override
    public Optional<Input> cautions(Activity.Cautions activity) {
        return GO_ON;
    }

    @Override
    public Optional<Input> nextDonning(Activity.NextDonning activity) {
        return GO_ON;
    }

    @Override
    public Optional<Input> checking(Activity.Checking activity) {
        return GO_ON;
    }

    /** What the rig gives comes with the next tick; what it does not give is typed. */
    @Override
    public Optional<Input> filling(Activity.Filling activity) {
        return new Written(state, eyes).of(activity.slot()).map(Input.Typed::new);
    }

    @Override
    public Optional<Input> waiting(Activity.Waiting activity) {
        return activity.startedAt().isEmpty() ? GO_ON : WAIT;
    }

    @Override
    public Optional<Input> exercising(Activity.Exercising activity) {
        return activity.startedAt().isEmpty() ? GO_ON : WAIT;
    }

    @Override
    public Optional<Input> trialReady(Activity.TrialReady activity) {
        return GO_ON;
    }

    @Override
    public Optional<Input> leadIn(Activity.LeadIn lead) {
        Step.Trials step = (Step.Trials) Procedure.step(state, lead.place());
        return now - lead.startedAt() >= step.leadInSeconds() * 1e9
                ? Optional.of(new Input.TriggerPressed())
                : WAIT;
    }

    @Override
    public Optional<Input> pulling(Activity.Pulling activity) {
        return WAIT;
    }

    @Override
    public Optional<Input> tracing(Activity.Tracing activity) {
        return WAIT;
    }

    @Override
    public Optional<Input> holdAsked(Activity.HoldAsked activity) {
        return YES;
    }

    @Override
    public Optional<Input> voidAsked(Activity.VoidAsked activity) {
        return YES;
    }

    @Override
    public Optional<Input> doubting(Activity.Doubting activity) {
        return YES;
    }

    @Override
    public Optional<Input> resting(Activity.Resting activity) {
        return WAIT;
    }

    @Override
    public Optional<Input> reading(Activity.Reading activity) {
        return GO_ON;
    }

    @Override
    public Optional<Input> gating(Activity.Gating activity) {
        return activity.startedAt().isEmpty() ? GO_ON : WAIT;
    }

    /** Read again it would read the same, for all a rehearsal knows. */
    @Override
    public Optional<Input> gateMissed(Activity.GateMissed activity) {
        return Optional.of(new Input.LeaveOutAsked("rehearsed: read again it would read the same"));
    }

    @Override
    public Optional<Input> donningDone(Activity.DonningDone activity) {
        return GO_ON;
    }

    @Override
    public Optional<Input> recommended(Activity.Recommended activity) {
        return GO_ON;
    }

    @Override
    public Optional<Input> halted(Activity.Halted activity) {
        return GO_ON;
    }

    @Override
    public Optional<Input> closing(Activity.Closing activity) {
        return GO_ON;
    }

    @Override
    public Optional<Input> closed(Activity.Closed activity) {
        return WAIT;
    }
}
