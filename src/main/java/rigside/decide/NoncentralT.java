package rigside.decide;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.special.Erf;

/**
 * The noncentral t distribution: (Z + shift) / S, Z standard normal, S the root of a chi-square
 * with df degrees of freedom divided by df.
 *
 * <p>P(T &gt; t) is the integral over s of the density of S times P(Z &gt; t s - shift); the same
 * form serves both tails, so neither is a difference from 1.
 */
final class NoncentralT {

    /** Distances from the shift, in standard deviations, between which a normal tail turns. */
    private static final double[] TURNS = {-9, -6, -3, 0, 3, 6, 9};

    private final double df;
    private final double shift;
    private final SpreadDensity spread;

    /**
     * @param df degrees of freedom, at least 1
     * @param shift the noncentrality; finite
     */
    NoncentralT(double df, double shift) {
        this.df = df;
        this.shift = shift;
        this.spread = new SpreadDensity(df);
    }

    /** P(T &le; t); NaN gives NaN. */
    double lowerTail(double t) {
        return new NoncentralT(df, -shift).upperTail(-t);
    }

    /** P(T &gt; t); NaN gives NaN. */
    double upperTail(double t) {
        return integrate(t, s -> normalUpper(t * s - shift));
    }

    /** The density at t. */
    double density(double t) {
        return integrate(
                t,
                s -> {
                    double z = t * s - shift;
                    return s * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
                });
    }

    /**
     * The t with P(T &le; t) = p.
     *
     * @param p in (0, 1)
     * @throws IllegalArgumentException if p is not in (0, 1)
     */
    double quantile(double p) {
        if (!(p > 0 && p < 1)) {
            throw new IllegalArgumentException("probability " + p + " must be in (0, 1)");
        }
        double low = shift - 1;
        double high = shift + 1;
        for (double step = 1; excess(low, p) > 0; step *= 2) {
            low -= step;
        }
        for (double step = 1; excess(high, p) < 0; step *= 2) {
            high += step;
        }
        double t = (low + high) / 2;
        for (int i = 0; i < 200; i++) {
            double excess = excess(t, p);
            if (excess > 0) {
                high = t;
            } else {
                low = t;
            }
            double next = t - excess / density(t);
            if (!(next > low && next < high)) {
                next = (low + high) / 2;
            }
            if (Math.abs(next - t) <= 1e-13 * (1e-3 + Math.abs(t))) {
                return next;
            }
            t = next;
        }
        return t;
    }

    /** P(T &le; t) - p, taken from the smaller tail. */
    private double excess(double t, double p) {
        return p < 0.5 ? lowerTail(t) - p : (1 - p) - upperTail(t);
    }

    /** The integral of f times the density of S, cut also where t s passes the shift. */
    private double integrate(double t, DoubleUnaryOperator f) {
        return Double.isNaN(t)
                ? Double.NaN
                : spread.integrate(0, Double.POSITIVE_INFINITY, turns(t, shift), f);
    }

    /** The s at which t s is about the shift: there P(Z &gt; t s - shift) turns. */
    static double[] turns(double t, double shift) {
        return Arrays.stream(TURNS).map(z -> (shift + z) / t).toArray();
    }

    static double normalUpper(double z) {
        return Erf.erfc(z / Math.sqrt(2)) / 2;
    }
}
