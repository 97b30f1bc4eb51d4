package rigside.session;

import java.util.Optional;

/**
 * One captured value.
 *
 * @param number its number in the session, from 1
 * @param slot what it is the value of
 * @param value what was entered
 * @param source where it came from
 * @param at when, in nanoseconds of session time
 * @param struck how it was struck out, if it was
 * @param trace what a pressure trace says about it, if there was one
 * @param seconds how long an instrument really sampled it; 0 for as long as its window, or where
 *     that is not known
 * @param untraced why the instrument that follows the pressure gave no trace for it, in words;
 *     empty where it gave one or there is none
 */
public record Entry(
        int number,
        Slot slot,
        Value value,
        Source source,
        long at,
        Optional<Struck> struck,
        Optional<Trace> trace,
        double seconds,
        Optional<String> untraced) {

    /**
     * A void: the value is kept, and left out of the analysis.
     *
     * @param reason why, in the tester's words
     * @param looksBefore how many looks had been taken when it was struck out
     */
    public record Struck(String reason, int looksBefore) {}

    /** Whether it counts. */
    public boolean stands() {
        return struck.isEmpty();
    }

    Entry struck(String reason, int looksBefore) {
        return new Entry(
                number,
                slot,
                value,
                source,
                at,
                Optional.of(new Struck(reason, looksBefore)),
                trace,
                seconds,
                untraced);
    }

    Entry traced(Trace found) {
        return new Entry(
                number, slot, value, source, at, struck, Optional.of(found), seconds, untraced);
    }

    /** What a pressure trace says about the inhalation that this is the time of, if it does. */
    public Optional<Trace.Pull> pull() {
        return trace.filter(Trace.Pull.class::isInstance).map(Trace.Pull.class::cast);
    }

    /** The breaths that this is the median peak of, if a pressure trace showed them. */
    public Optional<Trace.Breaths> breaths() {
        return trace.filter(Trace.Breaths.class::isInstance).map(Trace.Breaths.class::cast);
    }
}
