package rigside.analysis;

import rigside.protocol.Measure;
import rigside.protocol.Plan;
import rigside.session.Activity;
import rigside.session.Slot;
import rigside.session.Source;
import rigside.session.Stage;
import rigside.session.State;

/**
 * Which of the two things that a protocol conceals are out.
 *
 * @param clock whether clocks and times of trials may be told
 * @param result whether what is not made of times may be told
 */
record Out(boolean clock, boolean result) {

    /** As a session stands. */
    static Out of(State state) {
        return new Out(
                isOut(state.protocol().plan().trialClock(), state),
                isOut(state.protocol().firstResult(), state));
    }

    private static boolean isOut(Plan.Until until, State state) {
        return switch (until) {
            case SHOWN -> true;
            case DONNING_ENDS -> state.course().open().isEmpty();
            case SESSION_ENDS -> isOver(state);
        };
    }

    /** Whether nothing can be entered any more. */
    static boolean isOver(State state) {
        return state.activity() instanceof Activity.Closing
                || state.activity() instanceof Activity.Closed;
    }

    /** Whether values and comparisons of a measure may be told: made of times, with the clock. */
    boolean tells(Measure measure) {
        return result && (clock || !measure.isMadeOfTimes());
    }

    /**
     * Whether the value of a gap that came from there may be: facts of the session and what a gate
     * read give nothing away, and what the tester typed is no secret; times taken here are out with
     * the clock, what the rig gave with the result.
     */
    boolean tells(Slot slot, Source source) {
        if (slot instanceof Slot.Trial && source != Source.TYPED) {
            return clock;
        }
        return result
                || slot instanceof Slot.Gate
                || source == Source.TYPED
                || slot.place().stage() != Stage.DONNING;
    }
}
