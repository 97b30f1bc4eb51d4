package rigside.report;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The pressure over time of a session's entries, as far as there are readings of it.
 *
 * @param traces by the number of the entry
 */
public record PressureTraces(Map<Integer, PressureTrace> traces) {
    /** Where no readings are there. */
    public static final PressureTraces NONE = new PressureTraces(Map.of());

    public PressureTraces {
        traces = Map.copyOf(traces);
    }

    Optional<PressureTrace> of(int entry) {
        return Optional.ofNullable(traces.get(entry));
    }

    /** Puts readings where they belong; how many there are makes no difference to its size. */
    public static final class Gathering {
        private final List<PressureWindow> windows;
        private final List<PressureTrace.Growing> growing;
        private int first;
        private long latest = Long.MIN_VALUE;

        /**
         * Nothing gathered yet.
         *
         * @param windows in the order they begin
         */
        public Gathering(List<PressureWindow> windows) {
            this.windows = List.copyOf(windows);
            this.growing = windows.stream().map(PressureTrace.Growing::new).toList();
        }

        /**
         * One reading of the pressure in the mask.
         *
         * @param at in nanoseconds of session time; one before the last counts as with the last
         * @param pascals against the room: below 0 while breathing in; finite
         */
        public void reading(long at, double pascals) {
            latest = Math.max(latest, at);
            while (first < windows.size() && windows.get(first).to() < latest) {
                first++;
            }
            for (int each = first;
                    each < windows.size() && windows.get(each).from() <= latest;
                    each++) {
                if (windows.get(each).to() >= latest) {
                    // Not -0, which would be written as such.
                    growing.get(each).add(latest, 0 - pascals);
                }
            }
        }

        public PressureTraces traces() {
            Map<Integer, PressureTrace> traces = new HashMap<>();
            growing.forEach(
                    each ->
                            each.trace()
                                    .ifPresent(trace -> traces.put(trace.window().entry(), trace)));
            return new PressureTraces(traces);
        }
    }
}
