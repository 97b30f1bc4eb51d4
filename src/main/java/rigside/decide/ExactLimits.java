package rigside.decide;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.special.Beta;
import org.apache.commons.math3.special.Gamma;

/** Exact limits of shares, and the quantile that those of variances go by. */
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
