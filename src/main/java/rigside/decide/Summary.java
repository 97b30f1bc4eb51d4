package rigside.decide;

import java.util.Arrays;

/**
 * Summary statistics of one set of values.
 *
 * @param n how many
 * @param mean NaN when there are none
 * @param sd standard deviation with divisor n - 1; NaN below two values
 * @param least the smallest value; NaN when there are none
 * @param greatest the largest value; NaN when there are none
 */
public record Summary(int n, double mean, double sd, double least, double greatest) {

    /**
     * Two passes, each corrected for the rounding of the first mean (Chan, Golub and LeVeque 1983,
     * Algorithms for computing the sample variance, Am. Stat. 37, 242; which of them, from memory),
     * so that many constant leading digits do no harm. A NaN among the values makes every statistic
     * NaN.
     */
    public static Summary of(double... values) {
        int n = values.length;
        return new Summary(
                n,
                Sample.mean(values),
                n < 2 ? Double.NaN : Math.sqrt(Sample.squares(values) / (n - 1)),
                Arrays.stream(values).min().orElse(Double.NaN),
                Arrays.stream(values).max().orElse(Double.NaN));
    }

    /** Of the mean; NaN below two values. */
    public double standardError() {
        return sd / Math.sqrt(n);
    }

    /**
     * sd / |mean|; NaN or infinite where that is. On values analysed on the log scale the sd of the
     * logs already is a coefficient of variation, near enough.
     */
    public double coefficientOfVariation() {
        return sd / Math.abs(mean);
    }

    /**
     * The plain t interval for the mean: valid for one look only.
     *
     * @param confidence in (0, 1)
     * @throws IllegalArgumentException if confidence is outside its range or there are fewer than
     *     two values
     */
    public Interval interval(double confidence) {
        if (n < 2) {
            throw new IllegalArgumentException("an interval needs two values, there are " + n);
        }
        if (!(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException("confidence " + confidence + " must be in (0, 1)");
        }
        double df = n - 1.0;
        return new Interval(
                mean, standardError(), df, StudentT.upperQuantile((1 - confidence) / 2, df));
    }
}
