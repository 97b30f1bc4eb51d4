package rigside.decide;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.special.Gamma;

/**
 * How a sample's standard deviation scatters about the true one: S, the root of a chi-square with
 * df degrees of freedom divided by df. For integrals over it.
 */
final class SpreadDensity {

    /** The density is left out beyond bounds it passes with probability exp(-45). */
    private static final double NEGLIGIBLE = 45;

    /** Longest panel, in standard deviations of S, 1 / sqrt(2 df). */
    private static final double PANEL = 3;

    private static final Quadrature RULE = Quadrature.plain(24);

    private final double df;
    private final double logNorm;
    private final double least;
    private final double greatest;

    /**
     * @param df degrees of freedom, at least 1
     */
    SpreadDensity(double df) {
        this.df = df;
        this.logNorm = Math.log(2) + df / 2 * Math.log(df / 2) - Gamma.logGamma(df / 2);
        // Laurent and Massart 2000, lemma 1 (from memory; how little is left out is held by the
        // reference values): bounds on a chi-square passed with probability exp(-x).
        double wide = 2 * Math.sqrt(NEGLIGIBLE / df);
        this.least = Math.sqrt(Math.max(0, 1 - wide));
        this.greatest = Math.sqrt(1 + wide + 2 * NEGLIGIBLE / df);
    }

    /**
     * The integral of f times the density of S.
     *
     * @param from lower end, at least 0
     * @param to upper end; may be infinite
     * @param turns places where f changes quickly: panels end there
     */
    double integrate(double from, double to, double[] turns, DoubleUnaryOperator f) {
        double low = Math.max(least, from);
        double high = Math.min(greatest, to);
        if (!(low < high)) {
            return 0;
        }
        double[] ends = ends(low, high, turns);
        double sum = 0;
        for (int i = 0; i + 1 < ends.length; i++) {
            sum += RULE.integrate(ends[i], ends[i + 1], s -> f.applyAsDouble(s) * at(s));
        }
        return sum;
    }

    private double at(double s) {
        return Math.exp(logNorm + (df - 1) * Math.log(s) - df * s * s / 2);
    }

    private double[] ends(double low, double high, double[] turns) {
        double[] own = Arrays.stream(turns).filter(s -> s > low && s < high).toArray();
        int count = (int) Math.ceil((high - low) * Math.sqrt(2 * df) / PANEL);
        double[] all = Arrays.copyOf(own, own.length + count + 1);
        for (int i = 0; i <= count; i++) {
            all[own.length + i] = low + (high - low) * i / count;
        }
        Arrays.sort(all);
        return all;
    }
}
