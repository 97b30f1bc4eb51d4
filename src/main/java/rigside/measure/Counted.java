package rigside.measure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.GammaDistribution;

/**
 * What was counted for one exercise. Counts need not be whole: a counter that shows a concentration
 * counted it times the volume it drew.
 *
 * @param mask particles counted in the mask, 0 or above
 * @param maskVolume drawn from the mask in m3
 * @param ambient particles counted in the bracketing ambient samples together, above 0
 * @param ambientVolume drawn for them in m3
 */
public record Counted(double mask, double maskVolume, double ambient, double ambientVolume) {
    /**
     * @throws IllegalArgumentException if one is out of its range, NaN or infinite
     */
    public Counted {
        Check.notNegative("mask count", mask);
        Check.positive("volume drawn from the mask", maskVolume);
        Check.positive("ambient count", ambient);
        Check.positive("ambient volume", ambientVolume);
    }

    /** A concentration in 1/m3 and the volume it was counted in, in m3. */
    public record Sampled(double concentration, double volume) {}

    /**
     * What was counted where concentrations and volumes are known. Of two ambient samples the plain
     * mean counts, whatever their volumes: so many particles are taken to be counted in ambient air
     * as give that mean its variance.
     *
     * @param ambient the bracketing samples, at least one
     * @return empty where a volume or every ambient concentration is 0
     * @throws IllegalArgumentException if one is negative, NaN or infinite
     */
    public static Optional<Counted> of(Sampled mask, List<Sampled> ambient) {
        double sum = ambient.stream().mapToDouble(Sampled::concentration).sum();
        boolean drawn = mask.volume() > 0 && ambient.stream().allMatch(each -> each.volume() > 0);
        if (!(drawn && sum > 0)) {
            return Optional.empty();
        }
        double variance =
                ambient.stream().mapToDouble(each -> each.concentration() / each.volume()).sum();
        double count = sum * sum / variance;
        return Optional.of(
                new Counted(
                        mask.concentration() * mask.volume(),
                        mask.volume(),
                        count,
                        count * ambient.size() / sum));
    }

    /** The penetration counted; 0 where nothing was counted in the mask. */
    public double penetration() {
        return mask * weight();
    }

    /** The penetration one particle counted in the mask stands for. */
    private double weight() {
        return ambientVolume / (maskVolume * ambient);
    }

    /**
     * Limits of a fit factor.
     *
     * @param low the least it can be
     * @param high the most it can be; empty where nothing was counted in the mask, which bounds it
     *     on one side only
     */
    public record Limits(double low, OptionalDouble high) {}

    /**
     * Central limits of the fit factor over exercises (their harmonic mean) from counting alone.
     *
     * <p>The mean penetration is a weighted sum of Poisson counts; its limits are those of the
     * gamma distribution with the same mean and variance, which for one exercise, and for any
     * number of like ones, are the exact ones of Garwood (1936). Source: Fay and Feuer, "Confidence
     * intervals for directly standardized rates: a method based on the gamma distribution",
     * Statistics in Medicine 16 (1997) 791-801 (from memory); as wide or wider than promised. The
     * counts in ambient air add their share to the variance, to first order: for one exercise the
     * variance of ln FF is 1/N_mask + 1/N_ambient. That neighbouring exercises share an ambient
     * sample is left out: those counts are larger by about the fit factor.
     *
     * @param exercises at least one
     * @param confidence two-sided, in (0, 1)
     * @throws IllegalArgumentException if there is no exercise, or the confidence is outside its
     *     range
     */
    public static Limits limits(List<Counted> exercises, double confidence) {
        double tail = (1 - requireConfidence(confidence)) / 2;
        Sum sum = Sum.of(exercises);
        return new Limits(1 / sum.upper(1 - tail), sum.most(tail));
    }

    /**
     * What the fit factor over exercises is at least, from counting alone: one-sided.
     *
     * @param exercises at least one
     * @param confidence one-sided, in (0, 1)
     * @throws IllegalArgumentException if there is no exercise, or the confidence is outside its
     *     range
     */
    public static double atLeast(List<Counted> exercises, double confidence) {
        return 1 / Sum.of(exercises).upper(requireConfidence(confidence));
    }

    private static double requireConfidence(double confidence) {
        if (!(confidence > 0 && confidence < 1)) {
            throw Check.refused("confidence", confidence, "must be between 0 and 1");
        }
        return confidence;
    }

    /**
     * The mean penetration.
     *
     * @param mean of it
     * @param variance of its mask counts and its ambient counts
     * @param largest what one more particle in the mask would add at most
     */
    private record Sum(double mean, double variance, double largest) {
        static Sum of(List<Counted> exercises) {
            if (exercises.isEmpty()) {
                throw new IllegalArgumentException("0 exercises, must be at least 1");
            }
            double count = exercises.size();
            double mean = 0;
            double variance = 0;
            double largest = 0;
            for (Counted each : exercises) {
                double weight = each.weight() / count;
                double part = weight * each.mask;
                mean += part;
                variance += weight * part + part * part / each.ambient;
                largest = Math.max(largest, weight);
            }
            return new Sum(mean, variance, largest);
        }

        /** The upper limit of the mean: as if one more particle had come where it weighs most. */
        double upper(double probability) {
            return quantile(mean + largest, variance + largest * largest, probability);
        }

        OptionalDouble most(double probability) {
            return mean == 0
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(1 / quantile(mean, variance, probability));
        }

        /** The distribution of scale 1 is asked: its quantiles are exact to an absolute 1e-9. */
        private static double quantile(double mean, double variance, double probability) {
            return variance
                    / mean
                    * new GammaDistribution(mean * mean / variance, 1)
                            .inverseCumulativeProbability(probability);
        }
    }
}
