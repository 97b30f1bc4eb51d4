package rigside.decide;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.special.Beta;
import org.apache.commons.math3.special.Gamma;

/** Exact limits of shares and of ratios of variances, and the quantile of variances. */
public final class ExactLimits {
    private ExactLimits() {}

    /**
     * The one-sided lower limit for the chance of a pass (Clopper and Pearson 1934).
     *
     * @param passes 0 to n
     * @param n at least 1
     * @param confidence one-sided, in (0, 1)
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double binomialLower(int passes, int n, double confidence) {
        if (!(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException("confidence " + confidence + " must be in (0, 1)");
        }
        if (n < 1 || passes < 0 || passes > n) {
            throw new IllegalArgumentException(passes + " of " + n + " is not a share");
        }
        double tail = 1 - confidence;
        return passes == 0
                ? 0
                : root(0, 1, p -> Beta.regularizedBeta(p, passes, n - passes + 1.0) - tail);
    }

    /**
     * The chi-square quantile.
     *
     * @param p lower tail, in (0, 1)
     * @param df above 0, whole or not
     */
    static double chiSquareQuantile(double p, double df) {
        DoubleUnaryOperator excess = x -> Gamma.regularizedGammaP(df / 2, x / 2) - p;
        double high = df + 2;
        while (excess.applyAsDouble(high) < 0) {
            high *= 2;
        }
        return root(0, high, excess);
    }

    /**
     * Exact limits for the ratio of two variances: the ratio seen over quantiles of F (Snedecor),
     * found through the beta distribution as in {@link SpreadRatio}. They trust the normal shape.
     *
     * @param seen the ratio of the two estimates, which share nothing; at least 0, may be infinite
     * @param df degrees of freedom of the upper one, above 0
     * @param otherDf degrees of freedom of the lower one, above 0
     * @param confidence two-sided, in (0, 1)
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static Limits varianceRatio(double seen, double df, double otherDf, double confidence) {
        if (!(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException("confidence " + confidence + " must be in (0, 1)");
        }
        if (!(seen >= 0 && df > 0 && otherDf > 0)) {
            throw new IllegalArgumentException(
                    "ratio " + seen + " with " + df + " and " + otherDf + " degrees of freedom");
        }
        double tail = (1 - confidence) / 2;
        return new Limits(
                seen / ratioQuantile(1 - tail, df, otherDf),
                seen / ratioQuantile(tail, df, otherDf));
    }

    /**
     * Exact limits for the standard deviation of normal values: sd sqrt(df / q), q the chi-square
     * quantiles with df degrees of freedom (NIST/SEMATECH e-Handbook of Statistical Methods,
     * section 1.3.5.8, from memory).
     *
     * @param sd the standard deviation seen, at least 0
     * @param df degrees of freedom, above 0: one less than the values
     * @param confidence two-sided, in (0, 1)
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static Limits standardDeviation(double sd, double df, double confidence) {
        if (!(sd >= 0 && df > 0)) {
            throw new IllegalArgumentException(
                    "standard deviation " + sd + " with " + df + " degrees of freedom");
        }
        Limits limits = variance(sd * sd, df, confidence);
        return new Limits(Math.sqrt(limits.low()), Math.sqrt(limits.high()));
    }

    /** The same of a variance. */
    static Limits variance(double variance, double df, double confidence) {
        if (!(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException("confidence " + confidence + " must be in (0, 1)");
        }
        double tail = (1 - confidence) / 2;
        return new Limits(
                variance * df / chiSquareQuantile(1 - tail, df),
                variance * df / chiSquareQuantile(tail, df));
    }

    /** The quantile of F (Snedecor) of a lower tail in (0, 1). */
    static double ratioQuantile(double p, double df, double otherDf) {
        double share = root(0, 1, x -> Beta.regularizedBeta(x, df / 2, otherDf / 2) - p);
        return share / (1 - share) * otherDf / df;
    }

    /** Where a rising function passes 0, to the last digits. */
    private static double root(double from, double to, DoubleUnaryOperator rising) {
        double low = from;
        double high = to;
        for (int i = 0; i < 200 && high - low > 1e-15 * high; i++) {
            double middle = (low + high) / 2;
            if (rising.applyAsDouble(middle) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
