package rigside.decide;

/**
 * Whether one condition spreads more than another when their values go together in pairs: the test
 * of Pitman (1939, A note on normal correlation, Biometrika 31, 9) and Morgan (1939, A test for the
 * significance of the difference between the two variances in a sample from a normal bivariate
 * population, Biometrika 31, 13). Two variances are equal exactly where sums and differences of the
 * pairs do not correlate. A flag to look at.
 *
 * @param ratio standard deviation of the other condition over that of the reference; NaN when both
 *     are 0
 * @param test of the correlation of sums and differences, with pairs - 2 degrees of freedom; its
 *     estimate is the correlation
 */
public record PairedSpread(double ratio, TTest test) {

    /**
     * The other condition's spread against the reference's.
     *
     * @param reference values of the reference, at least 3
     * @param other values of the other condition, pair by pair
     * @throws IllegalArgumentException if there are fewer than three pairs, or lengths differ
     */
    public static PairedSpread of(double[] reference, double[] other) {
        int n = reference.length;
        if (n < 3 || other.length != n) {
            throw new IllegalArgumentException(
                    "spreads of pairs need three pairs, there are " + n + " and " + other.length);
        }
        double centreOfReference = Sample.mean(reference);
        double centreOfOther = Sample.mean(other);
        double[] sums = new double[n];
        double[] differences = new double[n];
        double both = 0;
        for (int i = 0; i < n; i++) {
            double one = reference[i] - centreOfReference;
            double two = other[i] - centreOfOther;
            sums[i] = two + one;
            differences[i] = two - one;
            both += sums[i] * differences[i];
        }
        double scale = Math.sqrt(Sample.squares(sums)) * Math.sqrt(Sample.squares(differences));
        double r = Math.max(-1, Math.min(1, both / scale));
        return new PairedSpread(
                Math.sqrt(Sample.squares(other) / Sample.squares(reference)),
                new TTest(r, Math.sqrt((1 - r * r) / (n - 2)), n - 2.0));
    }
}
