package rigside.decide;

/**
 * The value farthest from the mean, and whether it is too far for normal values: a flag to look at,
 * never a reason to drop it.
 *
 * @param index of the value
 * @param distance from the mean in standard deviations
 * @param critical the distance exceeded by chance with probability alpha at most (Grubbs 1950;
 *     Stefansky 1972: exact for few values, slightly cautious for many)
 */
public record Grubbs(int index, double distance, double critical) {

    /**
     * Looks on both sides.
     *
     * @param values at least 3, finite
     * @param alpha two-sided, in (0, 1)
     * @return the first of several equally far
     * @throws IllegalArgumentException if there are fewer than three values, or alpha is outside
     *     its range
     */
    public static Grubbs of(double[] values, double alpha) {
        Summary summary = Summary.of(values);
        double critical = critical(values.length, alpha / 2);
        int index = 0;
        for (int i = 1; i < values.length; i++) {
            double size = Math.abs(values[i] - summary.mean());
            if (size > Math.abs(values[index] - summary.mean())) {
                index = i;
            }
        }
        double distance = Math.abs(values[index] - summary.mean()) / summary.sd();
        return new Grubbs(index, summary.sd() > 0 ? distance : 0, critical);
    }

    /**
     * The critical distance on one side: (n-1)/sqrt(n) sqrt(t^2 / (n-2+t^2)), t the upper alpha/n
     * quantile of Student's t with n - 2 degrees of freedom. Both sides: pass half of alpha.
     *
     * @param n at least 3
     * @param alpha one-sided, in (0, 1)
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double critical(int n, double alpha) {
        if (n < 3) {
            throw new IllegalArgumentException("an outlier needs three values, there are " + n);
        }
        if (!(alpha > 0 && alpha < 1)) {
            throw new IllegalArgumentException("alpha " + alpha + " must be in (0, 1)");
        }
        double t = StudentT.upperQuantile(alpha / n, n - 2.0);
        return (n - 1) / Math.sqrt(n) * Math.sqrt(t * t / (n - 2 + t * t));
    }

    /**
     * The chance of a distance at least this large on either side, at most: twice n times the upper
     * tail of Student's t with n - 2 degrees of freedom at distance sqrt(n (n-2) / ((n-1)^2 - n
     * distance^2)), the critical distance read the other way round.
     *
     * @param n at least 3
     * @param distance from the mean in standard deviations; NaN gives NaN
     * @return in [0, 1]; 0 at or beyond the largest distance there can be, (n-1)/sqrt(n)
     * @throws IllegalArgumentException if there are fewer than three values
     */
    public static double chance(int n, double distance) {
        if (n < 3) {
            throw new IllegalArgumentException("an outlier needs three values, there are " + n);
        }
        double room = (n - 1.0) * (n - 1.0) - n * distance * distance;
        if (room <= 0) {
            return 0;
        }
        double t = distance * Math.sqrt(n * (n - 2.0) / room);
        return Math.min(1, 2 * n * StudentT.upperTail(t, n - 2.0));
    }

    /** Whether the value is worth a second look. */
    public boolean flagged() {
        return distance > critical;
    }
}
