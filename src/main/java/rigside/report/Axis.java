package rigside.report;

import java.util.Arrays;
import java.util.List;

/**
 * Numbers laid along a line of a drawing, evenly or by their logarithm.
 *
 * @param log whether by the logarithm; {@code low} is above 0 then
 * @param low the number at {@code from}
 * @param high the number at {@code to}; above {@code low}
 * @param from a place, across or down
 * @param to another one
 */
record Axis(boolean log, double low, double high, double from, double to) {
    /** Room beyond the outermost numbers, as a share of their distance. */
    private static final double ROOM = 0.06;

    /** How far an axis reaches around one single number: a tenth of it, 1 where it is 0. */
    private static final double AROUND = 0.1;

    /**
     * @throws IllegalArgumentException if it has no length, or is none of logarithms
     */
    Axis {
        boolean rising = low < high && Double.isFinite(low) && Double.isFinite(high);
        if (!rising || (log && !(low > 0))) {
            throw new IllegalArgumentException("axis from " + low + " to " + high);
        }
    }

    /**
     * An axis that holds all these numbers, with some room. By the logarithm only where that can be
     * taken of all of them.
     *
     * @param numbers what is no finite number is left out
     */
    static Axis holding(double[] numbers, boolean log, double from, double to) {
        double[] known = Arrays.stream(numbers).filter(Double::isFinite).toArray();
        double low = Arrays.stream(known).min().orElse(1);
        double high = Arrays.stream(known).max().orElse(1);
        if (log && low > 0) {
            double room = Math.max(Math.log(high / low) * ROOM, Math.log1p(AROUND) / 2);
            return new Axis(true, low * Math.exp(-room), high * Math.exp(room), from, to);
        }
        double least = high == 0 && low == 0 ? 1 : Math.max(Math.abs(low), Math.abs(high)) * AROUND;
        double spread = high - low;
        double room = spread > least * 1e-6 ? spread * ROOM : least / 2;
        return new Axis(false, low - room, high + room, from, to);
    }

    /** Where a number stands; one beyond an end stands at that end. */
    double at(double number) {
        double held = Math.max(low, Math.min(high, number));
        double share =
                log ? Math.log(held / low) / Math.log(high / low) : (held - low) / (high - low);
        return from + share * (to - from);
    }

    boolean holds(double number) {
        return number >= low && number <= high;
    }

    /** Marks for labels above one another, each with so much room. */
    List<Ticks.Tick> down(double each) {
        return ticks(Math.max(2, (int) (Math.abs(to - from) / each)));
    }

    /** Marks for labels beside one another: as many as do not touch. */
    List<Ticks.Tick> across(double size) {
        for (int most = 10; most > 1; most--) {
            List<Ticks.Tick> ticks = ticks(most);
            if (areClear(ticks, size)) {
                return ticks;
            }
        }
        return ticks(1).stream().limit(1).toList();
    }

    private List<Ticks.Tick> ticks(int most) {
        return log ? Ticks.log(low, high, most) : Ticks.linear(low, high, most);
    }

    private boolean areClear(List<Ticks.Tick> ticks, double size) {
        for (int at = 1; at < ticks.size(); at++) {
            double apart = Math.abs(at(ticks.get(at).value()) - at(ticks.get(at - 1).value()));
            double halves = (width(ticks.get(at), size) + width(ticks.get(at - 1), size)) / 2;
            if (apart < halves + size / 2) {
                return false;
            }
        }
        return true;
    }

    private static double width(Ticks.Tick tick, double size) {
        return Letters.width(tick.label(), size, Mark.Weight.NORMAL);
    }
}
