package rigside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One captured value.
 *
 * @param number its number in the session, from 1
 * @param slot what it is the value of
 * @param value what was entered, or what it was amended to last
 * @param source where that value came from: an amended one is typed
 * @param at when it was captured, in nanoseconds of session time
 * @param struck how it was struck out, if it was
 * @param trace what a pressure trace says about the value, if there was one
 * @param seconds how long an instrument really sampled it; 0 for as long as its window, or where
 *     that is not known
 * @param untraced why the instrument that follows the pressure gave no trace for it, in words;
 *     empty where it gave one or there is none
 * @param looksBefore how many looks had been taken when it was captured
 * @param earlier the values that amendments replaced, the first one first; empty when it was never
 *     amended
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
        Optional<String> untraced,
        int looksBefore,
        List<Earlier> earlier) {

    public Entry {
        earlier = List.copyOf(earlier);
    }

    /**
     * A void: the value is kept, and left out of the analysis.
     *
     * @param reason why, in the tester's words
     * @param looksBefore how many looks had been taken when it was struck out
     */
    public record Struck(String reason, int looksBefore) {}

    /**
     * A value that an amendment replaced: it is kept, and does not count.
     *
     * @param value what stood there
     * @param source where it came from
     * @param trace what a pressure trace says about it, if there was one
     * @param seconds as the entry's
     * @param reason why it was replaced, in the tester's words
     * @param looksBefore how many looks had been taken when it was
     * @param until when it was, in nanoseconds of session time
     */
    public record Earlier(
            Value value,
            Source source,
            Optional<Trace> trace,
            double seconds,
            String reason,
            int looksBefore,
            long until) {}

    /** Whether it counts. */
    public boolean stands() {
        return struck.isEmpty();
    }

    /** Whether it holds another value than the one captured, with all that was on record kept. */
    public boolean isAmended() {
        return !earlier.isEmpty();
    }

    /** The value that the last amendment replaced, with the reason; empty when there was none. */
    public Optional<Earlier> lastAmendment() {
        return isAmended() ? Optional.of(earlier.get(earlier.size() - 1)) : Optional.empty();
    }

    /** The entry with the value it had when the look of this position, from 0, was taken. */
    public Entry asLooked(int look) {
        for (int at = 0; at < earlier.size(); at++) {
            if (earlier.get(at).looksBefore() > look) {
                return before(at);
            }
        }
        return this;
    }

    /** The same as if it had not been struck out. */
    public Entry standing() {
        return with(value, source, Optional.empty(), trace, seconds, earlier);
    }

    Entry struck(String reason, int looks) {
        return with(value, source, Optional.of(new Struck(reason, looks)), trace, seconds, earlier);
    }

    Entry traced(Trace found) {
        return with(value, source, struck, Optional.of(found), seconds, earlier);
    }

    /** With a value typed by hand: neither trace nor sampling time say anything about that one. */
    Entry amended(Value to, String reason, int looks, long when) {
        List<Earlier> longer = new ArrayList<>(earlier);
        longer.add(new Earlier(value, source, trace, seconds, reason, looks, when));
        return with(to, Source.TYPED, struck, Optional.empty(), 0, longer);
    }

    /** Without its last amendment. */
    Entry withdrawn() {
        return before(earlier.size() - 1);
    }

    /** With the value that the amendment of this position, from 0, replaced. */
    private Entry before(int amendment) {
        Earlier then = earlier.get(amendment);
        return with(
                then.value(),
                then.source(),
                struck,
                then.trace(),
                then.seconds(),
                earlier.subList(0, amendment));
    }

    private Entry with(
            Value held,
            Source from,
            Optional<Struck> how,
            Optional<Trace> seen,
            double sampled,
            List<Earlier> replaced) {
        return new Entry(
                number, slot, held, from, at, how, seen, sampled, untraced, looksBefore, replaced);
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
