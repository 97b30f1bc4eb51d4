package rigside.decide;

import org.apache.commons.math3.special.Beta;

/**
 * Student's t, from one degree of freedom to so many that it is the normal distribution.
 *
 * <p>With t = sqrt(df) cot(e) the upper tail is the integral of sin^(df-1) from 0 to e, divided by
 * B(df/2, 1/2); taking it as such keeps full relative precision in the far tail.
 */
final class StudentT {
    private StudentT() {}

    /**
     * The density at 0 of the angle whose tangent is t / sqrt(df): 1 / B(df/2, 1/2).
     *
     * @param df above 0
     */
    static double angleDensity(double df) {
        return Math.exp(-Beta.logBeta(df / 2, 0.5));
    }

    /**
     * P(T &gt; t).
     *
     * @param t any number; NaN gives NaN
     * @param df at least 1
     */
    static double upperTail(double t, double df) {
        if (Double.isNaN(t)) {
            return Double.NaN;
        }
        if (t < 0) {
            return 1 - upperTail(-t, df);
        }
        double high = Math.atan2(Math.sqrt(df), t);
        // With few degrees of freedom one panel is exact; with many the integrand lives near its
        // upper end, so panels start there and widen.
        double length = df <= 40 ? high : 4 / (Math.sqrt(df) * (1 + t));
        double sum = 0;
        while (high > 0) {
            double low = high < 1.5 * length ? 0 : high - length;
            double part =
                    low == 0 && df != Math.rint(df)
                            ? fromZero(high, df)
                            : Quadrature.PLAIN.integrate(low, high, x -> power(x, df - 1));
            sum += part;
            if (part < 1e-18 * sum || low == 0) {
                break;
            }
            high = low;
            length *= 1.5;
        }
        return sum * angleDensity(df);
    }

    /**
     * The t that is exceeded with this probability.
     *
     * @param tail in (0, 1)
     * @param df at least 1
     * @throws IllegalArgumentException if tail is not in (0, 1)
     */
    static double upperQuantile(double tail, double df) {
        if (!(tail > 0 && tail < 1)) {
            throw new IllegalArgumentException("tail " + tail + " must be in (0, 1)");
        }
        if (tail == 0.5) {
            return 0;
        }
        if (tail > 0.5) {
            return -upperQuantile(1 - tail, df);
        }
        double low = 0;
        double high = 1;
        while (upperTail(high, df) > tail) {
            low = high;
            high *= 2;
        }
        // From the left Newton's steps on a convex falling function never overshoot.
        double t = low;
        double density = angleDensity(df);
        for (int i = 0; i < 100; i++) {
            double excess = upperTail(t, df) - tail;
            if (excess > 0) {
                low = t;
            } else {
                high = t;
            }
            double slope =
                    density * Math.exp(-(df + 1) / 2 * Math.log1p(t * t / df)) / Math.sqrt(df);
            double next = t + excess / slope;
            if (!(next > low && next < high)) {
                next = (low + high) / 2;
            }
            if (Math.abs(next - t) <= 1e-14 * Math.abs(t)) {
                return next;
            }
            t = next;
        }
        return t;
    }

    /**
     * The integral of sin^(df-1) from 0: between whole degrees of freedom that is a broken power of
     * x there, which the rule follows after x = high u^4 only.
     */
    private static double fromZero(double high, double df) {
        return Quadrature.PLAIN.integrate(
                0, 1, u -> power(high * u * u * u * u, df - 1) * 4 * high * u * u * u);
    }

    /** sin(x)^exponent without losing the small distance of the sine from 1. */
    private static double power(double x, double exponent) {
        if (exponent == 0) {
            return 1;
        }
        double cos = Math.cos(x);
        return x < 0.5
                ? Math.pow(Math.sin(x), exponent)
                : Math.exp(exponent / 2 * Math.log1p(-cos * cos));
    }
}
