package rigside.decide;

import java.util.Arrays;
import java.util.List;

/**
 * How much of the spread comes from putting the mask on anew, and how much from one trial to the
 * next within a donning. Moment estimates of the nested analysis of variance (condition, donning
 * within condition, trial within donning), balanced or not.
 *
 * @param trial variance between trials of one donning
 * @param donning variance between donnings of one condition, beyond what trials explain; at least 0
 * @param donningUntruncated the same before a negative estimate is set to 0
 * @param trialsPerDonning the effective number n0 = (N - sum over conditions of sum n_ij^2 / n_i) /
 *     df of donnings
 * @param donningMeanSquare mean square of donnings within conditions
 * @param donningDf its degrees of freedom: donnings less conditions
 * @param trialDf degrees of freedom of the trial variance: trials less donnings
 */
public record VarianceParts(
        double trial,
        double donning,
        double donningUntruncated,
        double trialsPerDonning,
        double donningMeanSquare,
        double donningDf,
        double trialDf) {

    /**
     * From the trials, on the analysis scale.
     *
     * @param conditions for each condition its donnings, for each donning its trials; empty
     *     donnings and conditions are passed over
     * @throws IllegalArgumentException unless some condition has two donnings and some donning two
     *     trials, all values finite
     */
    public static VarianceParts of(List<List<double[]>> conditions) {
        int trials = 0;
        int donnings = 0;
        int used = 0;
        double uneven = 0;
        double within = 0;
        double between = 0;
        for (List<double[]> condition : conditions) {
            List<double[]> filled = centred(condition.stream().filter(d -> d.length > 0).toList());
            if (filled.isEmpty()) {
                continue;
            }
            double[] all = filled.stream().flatMapToDouble(Arrays::stream).toArray();
            double mean = Sample.mean(all);
            double squaresOfCounts = 0;
            for (double[] donning : filled) {
                double off = Sample.mean(donning) - mean;
                within += Sample.squares(donning);
                between += donning.length * off * off;
                squaresOfCounts += (double) donning.length * donning.length;
            }
            trials += all.length;
            donnings += filled.size();
            used++;
            uneven += squaresOfCounts / all.length;
        }
        double donningDf = donnings - used;
        double trialDf = trials - donnings;
        if (donningDf < 1 || trialDf < 1) {
            throw new IllegalArgumentException(
                    "variance parts need two donnings of a condition and two trials of a donning");
        }
        if (!Double.isFinite(within + between)) {
            throw new IllegalArgumentException("trial values must be finite");
        }
        double trial = within / trialDf;
        double meanSquare = between / donningDf;
        double perDonning = (trials - uneven) / donningDf;
        double donning = (meanSquare - trial) / perDonning;
        return new VarianceParts(
                trial, Math.max(0, donning), donning, perDonning, meanSquare, donningDf, trialDf);
    }

    /**
     * The same about their first value: differences of near numbers are exact, so that means keep
     * the digits that leading ones in common would cost.
     */
    private static List<double[]> centred(List<double[]> donnings) {
        return donnings.stream()
                .map(d -> Arrays.stream(d).map(x -> x - donnings.get(0)[0]).toArray())
                .toList();
    }

    /** The share of the variance of a single trial that comes from the donning. */
    public double donningShare() {
        return donning / (donning + trial);
    }

    /**
     * Degrees of freedom of the untruncated donning variance, a difference of mean squares
     * (Satterthwaite 1946): rough when the difference is small; 0 when it is not above 0.
     */
    public double donningSatterthwaite() {
        if (!(donningUntruncated > 0)) {
            return 0;
        }
        double difference = donningMeanSquare - trial;
        return difference
                * difference
                / (donningMeanSquare * donningMeanSquare / donningDf + trial * trial / trialDf);
    }

    /**
     * Exact limits for the trial variance: trialDf times it over chi-square quantiles with trialDf
     * degrees of freedom.
     *
     * @param confidence two-sided, in (0, 1)
     * @throws IllegalArgumentException if confidence is outside its range
     */
    public Limits trialLimits(double confidence) {
        return ExactLimits.variance(trial, trialDf, confidence);
    }

    /**
     * Limits for the donning variance, taken as a chi-square multiple with the degrees of freedom
     * of {@link #donningSatterthwaite()} (Satterthwaite 1946, An approximate distribution of
     * estimates of variance components, Biometrics Bulletin 2, 110): rough, and wide, when it is
     * small against the trial variance. Where nothing of it is seen there are no such degrees of
     * freedom: then 0, and the exact upper limit of the donning mean square as if all of it came
     * from donnings, which is cautious.
     *
     * @param confidence two-sided, in (0, 1)
     * @throws IllegalArgumentException if confidence is outside its range
     */
    public Limits donningLimits(double confidence) {
        if (!(donningUntruncated > 0)) {
            double most = ExactLimits.variance(donningMeanSquare, donningDf, confidence).high();
            return new Limits(0, most / trialsPerDonning);
        }
        return ExactLimits.variance(donningUntruncated, donningSatterthwaite(), confidence);
    }

    /**
     * The number of trials a donning that gives the most certainty for the time spent: the whole
     * number that makes (donning + trial / n) (cost of a donning + n cost of a trial) least.
     *
     * @param donningCost of a donning without trials, in any unit; at least 0
     * @param trialCost of one trial, in the same unit; above 0
     * @param most the most trials worth considering, at least 1
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public int bestTrials(double donningCost, double trialCost, int most) {
        return bestTrials(donning, trial, donningCost, trialCost, most);
    }

    /**
     * The same for any two variances.
     *
     * @param donning variance between donnings, at least 0
     * @param trial variance between trials of one donning, at least 0
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static int bestTrials(
            double donning, double trial, double donningCost, double trialCost, int most) {
        if (!(donning >= 0 && trial >= 0 && donningCost >= 0 && trialCost > 0 && most >= 1)) {
            throw new IllegalArgumentException(
                    "variances "
                            + donning
                            + " and "
                            + trial
                            + ", costs "
                            + donningCost
                            + " and "
                            + trialCost
                            + ", most "
                            + most);
        }
        int best = 1;
        double least = Double.POSITIVE_INFINITY;
        for (int n = 1; n <= most; n++) {
            double price = (donning + trial / n) * (donningCost + n * trialCost);
            if (price < least) {
                best = n;
                least = price;
            }
        }
        return best;
    }
}
