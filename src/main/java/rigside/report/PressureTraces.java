package rigside.report;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

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
        private final TreeSet<Long> reopened;
        private int first;
        private long latest = Long.MIN_VALUE;

        /**
         * Nothing gathered yet.
         *
         * @param windows in the order they begin
         * @param reopened when the session was gone on with, in nanoseconds of session time. After
         *     a leave the time may go on before the last line kept, where the computer's clock was
         *     put back: what was kept of that time is then of no window
         */
        public Gathering(List<PressureWindow> windows, Collection<Long> reopened) {
            this.windows = List.copyOf(windows);
            this.growing = windows.stream().map(PressureTrace.Growing::new).toList();
            this.reopened = new TreeSet<>(reopened);
        }

        /**
         * One reading of the pressure in the mask.
         *
         * @param at in nanoseconds of session time, in order but for a clock put back and damage
         * @param pascals against the room: below 0 while breathing in; finite
         */
        public void reading(long at, double pascals) {
            if (at < latest) {
                first = 0;
                goBack(at);
            }
            latest = Math.max(latest, at);
            while (first < windows.size() && windows.get(first).to() < at) {
                first++;
            }
            for (int each = first;
                    each < windows.size() && windows.get(each).from() <= at;
                    each++) {
                if (windows.get(each).to() >= at) {
                    // Not -0, which would be written as such.
                    growing.get(each).add(at, 0 - pascals);
                }
            }
        }

        /** A session is gone on with once at a time: the next step back is of another one. */
        private void goBack(long at) {
            Long since = reopened.floor(at);
            if (since != null) {
                reopened.headSet(since, true).clear();
                latest = at;
                for (int each = 0; each < windows.size(); each++) {
                    if (windows.get(each).to() >= since) {
                        growing.get(each).clear();
                    }
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
