package rigside.measure;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;

/**
 * Breathing resistance from the time a full inhalation takes at a held mask pressure.
 *
 * <p>Linear (Darcy) model: the flow is Q = P0 / R, so a lung volume V takes t = R V / P0. With the
 * same volume and pressure, R is proportional to t. SI throughout: Pa, s, m3, m3/s, Pa s/m3.
 */
public final class TimedInhalation {
    /**
     * Spread of a start-stop pair of hand timings by one person, standard deviation in seconds,
     * with mean error 0. Source: "Manual timing in physics experiments: Error and uncertainty",
     * American Journal of Physics 87(2):110, 2019 (4304 timings of an anticipated visual event).
     */
    public static final double HAND_TIMING_SD_SECONDS = 0.10;

    /** From this share of the flow on, a leak is warned of: design of this program, no source. */
    public static final double LEAK_WARNING = 0.02;

    /**
     * With fewer reactions their spread says too little. With 5 its 95 % limits are 0.60 and 2.87
     * times it, with 10 they are 0.69 and 1.83 (chi-square).
     */
    public static final int FEWEST_REACTIONS = 5;

    /** The constant flow of 42 CFR 84.172 at which resistances are quoted, 85 L/min, in m3/s. */
    private static final double QUOTED_FLOW = Unit.LITRE_PER_MINUTE.toSi(85);

    private TimedInhalation() {}

    /**
     * The geometric mean of the times of a donning, in their unit.
     *
     * @param times each above 0
     * @return empty if there is none
     * @throws IllegalArgumentException if a time is not a finite number above 0
     */
    public static OptionalDouble geometricMean(List<Double> times) {
        OptionalDouble meanLog =
                times.stream()
                        .mapToDouble(t -> Math.log(Check.positive("inhalation time", t)))
                        .average();
        return meanLog.isPresent()
                ? OptionalDouble.of(Math.exp(meanLog.getAsDouble()))
                : OptionalDouble.empty();
    }

    /**
     * The mean flow V / t in m3/s.
     *
     * @throws IllegalArgumentException if an argument is not a finite number above 0
     */
    public static double meanFlow(double volumeM3, double seconds) {
        return Check.positive("inhaled volume", volumeM3)
                / Check.positive("inhalation time", seconds);
    }

    /**
     * The resistance R = P0 t / V in Pa s/m3.
     *
     * @throws IllegalArgumentException if an argument is not a finite number above 0
     */
    public static double resistance(double pressurePa, double seconds, double volumeM3) {
        return Check.positive("held pressure", pressurePa) / meanFlow(volumeM3, seconds);
    }

    /**
     * An estimate of the pressure drop at 85 L/min in Pa, taking the resistance as the same at
     * every flow. To be shown as an estimate: a filter's real drop there was not measured, and
     * valves are not linear.
     *
     * @param resistance in Pa s/m3
     * @throws IllegalArgumentException if it is not a finite number above 0
     */
    public static double estimatedDropAt85LitresPerMinute(double resistance) {
        return Check.positive("resistance", resistance) * QUOTED_FLOW;
    }

    /**
     * The resistance of a part added in series, as a share of the mask's own: the ratio of the
     * times with and without it, less 1. Below 0 where breathing became easier.
     *
     * @throws IllegalArgumentException if the ratio is not a finite number above 0
     */
    public static double addedInSeries(double timeRatio) {
        return Check.positive("ratio of times", timeRatio) - 1;
    }

    /**
     * The spread of a start-stop pair of presses, measured from the tester's own reactions to a
     * tone: their standard deviation times the root of 2, a trial having two presses. Their mean is
     * left out: it holds the sound system's delay, and both presses share it. A tone is not
     * anticipated, the end of a breath is felt: this is rather too large than too small.
     *
     * @param reactions of single presses, in seconds
     * @return empty with fewer than {@link #FEWEST_REACTIONS}
     * @throws IllegalArgumentException if one is NaN or infinite
     */
    public static OptionalDouble pairSpread(List<Double> reactions) {
        SummaryStatistics all = new SummaryStatistics();
        reactions.forEach(seconds -> all.addValue(Check.finite("reaction", seconds)));
        return all.getN() < FEWEST_REACTIONS
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.sqrt(2 * all.getVariance()));
    }

    /**
     * The share of the variance over trials that timing by hand can explain: (timing sd / trial
     * sd)^2, at most 1. 1 where the trials do not differ though timing has a spread; 0 where timing
     * has none.
     *
     * @param timingSd standard deviation of the timing error of a trial, 0 or above: the {@link
     *     #pairSpread} of the tester, or {@link #HAND_TIMING_SD_SECONDS} where it was not measured
     * @param trialSd standard deviation over the trials of a donning, 0 or above, in the same unit
     * @throws IllegalArgumentException if one is negative, NaN or infinite
     */
    public static double timingShare(double timingSd, double trialSd) {
        Check.notNegative("spread of timing", timingSd);
        Check.notNegative("spread of trials", trialSd);
        if (timingSd == 0) {
            return 0;
        }
        double ratio = timingSd / trialSd;
        return Math.min(1, ratio * ratio);
    }

    /**
     * The share of the flow that can have leaked past the seal, about 1 / FF, at most 1. A leak is
     * a parallel path, so a worse seal makes breathing look easier.
     *
     * @param fitFactor above 0; where it is a lower bound the share is an upper one
     * @throws IllegalArgumentException if it is not a finite number above 0
     */
    public static double possibleLeakShare(double fitFactor) {
        return Math.min(1, 1 / Check.positive("fit factor", fitFactor));
    }
}
