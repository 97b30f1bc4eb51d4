package rigside.decide;

/**
 * The two-sample t test without a common spread (Welch 1947), for the reference only: the program
 * pools, since only then the sequence of looks has an exact distribution. It stands on the same
 * parts, and asks for degrees of freedom between whole numbers.
 */
final class Welch {
    private Welch() {}

    static Interval interval(double[] a, double[] b, double alpha) {
        double ofA = ofMean(a);
        double ofB = ofMean(b);
        double df =
                (ofA + ofB)
                        * (ofA + ofB)
                        / (ofA * ofA / (a.length - 1) + ofB * ofB / (b.length - 1));
        return new Interval(
                Sample.mean(b) - Sample.mean(a),
                Math.sqrt(ofA + ofB),
                df,
                StudentT.upperQuantile(alpha / 2, df));
    }

    /** The variance of the mean. */
    private static double ofMean(double[] values) {
        return Sample.squares(values) / (values.length - 1) / values.length;
    }
}
