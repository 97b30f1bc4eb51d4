package rigside.session;

import java.util.List;
import java.util.Optional;
import rigside.protocol.IfNot;
import rigside.protocol.Protocol;
import rigside.protocol.Step;

/**
 * Where a session stands: the fold of its events. Never changes; two are equal when their parts
 * are.
 *
 * <p>No record, because what is going on now follows from all the rest, is asked for many times
 * between two events, and is therefore reckoned only once.
 */
public final class State {

    /** Before the first event. */
    public static final State START =
            new State(Optional.empty(), Course.START, Captured.START, Doing.START, Failing.NONE);

    private final Optional<Opening> opening;
    private final Course course;
    private final Captured captured;
    private final Doing doing;
    private final Failing feeds;

    /** Null until it was asked for; threads that ask at the same time reckon the same. */
    private Activity activity;

    State(Optional<Opening> opening, Course course, Captured captured, Doing doing, Failing feeds) {
        this.opening = opening;
        this.course = course;
        this.captured = captured;
        this.doing = doing;
        this.feeds = feeds;
    }

    /** How it was opened; empty only before the first event. */
    public Optional<Opening> opening() {
        return opening;
    }

    /** How far the procedure has come. */
    public Course course() {
        return course;
    }

    /** Everything that was captured. */
    public Captured captured() {
        return captured;
    }

    /** What of the procedure is going on, and its clocks. */
    public Doing doing() {
        return doing;
    }

    /** Which instruments fail. */
    public Failing feeds() {
        return feeds;
    }

    /**
     * How the session was opened.
     *
     * @param event the first event
     * @param protocol its protocol, read
     * @param selfTest what the last self-test before it found, if there was one
     */
    public record Opening(
            Event.SessionOpened event, Protocol protocol, Optional<Event.SelfTested> selfTest) {}

    /**
     * The protocol of an opened session.
     *
     * @throws java.util.NoSuchElementException before the first event
     */
    public Protocol protocol() {
        return opening.orElseThrow().protocol();
    }

    /** Seconds of session time in one second of the real clock; 1 before the first event. */
    public double speed() {
        return opening.map(opened -> opened.event().speed()).orElse(1.0);
    }

    /** Whether a form filled in by hand is typed in: nothing is timed then. */
    public boolean isFromPaper() {
        return opening.flatMap(opened -> opened.event().paper()).isPresent();
    }

    /** What is going on now. */
    public Activity activity() {
        Activity known = activity;
        if (known == null) {
            known = Procedure.activity(this);
            activity = known;
        }
        return known;
    }

    /**
     * Whether rounds became complete, or values of complete rounds were struck out, since the last
     * look.
     */
    public boolean lookDue() {
        return Schedule.lookDue(this);
    }

    /** Whether there is something that undo takes back. */
    public boolean isUndoable() {
        return doing().running().isEmpty() && Undo.of(this).isPresent();
    }

    /**
     * The exercises step whose last exercise was just done, and can be done again; empty when there
     * is none.
     */
    public Optional<Place> retakeable() {
        Activity activity = activity();
        Optional<Place> place = Optional.empty();
        if (activity instanceof Activity.Exercising exercising
                && exercising.startedAt().isEmpty()) {
            place = Optional.of(exercising.place());
        } else if (activity instanceof Activity.Filling filling
                && Procedure.exerciseOf(filling.slot()) >= 0) {
            place = Optional.of(filling.slot().place());
        }
        return place.filter(each -> course.progress(each) > 0);
    }

    /** The gate that was read without a value coming of it, and can be read again. */
    public Optional<Slot.Gate> rereadable() {
        return activity() instanceof Activity.Filling filling
                        && filling.slot() instanceof Slot.Gate gate
                        && !isFromPaper()
                ? Optional.of(gate)
                : Optional.empty();
    }

    /** Whether what would be left out now is a gate, which is gone past all the same. */
    public boolean isAtGate() {
        Activity now = activity();
        return now instanceof Activity.Gating
                || now instanceof Activity.GateMissed
                || (now instanceof Activity.Filling filling && filling.slot() instanceof Slot.Gate);
    }

    /**
     * Whether a check may be passed over with a reason: in a donning a failed one has its own way
     * out, and what stops a session is never passed over.
     */
    public boolean isPassable(Activity.Checking checking) {
        Step.Checklist step = (Step.Checklist) Procedure.step(this, checking.place());
        boolean stops = step.items().get(checking.item()).ifNot() == IfNot.STOP;
        return !stops && checking.place().stage() != Stage.DONNING;
    }

    /** Whether a no to this check ends the donning that is going on. */
    public boolean endsDonning(Activity.Checking checking) {
        Step.Checklist step = (Step.Checklist) Procedure.step(this, checking.place());
        return course.open().isPresent() && step.items().get(checking.item()).ifNot().endsDonning();
    }

    State with(Event.SelfTested found) {
        Opening opened = opening.orElseThrow();
        return new State(
                Optional.of(new Opening(opened.event(), opened.protocol(), Optional.of(found))),
                course,
                captured,
                doing,
                feeds);
    }

    State with(Course changed) {
        return new State(opening, changed, captured, doing, feeds);
    }

    State with(Captured changed) {
        return new State(opening, course, changed, doing, feeds);
    }

    State with(Doing changed) {
        return new State(opening, course, captured, changed, feeds);
    }

    State with(Failing changed) {
        return new State(opening, course, captured, doing, changed);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof State state && parts().equals(state.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    @Override
    public String toString() {
        return "State" + parts();
    }

    private List<Object> parts() {
        return List.of(opening, course, captured, doing, feeds);
    }
}
