package rigside.decide;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.special.Beta;
import org.apache.commons.math3.special.Gamma;

/** Exact limits for counted things. */
public final class ExactLimits {
    private ExactLimits() {}

    /**
     * Central limits for the chance of a pass (Clopper and Pearson 1934).
     *
     * @param passes 0 to n
     * @param n at least 1
     * @param confidence two-sided, in (0, 1)
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static Limits binomial(int passes, int n, double confidence) {
        requireConfidence(confidence);
        double tail = (1 - confidence) / 2;
        // Passes and failures change places for the upper limit.
        return new Limits(lower(passes, n, tail), 1 - lower(n - passes, n, tail));
    }

    /**
     * The one-sided lower limit for the chance of a pass.
     *
     * @param passes 0 to n
     * @param n at least 1
     * @param confidence one-sided, in (0, 1)
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double binomialLower(int passes, int n, double confidence) {
        requireConfidence(confidence);
        return lower(passes, n, 1 - confidence);
    }

    /**
     * Central limits for the mean of a count (Garwood 1936).
     *
     * @param count at least 0
     * @param confidence two-sided, in (0, 1)
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static Limits poisson(long count, double confidence) {
        requireConfidence(confidence);
        double tail = (1 - confidence) / 2;
        double shape = count;
        double low =
                count == 0
                        ? 0
                        : gammaQuantile(shape, m -> Gamma.regularizedGammaP(shape, m) - tail);
        return new Limits(low, poissonUpper(count, 1 - tail));
    }

    /**
     * The one-sided upper limit for the mean of a count.
     *
     * @param count at least 0
     * @param confidence one-sided, in (0, 1)
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double poissonUpper(long count, double confidence) {
        requireConfidence(confidence);
        if (count < 0) {
            throw new IllegalArgumentException("count " + count + " must be 0 or more");
        }
        double tail = 1 - confidence;
        return gammaQuantile(count + 1.0, m -> tail - Gamma.regularizedGammaQ(count + 1.0, m));
    }

    /**
     * Central limits for the ratio of two rates of counted events, first over second: given their
     * sum the first count is binomial with share r / (1 + r), r the ratio times that of the
     * exposures, so its exact limits carry over (Przyborowski and Wilenski 1940, from memory).
     *
     * @param first count, at least 0
     * @param firstExposure time or volume it was counted in, above 0
     * @param second count, at least 0; not both 0
     * @param secondExposure likewise, above 0
     * @param confidence two-sided, in (0, 1)
     * @return the upper limit is infinite when the second count is 0
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static Limits rateRatio(
            int first, double firstExposure, int second, double secondExposure, double confidence) {
        if (!(firstExposure > 0 && secondExposure > 0)) {
            throw new IllegalArgumentException(
                    "exposures " + firstExposure + " and " + secondExposure + " must be above 0");
        }
        Limits share = binomial(first, first + second, confidence);
        // One minus the upper limit is taken from the other count, or its digits would be lost.
        double below = binomial(second, first + second, confidence).low();
        double exposures = secondExposure / firstExposure;
        return new Limits(
                share.low() / (1 - share.low()) * exposures, (1 - below) / below * exposures);
    }

    /**
     * With this factor times the standard deviation of n normal values the true one is not exceeded
     * with the confidence given: sqrt((n - 1) / chi-square quantile(1 - confidence; n - 1)).
     *
     * @param n at least 2
     * @param confidence one-sided, in (0, 1)
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double spreadFactor(int n, double confidence) {
        requireConfidence(confidence);
        if (n < 2) {
            throw new IllegalArgumentException("a spread needs two values, there are " + n);
        }
        double shape = (n - 1) / 2.0;
        double half =
                gammaQuantile(shape, m -> Gamma.regularizedGammaP(shape, m) - (1 - confidence));
        return Math.sqrt(shape / half);
    }

    /**
     * The chi-square quantile.
     *
     * @param p lower tail, in (0, 1)
     * @param df above 0, whole or not
     */
    static double chiSquareQuantile(double p, double df) {
        return 2 * gammaQuantile(df / 2, m -> Gamma.regularizedGammaP(df / 2, m) - p);
    }

    private static double lower(int passes, int n, double tail) {
        if (n < 1 || passes < 0 || passes > n) {
            throw new IllegalArgumentException(passes + " of " + n + " is not a share");
        }
        return passes == 0
                ? 0
                : root(0, 1, p -> Beta.regularizedBeta(p, passes, n - passes + 1.0) - tail);
    }

    private static double gammaQuantile(double shape, DoubleUnaryOperator rising) {
        double high = shape + 1;
        while (rising.applyAsDouble(high) < 0) {
            high *= 2;
        }
        return root(0, high, rising);
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

    private static void requireConfidence(double confidence) {
        if (!(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException("confidence " + confidence + " must be in (0, 1)");
        }
    }
}
