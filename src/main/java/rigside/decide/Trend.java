package rigside.decide;

/** Whether values drift along their order: fatigue over trials, a drifting room over rounds. */
public final class Trend {
    private Trend() {}

    /**
     * The slope a step: the least-squares line through the values in order, one step apart, and its
     * t test with n - 2 degrees of freedom (any textbook of regression; values of R's lm).
     *
     * @param values at least 3, finite, in order
     * @throws IllegalArgumentException if there are fewer than three values
     */
    public static TTest of(double[] values) {
        int n = values.length;
        if (n < 3) {
            throw new IllegalArgumentException("a trend needs three values, there are " + n);
        }
        double middle = (n - 1) / 2.0;
        double mean = Sample.mean(values);
        double across = 0;
        double along = 0;
        for (int i = 0; i < n; i++) {
            across += (i - middle) * (values[i] - mean);
            along += (i - middle) * (i - middle);
        }
        double slope = across / along;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double residual = values[i] - mean - slope * (i - middle);
            squares += residual * residual;
        }
        return new TTest(slope, Math.sqrt(squares / (n - 2) / along), n - 2.0);
    }
}
