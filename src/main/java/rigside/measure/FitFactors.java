package rigside.measure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Fit factors of a donning from its ambient and mask samples.
 *
 * <p>A fit factor is carried as its {@link Penetration}. Exercises marked as not counted are left
 * out by the caller.
 */
public final class FitFactors {
    /** A value equal to the level but for the rounding of doubles reaches it. */
    private static final double ROUNDING = 1e-12;

    private FitFactors() {}

    /**
     * The mean concentration over a span of time.
     *
     * @param fromSeconds its start, on one clock for all samples of an exercises step
     * @param toSeconds its end, not before the start
     * @param concentration 0 or above, in one unit for all samples
     */
    public record Sample(double fromSeconds, double toSeconds, double concentration) {
        /**
         * @throws IllegalArgumentException if a time is not finite, the end is before the start, or
         *     the concentration is negative, NaN or infinite
         */
        public Sample {
            Check.finite("start of a sample", fromSeconds);
            Check.finite("end of a sample", toSeconds);
            if (!(fromSeconds <= toSeconds)) {
                throw Check.refused(
                        "end of a sample",
                        toSeconds,
                        "must not be before its start " + Numbers.plain(fromSeconds));
            }
            Check.notNegative("concentration", concentration);
        }

        private double middle() {
            return fromSeconds + (toSeconds - fromSeconds) / 2;
        }
    }

    /** Which values have to reach a required level. */
    public enum Rule {
        OVERALL,
        EVERY_EXERCISE
    }

    /**
     * The ambient concentration of one mask sample: the mean of the nearest ambient sample before
     * it and the nearest after it, or the one of them there is.
     *
     * <p>Before and after go by the middles of the samples; one with the same middle counts as
     * before. Source: 29 CFR 1910.134 appendix A, part I.C.3 (from memory).
     *
     * @param ambient all ambient samples of the exercises step, in any order
     * @return empty if there is no ambient sample
     */
    public static OptionalDouble ambient(List<Sample> ambient, Sample mask) {
        return around(ambient, mask).stream().mapToDouble(Sample::concentration).average();
    }

    /**
     * The ambient samples that count for a mask sample: the nearest before it and the nearest after
     * it, in that order, as far as there are any.
     */
    public static List<Sample> around(List<Sample> ambient, Sample mask) {
        Comparator<Sample> byTime = Comparator.comparingDouble(Sample::middle);
        Optional<Sample> before =
                ambient.stream().filter(s -> s.middle() <= mask.middle()).max(byTime);
        Optional<Sample> after =
                ambient.stream().filter(s -> s.middle() > mask.middle()).min(byTime);
        return Stream.concat(before.stream(), after.stream()).toList();
    }

    /**
     * The penetration of one exercise.
     *
     * @param ambient all ambient samples of the exercises step, in any order
     * @param detectionLimit in the unit of the samples; 0 where none is stated
     * @return empty where the samples leave no fit factor to state: no ambient sample, ambient 0,
     *     or mask 0 without a detection limit
     * @throws IllegalArgumentException if the detection limit is negative, NaN or infinite
     */
    public static Optional<Penetration> exercise(
            List<Sample> ambient, Sample mask, double detectionLimit) {
        Check.notNegative("detection limit", detectionLimit);
        double around = ambient(ambient, mask).orElse(0);
        if (around == 0 || (mask.concentration() == 0 && detectionLimit == 0)) {
            return Optional.empty();
        }
        return Optional.of(Penetration.of(around, mask.concentration(), detectionLimit));
    }

    /**
     * The overall penetration of a donning: the mean over its exercises.
     *
     * @param exercises the counted exercises; one that has no value is empty
     * @return empty if there is no exercise or one of them has no value: a mean over the others
     *     would leave out an exercise unseen
     */
    public static Optional<Penetration> overall(List<Optional<Penetration>> exercises) {
        List<Penetration> known = known(exercises);
        return known.isEmpty() || known.size() < exercises.size()
                ? Optional.empty()
                : Optional.of(Penetration.mean(known));
    }

    /**
     * Whether the donning is shown to reach the level by the rule; a bounded value by what it is at
     * least. False when an exercise has no value.
     *
     * @param exercises the counted exercises; one that has no value is empty
     * @param level the fit factor to reach
     * @throws IllegalArgumentException if the level is not a finite number above 0
     */
    public static boolean passes(List<Optional<Penetration>> exercises, double level, Rule rule) {
        Check.positive("required level", level);
        Optional<Penetration> overall = overall(exercises);
        return overall.isPresent()
                && switch (rule) {
                    case OVERALL -> reaches(overall.get().high(), level);
                    case EVERY_EXERCISE ->
                            known(exercises).stream().allMatch(p -> reaches(p.high(), level));
                };
    }

    /**
     * Whether the donning is shown to miss the level by the rule; a bounded value by what it is at
     * most. Neither this nor {@link #passes} holds where the counter's detection limit or a missing
     * value leaves it open.
     *
     * @param exercises the counted exercises; one that has no value is empty
     * @param level the fit factor to reach
     * @throws IllegalArgumentException if the level is not a finite number above 0
     */
    public static boolean fallsShort(
            List<Optional<Penetration>> exercises, double level, Rule rule) {
        Check.positive("required level", level);
        return switch (rule) {
            case OVERALL -> overall(exercises).filter(p -> !reaches(p.low(), level)).isPresent();
            case EVERY_EXERCISE ->
                    known(exercises).stream().anyMatch(p -> !reaches(p.low(), level));
        };
    }

    /**
     * The variance of ln FF of one exercise that is due to counting: 1/N_mask + 1/N_ambient.
     *
     * <p>First order, from the Poisson variance N of a count.
     *
     * @param maskCount particles counted in the mask, above 0
     * @param ambientCount particles counted in the bracketing ambient samples together, above 0
     * @throws IllegalArgumentException if a count is not a finite number above 0
     */
    public static double countingLogVariance(double maskCount, double ambientCount) {
        return 1 / Check.positive("mask count", maskCount)
                + 1 / Check.positive("ambient count", ambientCount);
    }

    /**
     * The variance of ln of the overall fit factor that is due to counting in the mask: sum(P_i^2 /
     * N_i) / (sum P_i)^2.
     *
     * <p>First order. Ambient counts are left out: they are larger by about the fit factor, and
     * neighbouring exercises share them.
     *
     * @param exercises the counted exercises, at least one; a bounded one enters with its bound
     * @param maskCounts particles counted in the mask, above 0, one for each exercise in the same
     *     order
     * @throws IllegalArgumentException if there is no exercise, the lists differ in length, or a
     *     count is not a finite number above 0
     */
    public static double countingLogVariance(List<Penetration> exercises, List<Double> maskCounts) {
        if (exercises.isEmpty() || exercises.size() != maskCounts.size()) {
            throw new IllegalArgumentException(
                    "mask counts "
                            + maskCounts.size()
                            + ", must be one for each exercise ("
                            + exercises.size()
                            + ") and at least 1");
        }
        double sum = 0;
        double variance = 0;
        for (int i = 0; i < exercises.size(); i++) {
            double penetration = exercises.get(i).high();
            sum += penetration;
            variance += penetration * penetration / Check.positive("mask count", maskCounts.get(i));
        }
        return variance / (sum * sum);
    }

    private static boolean reaches(double penetration, double level) {
        return penetration * level <= 1 + ROUNDING;
    }

    private static List<Penetration> known(List<Optional<Penetration>> exercises) {
        return exercises.stream().flatMap(Optional::stream).toList();
    }
}
