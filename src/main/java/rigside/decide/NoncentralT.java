package rigside.decide;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.special.Erf;
import org.apache.commons.math3.special.Gamma;

/**
 * The noncentral t distribution: (Z + shift) / S, Z standard normal, S the root of a chi-square
 * with df degrees of freedom divided by df.
 *
 * <p>P(T &gt; t) is the integral over s of the density of S times P(Z &gt; t s - shift); the same
 * form serves both tails, so neither is a difference from 1.
 */
final class NoncentralT {

    /** The density of S is left out beyond bounds it passes with probability exp(-45). */
    private static final double NEGLIGIBLE = 45;

    private static final Quadrature RULE = Quadrature.plain(24);

    private final double df;
    private final double shift;
    private final double logNorm;
    private final double[] cuts;

    /**
     * @param df degrees of freedom, at least 1
     * @param shift the noncentrality; finite
     */
    NoncentralT(double df, double shift) {
        this.df = df;
        this.shift = shift;
        this.logNorm = Math.log(2) + df / 2 * Math.log(df / 2) - Gamma.logGamma(df / 2);
        this.cuts = cuts(df);
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
        if (Double.isNaN(t)) {
            return Double.NaN;
        }
        double top = cuts[cuts.length - 1];
        double[] own =
                Arrays.stream(new double[] {-9, -6, -3, 0, 3, 6, 9})
                        .map(z -> (shift + z) / t)
                        .filter(s -> s > cuts[0] && s < top)
                        .toArray();
        double[] all = Arrays.copyOf(cuts, cuts.length + own.length);
        System.arraycopy(own, 0, all, cuts.length, own.length);
        Arrays.sort(all);
        double sum = 0;
        for (int i = 0; i + 1 < all.length; i++) {
            sum +=
                    RULE.integrate(
                            all[i],
                            all[i + 1],
                            s ->
                                    f.applyAsDouble(s)
                                            * Math.exp(
                                                    logNorm
                                                            + (df - 1) * Math.log(s)
                                                            - df * s * s / 2));
        }
        return sum;
    }

    /** Panels over where S can be: three standard deviations of S each, 1 / sqrt(2 df). */
    private static double[] cuts(double df) {
        // Laurent and Massart 2000, lemma 1 (from memory; how little is left out is held by the
        // reference values): bounds on a chi-square passed with probability
        // exp(-x).
        double wide = 2 * Math.sqrt(NEGLIGIBLE / df);
        double low = Math.sqrt(Math.max(0, 1 - wide));
        double high = Math.sqrt(1 + wide + 2 * NEGLIGIBLE / df);
        int count = (int) Math.ceil((high - low) * Math.sqrt(2 * df) / 3);
        double[] cuts = new double[count + 1];
        for (int i = 0; i <= count; i++) {
            cuts[i] = low + (high - low) * i / count;
        }
        return cuts;
    }

    private static double normalUpper(double z) {
        return Erf.erfc(z / Math.sqrt(2)) / 2;
    }
}
