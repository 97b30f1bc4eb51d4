package rigside.decide;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.special.Gamma;

/**
 * Estimates of one difference from several sessions, each with a true difference of its own, put
 * together: the random-effects model y_i = mean + b_i + e_i with var(b_i) = tau^2 and var(e_i) =
 * v_i.
 *
 * <p>tau^2 is where the generalised Q is what it is on average (Paule and Mandel 1982, Consensus
 * values and weighting factors, J. Res. NBS 87, 377). The standard error is that of the scatter
 * about the mean, weighted (Hartung and Knapp 2001, Stat. Med. 20, 3875; Sidik and Jonkman 2002,
 * Stat. Med. 21, 3153), so that with equal v_i the interval is the t interval of the estimates and
 * exact; with unequal ones it is near. All sources from memory, all numbers checked against R's
 * metafor.
 *
 * @param estimates one a session, at least two
 * @param freedom degrees of freedom of the one variance that all v_i are multiples of; infinite
 *     where they are known
 * @param between tau^2, at least 0
 */
public record RandomEffects(List<Estimate> estimates, double freedom, double between) {

    /**
     * One session's estimate.
     *
     * @param value on the scale of the analysis
     * @param variance of its error, above 0
     */
    public record Estimate(double value, double variance) {}

    public RandomEffects {
        estimates = List.copyOf(estimates);
    }

