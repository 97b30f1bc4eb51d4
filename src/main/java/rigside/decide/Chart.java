package rigside.decide;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * A control chart of single values in the order they came: is what made them still the same?
 *
 * <p>Its limits stand three spreads from the mean, the spread being the mean moving range over d2
 * (NIST/SEMATECH e-Handbook of Statistical Methods, section 6.3.2.2, from memory).
 *
 * @param values in order, at least two
 * @param mean the centre line
 * @param spread the mean moving range over {@link #D2}
 */
public record Chart(List<Double> values, double mean, double spread) {

    /** The mean range of two normal values in spreads: 2 / sqrt(pi), 1.128. */
    public static final double D2 = 2 / Math.sqrt(Math.PI);

    /** The limits, in spreads. */
    private static final double THREE = 3;

    /**
     * So many in a row on one side of the centre line are a signal (Statistical Quality Control
     * Handbook, 1956, zone tests; from memory).
     */
    public static final int RUN = 8;

    /** Shares of simulated charts are good to 0.005 (one sigma). */
    private static final int CHARTS = 10_000;

    public Chart {
        values = List.copyOf(values);
    }

    /**
     * The chart of these values.
     *
     * @param values in order
     * @throws IllegalArgumentException if there are fewer than two, or one is not finite
     */
    public static Chart of(double... values) {
        if (values.length < 2) {
            throw new IllegalArgumentException("a chart needs two values, has " + values.length);
        }
        double ranges = 0;
        for (int i = 1; i < values.length; i++) {
            ranges += Math.abs(values[i] - values[i - 1]);
        }
        if (!Double.isFinite(ranges)) {
            throw new IllegalArgumentException("a chart needs finite values");
        }
        List<Double> listed = new ArrayList<>();
        for (double value : values) {
            listed.add(value);
        }
        return new Chart(listed, Sample.mean(values), ranges / (values.length - 1) / D2);
    }

    /** The control limits. */
    public Limits limits() {
        return new Limits(mean - THREE * spread, mean + THREE * spread);
    }

    /** The places, from 0, of values beyond the limits. */
    public List<Integer> beyond() {
        Limits limits = limits();
        List<Integer> beyond = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            if (values.get(i) < limits.low() || values.get(i) > limits.high()) {
                beyond.add(i);
            }
        }
        return beyond;
    }

    /** The places, from 0, that end {@link #RUN} or more in a row on one side. */
    public List<Integer> endsOfRuns() {
        List<Integer> ends = new ArrayList<>();
        int length = 0;
        double side = 0;
        for (int i = 0; i < values.size(); i++) {
            double now = Math.signum(values.get(i) - mean);
            length = now == 0 ? 0 : now == side ? length + 1 : 1;
            side = now;
            if (length >= RUN) {
                ends.add(i);
            }
        }
        return ends;
    }

    /**
     * How often charts of so many values show a signal although nothing changed, of simulated
     * normal values.
     *
     * @param beyond the share with a value beyond the limits
     * @param run the share with a run on one side
     */
    public record FalseAlarms(double beyond, double run) {

        /**
         * Of charts with so many values; the limits of each come from its own values.
         *
         * @param count at least 2
         */
        public static FalseAlarms of(int count) {
            SplittableRandom random = new SplittableRandom(count);
            int beyond = 0;
            int runs = 0;
            for (int i = 0; i < CHARTS; i++) {
                double[] values = new double[count];
                Arrays.setAll(values, each -> random.nextGaussian());
                Chart chart = Chart.of(values);
                beyond += chart.beyond().isEmpty() ? 0 : 1;
                runs += chart.endsOfRuns().isEmpty() ? 0 : 1;
            }
            return new FalseAlarms(beyond / (double) CHARTS, runs / (double) CHARTS);
        }
    }

    /**
     * Where the value after the first {@code earlier} ones is expected from those alone: mean +- t
     * s sqrt(1 + 1/n), exact for normal values, whatever their number. Whether it lies outside is
     * independent from one value to the next.
     *
     * @param earlier how many come before it
     * @param confidence in (0, 1)
     * @return empty with fewer than two earlier ones
     */
    public Optional<Interval> expected(int earlier, double confidence) {
        if (earlier < 2) {
            return Optional.empty();
        }
        Summary before =
                Summary.of(
                        values.subList(0, earlier).stream()
                                .mapToDouble(Double::doubleValue)
                                .toArray());
        double df = earlier - 1.0;
        return Optional.of(
                new Interval(
                        before.mean(),
                        before.sd() * Math.sqrt(1 + 1.0 / earlier),
                        df,
                        StudentT.upperQuantile((1 - confidence) / 2, df)));
    }
}
