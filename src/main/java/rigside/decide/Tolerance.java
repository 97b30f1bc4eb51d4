package rigside.decide;

import org.apache.commons.math3.special.Erf;

/**
 * One-sided tolerance bounds of normal values: what a share of all values (the donnings to come,
 * not only those seen) will reach. Made for one look; looking after every round is not allowed for.
 */
public final class Tolerance {
    private Tolerance() {}

    /**
     * The factor k: with the confidence given, at least the share {@code coverage} of all values
     * lies above mean - k sd. k = quantile(confidence) of the noncentral t with n - 1 degrees of
     * freedom and shift z sqrt(n), divided by sqrt(n), z the normal quantile of the coverage (ISO
     * 16269-6; Owen 1968 from memory).
     *
     * @param n number of values, at least 2
     * @param coverage in (0, 1)
     * @param confidence in (0, 1)
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double factor(int n, double coverage, double confidence) {
        requireTwo(n);
        requireShare("coverage", coverage);
        requireShare("confidence", confidence);
        double root = Math.sqrt(n);
        return new NoncentralT(n - 1, normalQuantile(coverage) * root).quantile(confidence) / root;
    }

    /**
     * The value that, with the confidence given, at least the share {@code coverage} of all values
     * reaches.
     *
     * @throws IllegalArgumentException if a share is outside (0, 1) or there are fewer than two
     *     values
     */
    public static double lowerBound(double[] values, double coverage, double confidence) {
        Summary summary = Summary.of(values);
        return summary.mean() - factor(summary.n(), coverage, confidence) * summary.sd();
    }

    /**
     * The share of all values that, with the confidence given, at least reaches the level: the
     * coverage whose lower bound is the level.
     *
     * @param level on the scale of the values
     * @return in [0, 1]; NaN when all values are equal
     * @throws IllegalArgumentException if confidence is outside (0, 1) or there are fewer than two
     *     values
     */
    public static double shareReaching(double[] values, double level, double confidence) {
        Summary summary = Summary.of(values);
        requireTwo(summary.n());
        requireShare("confidence", confidence);
        if (!(summary.sd() > 0)) {
            return Double.NaN;
        }
        double root = Math.sqrt(summary.n());
        double t = (summary.mean() - level) / summary.sd() * root;
        // The chance of a t this large or smaller falls as the shift rises: halve the interval.
        double low = -40 * root;
        double high = 40 * root;
        for (int i = 0; i < 100 && high - low > 1e-13 * root; i++) {
            double middle = (low + high) / 2;
            if (new NoncentralT(summary.n() - 1, middle).lowerTail(t) > confidence) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Erf.erfc(-(low + high) / 2 / root / Math.sqrt(2)) / 2;
    }

    private static double normalQuantile(double p) {
        return Math.sqrt(2) * Erf.erfInv(2 * p - 1);
    }

    private static void requireTwo(int n) {
        if (n < 2) {
            throw new IllegalArgumentException(
                    "a tolerance bound needs two values, there are " + n);
        }
    }

    private static void requireShare(String name, double share) {
        if (!(share > 0 && share < 1)) {
            throw new IllegalArgumentException(name + " " + share + " must be in (0, 1)");
        }
    }
}
