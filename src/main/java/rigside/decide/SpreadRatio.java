package rigside.decide;

import org.apache.commons.math3.special.Beta;

/**
 * Whether one condition spreads more than another: the F test of two variances, which trusts the
 * normal shape of the values more than any other test here. A flag to look at.
 *
 * @param f variance of the other condition over that of the reference; NaN when both are 0
 * @param otherDf degrees of freedom of the first variance
 * @param referenceDf degrees of freedom of the second
 */
public record SpreadRatio(double f, double otherDf, double referenceDf) {

    /** The other condition's standard deviation in units of the reference's. */
    public double ratio() {
        return Math.sqrt(f);
    }

    /** Two-sided p: twice the smaller tail. */
    public double p() {
        double upper = upperTail(f, otherDf, referenceDf);
        double lower = upperTail(1 / f, referenceDf, otherDf);
        return 2 * Math.min(upper, lower);
    }

    /** Whether the spreads hardly are the same: p below alpha. NaN is not. */
    public boolean flagged(double alpha) {
        return p() < alpha;
    }

    /**
     * P(F &gt; f): with d1 and d2 degrees of freedom d2 / (d2 + d1 F) has the beta distribution
     * with parameters d2/2 and d1/2.
     *
     * @param f at least 0; NaN gives NaN
     */
    static double upperTail(double f, double df1, double df2) {
        if (f == Double.POSITIVE_INFINITY) {
            return 0;
        }
        return Beta.regularizedBeta(df2 / (df2 + df1 * f), df2 / 2, df1 / 2);
    }
}
