package rigside.measure;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;

/** Whether the air around is fit to measure a fit factor in, and the counter clean enough. */
public final class Ambient {
    /**
     * So many particles should be expected in the mask at the required level, so that counting
     * alone spreads the fit factor by less than about a third (1/sqrt(10)). Derived; no standard
     * asks for it.
     */
    public static final double COUNTS_AT_LEVEL = 10;

    /** The shortest zero check: common practice, from memory. */
    public static final double ZERO_CHECK_SECONDS = 60;

    /** A counter may count one that is not there in so long; clean-space practice, from memory. */
    private static final double SECONDS_PER_FALSE_COUNT = 300;

    private Ambient() {}

    /**
     * The change from the ambient sample before to the one after, as a share of their mean, which
     * is what the fit factor is worked out with: 0.1 where it rose by a tenth. Had it changed in
     * one jump, that mean would be off by half of this.
     *
     * @throws IllegalArgumentException if a concentration is negative, NaN or infinite, or both are
     *     0
     */
    public static double change(double before, double after) {
        Check.notNegative("ambient concentration before", before);
        Check.notNegative("ambient concentration after", after);
        return (after - before)
                / Check.positive("mean ambient concentration", (before + after) / 2);
    }

    /**
     * The spread of ambient concentrations: their standard deviation as a share of their mean.
     *
     * @param concentrations in one unit
     * @return empty with fewer than two, or where their mean is 0
     * @throws IllegalArgumentException if one is negative, NaN or infinite
     */
    public static OptionalDouble spread(List<Double> concentrations) {
        SummaryStatistics all = new SummaryStatistics();
        concentrations.forEach(c -> all.addValue(Check.notNegative("ambient concentration", c)));
        return all.getN() < 2 || all.getMean() == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(all.getStandardDeviation() / all.getMean());
    }

    /**
     * The ambient concentration in 1/m3 below which a mask that just reaches the level would give
     * fewer than {@link #COUNTS_AT_LEVEL} particles: C = 10 FF / V.
     *
     * @param level the fit factor to reach
     * @param volumeM3 drawn from the mask during one exercise
     * @throws IllegalArgumentException if one is not a finite number above 0
     */
    public static double fewestFor(double level, double volumeM3) {
        return COUNTS_AT_LEVEL
                * Check.positive("required level", level)
                / Check.positive("volume drawn from the mask", volumeM3);
    }

    /**
     * Whether a counter that draws through a high-efficiency filter counts next to nothing: at
     * least {@link #ZERO_CHECK_SECONDS} long, and at most one particle in each full five minutes,
     * one in all where it was shorter.
     *
     * @param count particles counted
     * @throws IllegalArgumentException if one is negative, NaN or infinite
     */
    public static boolean isZero(double count, double seconds) {
        return seconds >= ZERO_CHECK_SECONDS
                && Check.notNegative("count", count) <= falseCounts(seconds);
    }

    /**
     * The concentration in 1/m3 that a counter may show through such a filter: that of the counts
     * {@link #isZero} allows.
     *
     * @param flow what it draws, in m3/s
     * @throws IllegalArgumentException if one is not a finite number above 0
     */
    public static double mostForZero(double seconds, double flow) {
        return falseCounts(seconds)
                / (Check.positive("length", seconds) * Check.positive("flow", flow));
    }

    private static double falseCounts(double seconds) {
        return Math.max(
                1, Math.floor(Check.notNegative("length", seconds) / SECONDS_PER_FALSE_COUNT));
    }
}
