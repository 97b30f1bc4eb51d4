package rigside.measure;

import java.util.ArrayList;
import java.util.List;

/**
 * A gauge pressure over time, inhalation negative, as it was read: unevenly, perhaps with gaps.
 *
 * <p>Between two readings the pressure is taken to run straight.
 *
 * @param readings in time order; two may share a time, may be empty
 * @param gapSeconds two readings further apart than this have a gap between them: something was not
 *     seen
 */
public record TimedTrace(List<Reading> readings, double gapSeconds) {
    /** So many times its usual interval without a reading is a gap; common practice, no source. */
    private static final double GAP_INTERVALS = 5;

    /**
     * @throws IllegalArgumentException if a reading is before the one ahead of it, or the gap is
     *     not a finite number above 0
     */
    public TimedTrace {
        Check.positive("gap", gapSeconds);
        readings = List.copyOf(readings);
        for (int i = 1; i < readings.size(); i++) {
            double before = readings.get(i - 1).seconds();
            if (readings.get(i).seconds() < before) {
                throw Check.refused(
                        "time of a reading",
                        readings.get(i).seconds(),
                        "must not be before the one ahead of it " + Numbers.plain(before));
            }
        }
    }

    /**
     * A trace of an instrument that gives so many readings a second.
     *
     * @throws IllegalArgumentException as the constructor does, and if the rate is not a finite
     *     number above 0
     */
    public static TimedTrace of(List<Reading> readings, double perSecond) {
        return new TimedTrace(readings, GAP_INTERVALS / Check.positive("rate", perSecond));
    }

    /**
     * One reading.
     *
     * @param seconds on one clock for the whole trace
     * @param pascals gauge pressure, inhalation negative
     */
    public record Reading(double seconds, double pascals) {
        /**
         * @throws IllegalArgumentException if one is NaN or infinite
         */
        public Reading {
            Check.finite("time of a reading", seconds);
            Check.finite("pressure", pascals);
        }
    }

    /** The parts between the gaps, in time order; none for an empty trace. */
    public List<TimedTrace> runs() {
        List<TimedTrace> runs = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= readings.size(); i++) {
            if (i == readings.size() || interval(i) > gapSeconds) {
                runs.add(new TimedTrace(readings.subList(from, i), gapSeconds));
                from = i;
            }
        }
        return List.copyOf(runs);
    }

    /**
     * The part between two moments, with readings interpolated at both of them where the trace
     * reaches so far; empty when it reaches neither.
     */
    TimedTrace between(double from, double to) {
        List<Reading> part = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            Reading reading = readings.get(i);
            double at = reading.seconds();
            if (i > 0) {
                double last = readings.get(i - 1).seconds();
                if (last < from && from < at) {
                    part.add(at(i, from));
                }
                if (last < to && to < at) {
                    part.add(at(i, to));
                }
            }
            if (from <= at && at <= to) {
                part.add(reading);
            }
        }
        return new TimedTrace(part, gapSeconds);
    }

    private Reading at(int next, double seconds) {
        Reading a = readings.get(next - 1);
        Reading b = readings.get(next);
        double share = (seconds - a.seconds()) / (b.seconds() - a.seconds());
        return new Reading(seconds, a.pascals() + share * (b.pascals() - a.pascals()));
    }

    /** From the first reading to the last, in seconds; 0 with fewer than two. */
    double seconds() {
        return readings.isEmpty() ? 0 : last().seconds() - readings.get(0).seconds();
    }

    Reading last() {
        return readings.get(readings.size() - 1);
    }

    /** Time from the reading ahead of reading {@code i}, from 1. */
    double interval(int i) {
        return readings.get(i).seconds() - readings.get(i - 1).seconds();
    }

    /** The seconds within gaps. */
    double gaps() {
        double sum = 0;
        for (int i = 1; i < readings.size(); i++) {
            sum += interval(i) > gapSeconds ? interval(i) : 0;
        }
        return sum;
    }

    /** The integral of the pressure over the whole trace in Pa s (trapezoids), gaps bridged. */
    double integral() {
        double sum = 0;
        for (int i = 1; i < readings.size(); i++) {
            sum += interval(i) * (readings.get(i - 1).pascals() + readings.get(i).pascals()) / 2;
        }
        return sum;
    }

    /** The integral of the squared distance from a pressure, exact for straight pieces. */
    double integralOfSquares(double around) {
        double sum = 0;
        for (int i = 1; i < readings.size(); i++) {
            double a = readings.get(i - 1).pascals() - around;
            double b = readings.get(i).pascals() - around;
            sum += interval(i) * (a * a + a * b + b * b) / 3;
        }
        return sum;
    }

    /** The seconds for which the pressure is from {@code low} to {@code high}, both included. */
    double secondsWithin(double low, double high) {
        double sum = 0;
        for (int i = 1; i < readings.size(); i++) {
            double a = readings.get(i - 1).pascals();
            double b = readings.get(i).pascals();
            double lowest = Math.min(a, b);
            double highest = Math.max(a, b);
            if (lowest == highest) {
                sum += low <= a && a <= high ? interval(i) : 0;
            } else {
                double inside = Math.min(high, highest) - Math.max(low, lowest);
                sum += interval(i) * Math.max(0, inside) / (highest - lowest);
            }
        }
        return sum;
    }
}
