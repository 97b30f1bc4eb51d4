package rigside.decide;

import java.util.List;
import org.apache.commons.math3.special.Gamma;

/**
 * The standard deviation that several groups of values have in common, each about its own mean.
 *
 * @param sd pooled; at least 0
 * @param freedom its degrees of freedom: values less groups, at least 1
 * @param groups how many groups had two values or more
 * @param bartlett twice the log likelihood ratio of unlike spreads, corrected (Bartlett 1937); 0
 *     with one group, NaN where a group does not vary
 */
public record PooledSpread(double sd, double freedom, int groups, double bartlett) {

    /**
     * The spread within these groups.
     *
     * @param groups of finite values; those with fewer than two are passed over
     * @throws IllegalArgumentException if no group has two values
     */
    public static PooledSpread of(List<double[]> groups) {
        List<double[]> used = groups.stream().filter(each -> each.length > 1).toList();
        if (used.isEmpty()) {
            throw new IllegalArgumentException("a spread needs a group with two values");
        }
        double squares = used.stream().mapToDouble(Sample::squares).sum();
        double freedom = used.stream().mapToDouble(each -> each.length - 1.0).sum();
        return new PooledSpread(
                Math.sqrt(squares / freedom),
                freedom,
                used.size(),
                bartlett(used, squares / freedom, freedom));
    }

    private static double bartlett(List<double[]> groups, double variance, double freedom) {
        if (groups.size() < 2) {
            return 0;
        }
        double sum = freedom * Math.log(variance);
        double inverses = 0;
        for (double[] group : groups) {
            double df = group.length - 1.0;
            sum -= df * Math.log(Sample.squares(group) / df);
            inverses += 1 / df;
        }
        double correction = 1 + (inverses - 1 / freedom) / (3 * (groups.size() - 1.0));
        return Double.isFinite(sum) ? sum / correction : Double.NaN;
    }

    /** The chance of spreads as unlike if all groups had one: chi-square, near; NaN as above. */
    public double unlike() {
        return groups < 2 || Double.isNaN(bartlett)
                ? Double.NaN
                : Gamma.regularizedGammaQ((groups - 1) / 2.0, Math.max(0, bartlett) / 2);
    }

    /**
     * Exact limits, as {@link ExactLimits#standardDeviation}.
     *
     * @param confidence two-sided, in (0, 1)
     */
    public Limits limits(double confidence) {
        return ExactLimits.standardDeviation(sd, freedom, confidence);
    }

    /**
     * The exact one-sided upper limit: sd sqrt(df / chi-square quantile of 1 - confidence).
     *
     * @param confidence one-sided, in (0.5, 1)
     */
    public double upper(double confidence) {
        return limits(2 * confidence - 1).high();
    }
}
