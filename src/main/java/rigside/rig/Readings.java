package rigside.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The readings of one feed, in the order of their times; of more than {@value #MOST} the oldest are
 * forgotten (22 minutes at a hundred a second, 36 hours at one).
 */
final class Readings {
    static final int MOST = 131_072;

    private final long[] times = new long[MOST];
    private final double[] values = new double[MOST];
    private final Signal[] sides = new Signal[MOST];
    private long count;

    /** A reading not before the last one. */
    void add(Reading reading) {
        int at = (int) (count % MOST);
        times[at] = reading.at();
        values[at] = reading.si();
        sides[at] = reading.side().orElse(null);
        count++;
    }

    /** How many were added so far. */
    long count() {
        return count;
    }

    Optional<Reading> latest() {
        return count == 0 ? Optional.empty() : Optional.of(get(count - 1));
    }

    /** The readings of a time, both ends included. */
    List<Reading> between(long from, long to) {
        List<Reading> found = new ArrayList<>();
        for (long at = firstFrom(from); at < count && times[(int) (at % MOST)] <= to; at++) {
            found.add(get(at));
        }
        return found;
    }

    /** How many readings there are of a time, both ends included. */
    long countBetween(long from, long to) {
        return Math.max(0, firstFrom(to + 1) - firstFrom(from));
    }

    /** Whether readings of that time or later may have been forgotten. */
    boolean hasForgotten(long from) {
        return count > MOST && times[(int) (count % MOST)] > from;
    }

    /** The number of the first reading not before a time, by halving. */
    private long firstFrom(long from) {
        long low = Math.max(0, count - MOST);
        long high = count;
        while (low < high) {
            long middle = (low + high) >>> 1;
            if (times[(int) (middle % MOST)] < from) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private Reading get(long number) {
        int at = (int) (number % MOST);
        return new Reading(times[at], values[at], Optional.ofNullable(sides[at]));
    }
}
