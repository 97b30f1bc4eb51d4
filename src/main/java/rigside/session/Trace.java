package rigside.session;

import rigside.measure.Breath;
import rigside.measure.TracedInhalation;

/** What a pressure trace says about the entry it stands beside. */
public sealed interface Trace {
    /**
     * One timed inhalation; the entry is the time it would have taken at the target pressure.
     *
     * @param pressedSeconds the time between the trigger's presses
     * @param inhalation what the trace shows, its seconds counted from the first press
     */
    record Pull(double pressedSeconds, TracedInhalation inhalation) implements Trace {}

    /**
     * Free breathing in the pressure window of an exercise; the entry is the median of the peaks.
     *
     * @param count how many whole breaths there were; at least 1
     * @param broken the gaps in the trace, each of which may have cost a breath
     * @param medians over the breaths, figure by figure
     */
    record Breaths(int count, int broken, Breath medians) implements Trace {}
}