    /**
     * The estimates put together.
     *
     * @throws IllegalArgumentException if there are fewer than two estimates, one is not finite, a
     *     variance is not above 0 or {@code freedom} is not
     */
    public static RandomEffects of(List<Estimate> estimates, double freedom) {
        if (estimates.size() < 2) {
            throw new IllegalArgumentException(
                    "pooling needs two estimates, there are " + estimates.size());
        }
        for (Estimate each : estimates) {
            if (!(Double.isFinite(each.value())
                    && each.variance() > 0
                    && each.variance() < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("an estimate is " + each);
            }
        }
        if (!(freedom > 0)) {
            throw new IllegalArgumentException("degrees of freedom " + freedom);
        }
        double between =
                Falling.root(tau2 -> q(estimates, tau2), estimates.size() - 1.0, scale(estimates));
        return new RandomEffects(estimates, freedom, between);
    }

    /** The estimate of the mean over sessions. */
    public double mean() {
        return mean(estimates, between);
    }

    /** Degrees of freedom of the interval: sessions less one. */
    public double degreesOfFreedom() {
        return estimates.size() - 1.0;
    }

    /**
     * How much the estimates scatter for their weights, 1 on average; below 1 they agree better
     * with each other than the spread within sessions explains, which only happens where tau is 0.
     */
    public double scatter() {
        return q(estimates, between) / degreesOfFreedom();
    }

    /**
     * The ordinary interval for the mean.
     *
     * @param confidence in (0, 1)
     */
    public Interval interval(double confidence) {
        return interval(confidence, Math.sqrt(scatter() / weights(estimates, between)));
    }

    /**
     * The same, never narrower than the spread within sessions alone makes it: cautious where the
     * estimates agree by luck (Roever, Knapp and Friede 2015, BMC Med. Res. Methodol. 15, 99).
     *
     * @param confidence in (0, 1)
     */
    public Interval cautiousInterval(double confidence) {
        return interval(
                confidence, Math.sqrt(Math.max(1, scatter()) / weights(estimates, between)));
    }

    /**
     * Where the true difference of one more session lies, by as much as these tell; from {@link
     * #cautiousInterval}.
     *
     * @param confidence in (0, 1)
     */
    public Interval prediction(double confidence) {
        double error = cautiousInterval(confidence).standardError();
        return interval(confidence, Math.sqrt(between + error * error));
    }

    private Interval interval(double confidence, double error) {
        double df = degreesOfFreedom();
        return new Interval(mean(), error, df, StudentT.upperQuantile((1 - confidence) / 2, df));
    }

    /** Cochran's Q: the scatter of the estimates weighted as if there were no tau. */
    public double q() {
        return q(estimates, 0);
    }

    /**
     * The chance of a Q as large if all sessions had one true difference: of F where the v_i were
     * themselves estimated, exact then (analysis of variance), of chi-square where they are known.
     */
    public double p() {
        double df = degreesOfFreedom();
        return Double.isInfinite(freedom)
                ? Gamma.regularizedGammaQ(df / 2, q() / 2)
                : SpreadRatio.upperTail(q() / df, df, freedom);
    }

    /** tau, on the scale of the analysis. */
    public double spreadBetween() {
        return Math.sqrt(between);
    }

    /**
     * The share of the variance of an estimate that lies between sessions, I^2 in [0, 1]: tau^2
     * over its sum with the typical v_i (Higgins and Thompson 2002, Stat. Med. 21, 1539, eq. 9;
     * from memory).
     */
    public double shareBetween() {
        return share(between);
    }

    /**
     * Limits of tau: the values at which the generalised Q is a quantile of what it is if tau is
     * that (Viechtbauer 2007, Stat. Med. 26, 37; with v_i themselves estimated the quantiles are
     * those of F, which for the ratio of the two variances is exact: Wald 1940, A note on the
     * analysis of variance with unequal class frequencies, Ann. Math. Stat. 11, 96; both from
     * memory). The lower one is 0 where even tau 0 makes Q as large. Empty where the estimates
     * agree so well that no tau is left between them: "0 to 0" would claim to know what two
     * sessions that agree by luck cannot tell.
     *
     * @param confidence two-sided, in (0, 1)
     */
    public Optional<Limits> betweenLimits(double confidence) {
        double tail = (1 - confidence) / 2;
        double high = profile(tail);
        return high > 0 ? Optional.of(new Limits(profile(1 - tail), high)) : Optional.empty();
    }

    /**
     * Limits of {@link #shareBetween} that belong to those of tau; empty where those are.
     *
     * @param confidence two-sided, in (0, 1)
     */
    public Optional<Limits> shareLimits(double confidence) {
        return betweenLimits(confidence)
                .map(
                        tau ->
                                new Limits(
                                        share(tau.low() * tau.low()),
                                        share(tau.high() * tau.high())));
    }

    private double profile(double p) {
        double df = degreesOfFreedom();
        double quantile =
                Double.isInfinite(freedom)
                        ? ExactLimits.chiSquareQuantile(p, df)
                        : df * ExactLimits.ratioQuantile(p, df, freedom);
        return Math.sqrt(Falling.root(tau2 -> q(estimates, tau2), quantile, scale(estimates)));
    }

    private double share(double tau2) {
        double sum = 0;
        double squares = 0;
        for (Estimate each : estimates) {
            sum += 1 / each.variance();
            squares += 1 / (each.variance() * each.variance());
        }
        double typical = degreesOfFreedom() * sum / (sum * sum - squares);
        return tau2 / (tau2 + typical);
    }

    private static double weights(List<Estimate> estimates, double tau2) {
        return estimates.stream().mapToDouble(each -> 1 / (each.variance() + tau2)).sum();
    }

    /** About the first, so that digits in common cost nothing. */
    private static double mean(List<Estimate> estimates, double tau2) {
        double first = estimates.get(0).value();
        double sum =
                estimates.stream()
                        .mapToDouble(each -> (each.value() - first) / (each.variance() + tau2))
                        .sum();
        return first + sum / weights(estimates, tau2);
    }

    private static double q(List<Estimate> estimates, double tau2) {
        double mean = mean(estimates, tau2);
        return estimates.stream()
                .mapToDouble(
                        each ->
                                (each.value() - mean)
                                        * (each.value() - mean)
                                        / (each.variance() + tau2))
                .sum();
    }

    private static double scale(List<Estimate> estimates) {
        return estimates.stream().mapToDouble(Estimate::variance).average().orElseThrow();
    }
}
