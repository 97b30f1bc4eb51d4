package rigside.decide;

import java.util.Arrays;

/**
 * A straight line through estimates of several sessions that scatter about it by more than their
 * own errors: weighted least squares with weights 1 / (v_i + tau^2), tau^2 found as in {@link
 * RandomEffects}, and a standard error from the scatter about the line (Knapp and Hartung 2003,
 * Stat. Med. 22, 2693, from memory). With equal v_i it is the ordinary line and exact.
 *
 * @param slope with its standard error, sessions less two degrees of freedom
 * @param level the line's value where {@code centre} is
 * @param centre the weighted mean of the places
 * @param between tau^2 about the line, at least 0
 */
public record RandomLine(TTest slope, double level, double centre, double between) {

    /**
     * The line through these estimates.
     *
     * @param places where each estimate stands
     * @param values the estimates
     * @param variances of their errors, each above 0
     * @throws IllegalArgumentException if there are fewer than three, lengths differ, all stand in
     *     one place, or a variance is not above 0
     */
    public static RandomLine of(double[] places, double[] values, double[] variances) {
        int n = places.length;
        if (n < 3 || values.length != n || variances.length != n) {
            throw new IllegalArgumentException("a line needs three sessions, there are " + n);
        }
        if (!Arrays.stream(variances).allMatch(v -> v > 0)) {
            throw new IllegalArgumentException("variances must be above 0");
        }
        if (Arrays.stream(places).allMatch(x -> x == places[0])) {
            throw new IllegalArgumentException("a line needs two places, all are " + places[0]);
        }
        double between =
                Falling.root(
                        tau2 -> Line.of(places, values, variances, tau2).q(),
                        n - 2.0,
                        Arrays.stream(variances).average().orElseThrow());
        Line line = Line.of(places, values, variances, between);
        double error = Math.sqrt(line.q() / (n - 2) / line.along());
        return new RandomLine(
                new TTest(line.slope(), error, n - 2.0), line.level(), line.centre(), between);
    }

    /** The line's value at a place. */
    public double at(double place) {
        return level + slope.estimate() * (place - centre);
    }

    /**
     * Limits of the slope.
     *
     * @param confidence in (0, 1)
     */
    public Interval interval(double confidence) {
        return new Interval(
                slope.estimate(),
                slope.standardError(),
                slope.degreesOfFreedom(),
                StudentT.upperQuantile((1 - confidence) / 2, slope.degreesOfFreedom()));
    }

    /** The weighted least-squares line with one tau^2. */
    private record Line(double slope, double level, double centre, double along, double q) {

        static Line of(double[] places, double[] values, double[] variances, double tau2) {
            double[] weights = Arrays.stream(variances).map(v -> 1 / (v + tau2)).toArray();
            double centre = mean(places, weights);
            double level = mean(values, weights);
            double along = 0;
            double across = 0;
            for (int i = 0; i < places.length; i++) {
                along += weights[i] * (places[i] - centre) * (places[i] - centre);
                across += weights[i] * (places[i] - centre) * (values[i] - level);
            }
            double slope = across / along;
            double q = 0;
            for (int i = 0; i < places.length; i++) {
                double residual = values[i] - level - slope * (places[i] - centre);
                q += weights[i] * residual * residual;
            }
            return new Line(slope, level, centre, along, q);
        }

        private static double mean(double[] numbers, double[] weights) {
            double sum = 0;
            for (int i = 0; i < numbers.length; i++) {
                sum += weights[i] * (numbers[i] - numbers[0]);
            }
            return numbers[0] + sum / Arrays.stream(weights).sum();
        }
    }
}
