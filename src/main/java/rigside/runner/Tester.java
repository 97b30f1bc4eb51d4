package rigside.runner;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.Function;
import rigside.rig.Asked;
import rigside.rig.Rig;
import rigside.runner.Spot.What;
import rigside.session.Activity;
import rigside.session.Donning;
import rigside.session.Entry;
import rigside.session.Input;
import rigside.session.Place;
import rigside.session.Slot;
import rigside.session.State;

/**
 * A rehearsed tester: presses what a {@link Rehearser} presses, and lets the faults happen that
 * were asked for.
 */
public final class Tester {
    private final Rig rig;
    private final Function<Asked, OptionalDouble> eyes;
    private final Faults faults;
    private Optional<Slot> awaited = Optional.empty();

    /**
     * A tester.
     *
     * @param rig simulated
     */
    public Tester(Rig rig, Faults faults) {
        FaultyRig faulty = new FaultyRig(rig, faults);
        this.rig = faults.asked().isEmpty() ? rig : faulty;
        this.eyes = faults.asked().isEmpty() ? rig::answer : faulty::seen;
        this.faults = faults;
    }

    /** One to whom nothing happens. */
    public static Tester careful(Rig rig) {
        return new Tester(rig, Faults.NONE);
    }

    /** The rig the session is to be run with. */
    public Rig rig() {
        return rig;
    }

    /** The key pressed now; empty while time has to pass. */
    public Optional<Input> key(State state, long now) {
        Activity activity = state.activity();
        for (Faults.At each : faults.due(donning(state))) {
            Optional<Input> key = fault(each, state, activity, now);
            if (key.isPresent()) {
                faults.happened(each);
                return key;
            }
        }
        return isForRig(activity) ? Optional.empty() : Rehearser.key(state, now, eyes);
    }

    /** Instruments are given a tick to answer; what they do not give then is typed. */
    private boolean isForRig(Activity activity) {
        Optional<Slot> reading =
                activity instanceof Activity.Filling filling
                                && !(filling.slot() instanceof Slot.Field)
                        ? Optional.of(filling.slot())
                        : Optional.empty();
        boolean first = reading.isPresent() && !reading.equals(awaited);
        awaited = reading;
        return first;
    }

    /** The one that is open, or the last one. */
    private static int donning(State state) {
        return state.course().open().map(Donning::number).orElse(state.course().donnings().size());
    }

    /** One that was broken off cannot be struck out: the fault then finds no place, and is told. */
    private static boolean isComplete(State state, int donning) {
        return state.course()
                .donning(donning)
                .filter(each -> each.outcome() == Donning.Outcome.COMPLETE)
                .isPresent();
    }

    private Optional<Input> fault(Faults.At at, State state, Activity activity, long now) {
        boolean between =
                activity instanceof Activity.NextDonning
                        || activity instanceof Activity.Recommended;
        return switch (at.fault()) {
            case FAILED_SEAL_CHECK ->
                    activity instanceof Activity.Checking check
                                    && isAt(at, state, check.place(), check.item(), What.CHECK)
                            ? Optional.of(new Input.CheckFailed("rehearsed"))
                            : Optional.empty();
            case NOT_HELD -> notHeld(at, state, activity);
            case LEFT_OUT ->
                    leftOut(at, state, activity)
                            ? Optional.of(new Input.LeaveOutAsked("rehearsed: not read"))
                            : Optional.empty();
            case STOPPED ->
                    isRunning(at, state, activity, now)
                            ? Optional.of(new Input.HaltPressed())
                            : Optional.empty();
            case ABANDONED ->
                    isRunning(at, state, activity, now)
                            ? Optional.of(new Input.AbandonAsked("rehearsed: a strap came loose"))
                            : Optional.empty();
            case DONE_AGAIN ->
                    activity instanceof Activity.Exercising next
                                    && next.startedAt().isEmpty()
                                    && state.retakeable().isPresent()
                                    && isAt(at, state, next.place(), next.exercise(), What.EXERCISE)
                            ? Optional.of(new Input.RetakeAsked("rehearsed: coughed"))
                            : Optional.empty();
            case STRUCK_OUT ->
                    between && isComplete(state, at.donning())
                            ? Optional.of(
                                    new Input.StrikeAsked(at.donning(), "rehearsed: a valve stuck"))
                            : Optional.empty();
            case ENDED_EARLY ->
                    between
                            ? Optional.of(new Input.EndAsked("rehearsed: no more time"))
                            : Optional.empty();
            case FEED_LOST, ODD_VALUE -> Optional.empty();
        };
    }

    /** With a gauge the pull is offered for voiding because of its trace. */
    private Optional<Input> notHeld(Faults.At at, State state, Activity activity) {
        if (activity instanceof Activity.HoldAsked asked
                && isAt(at, state, asked.place(), asked.trial(), What.TRIAL)) {
            return Optional.of(new Input.Answered(false));
        }
        Optional<Slot> offered =
                activity instanceof Activity.VoidAsked asked
                        ? state.captured().entry(asked.entry()).map(Entry::slot)
                        : Optional.empty();
        return offered.filter(Slot.Trial.class::isInstance)
                .map(Slot.Trial.class::cast)
                .filter(trial -> isAt(at, state, trial.place(), trial.trial(), What.TRIAL))
                .map(struck -> new Input.Answered(true));
    }

    private boolean leftOut(Faults.At at, State state, Activity activity) {
        if (activity instanceof Activity.TrialReady ready) {
            return isAt(at, state, ready.place(), ready.trial(), What.TRIAL);
        }
        if (!(activity instanceof Activity.Filling filling)) {
            return false;
        }
        Slot slot = filling.slot();
        return (slot instanceof Slot.Mask mask
                        && isAt(at, state, mask.place(), mask.exercise(), What.MASK))
                || (slot instanceof Slot.Pressure pressure
                        && isAt(at, state, pressure.place(), pressure.exercise(), What.PRESSURE));
    }

    /** Whether what it strikes is half over, or as good as: a moment after it began. */
    private boolean isRunning(Faults.At at, State state, Activity activity, long now) {
        if (activity instanceof Activity.Waiting waiting) {
            return isLater(waiting.startedAt(), now)
                    && isAt(at, state, waiting.place(), 0, What.WAIT);
        }
        if (activity instanceof Activity.Exercising exercising) {
            return isLater(exercising.startedAt(), now)
                    && isAt(at, state, exercising.place(), exercising.exercise(), What.EXERCISE);
        }
        return activity instanceof Activity.Pulling pulling
                && isAt(at, state, pulling.place(), pulling.trial(), What.TRIAL);
    }

    private static boolean isLater(OptionalLong begun, long now) {
        return begun.isPresent() && now > begun.getAsLong();
    }

    private boolean isAt(Faults.At at, State state, Place place, int position, What what) {
        return state.course()
                .open()
                .map(open -> faults.isAt(at, open.condition(), place.step(), position, what))
                .orElse(false);
    }
}
