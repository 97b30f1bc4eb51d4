package rigside.rig;

import java.util.List;

/**
 * Readings of one window, summed up.
 *
 * @param count how many there are
 * @param mean their mean, SI; NaN without any
 * @param spread their standard deviation with n - 1, SI; NaN with fewer than two
 * @param lowest the least, SI; NaN without any
 * @param expected how many there should be by the declared rate; without one by the rate while the
 *     feed was not silent, or 0 where it never was and its lines do not say what its tube is on
 * @param seconds how long it was really sampled: without settling times and without silence
 */
public record Sample(
        int count, double mean, double spread, double lowest, double expected, double seconds) {

    /**
     * The readings summed up; by Welford's recursion, so that a large mean costs no digits.
     *
     * @param seconds what they are spread over
     */
    static Sample of(List<Reading> readings, double expected, double seconds) {
        double mean = 0;
        double squares = 0;
        double lowest = Double.NaN;
        int count = 0;
        for (Reading reading : readings) {
            count++;
            double off = reading.si() - mean;
            mean += off / count;
            squares += off * (reading.si() - mean);
            lowest = count == 1 ? reading.si() : Math.min(lowest, reading.si());
        }
        return new Sample(
                count,
                count == 0 ? Double.NaN : mean,
                count < 2 ? Double.NaN : Math.sqrt(squares / (count - 1)),
                lowest,
                expected,
                count == 0 ? 0 : seconds);
    }

    /**
     * Whether it may stand for the whole window: there are readings, and at least half of those
     * that were expected (common practice, no source).
     */
    public boolean isUsable() {
        return count > 0 && count >= expected / 2;
    }
}
