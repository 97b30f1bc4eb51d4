package rigside.decide;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.random.RandomGenerator;

/**
 * Forecasts by playing the rounds to come under the same rules.
 *
 * <p>The true mean and variance are drawn from what the values so far say of them (non-informative
 * prior: mean and log sigma independent and uniform, so that variance = sum of squares /
 * chi-square(df), mean normal about the sample mean; Stone 1963, The posterior t distribution, Ann.
 * Math. Statist. 34, 568; from memory Box and Tiao 1973, section 2.4), then the values to come from
 * these.
 */
public final class Forecasts {

    /** The most rounds {@link Forecast#needed} names: no plan can have more. */
    public static final int FARTHEST = 50;

    private static final int CAMPAIGNS = 10_000;

    /** The chance of settling behind {@link Forecast#needed}. */
    private static final double WISHED = 0.8;

    private Forecasts() {}

    /** From paired differences of a plan that can still be played to its last look. */
    public static Forecast paired(
            Rules rules,
            double[] differences,
            OptionalDouble expectedSpread,
            RandomGenerator random) {
        return paired(rules, differences, Integer.MAX_VALUE, expectedSpread, random);
    }

    /**
     * From paired differences.
     *
     * @param differences other minus reference, one a round, in order
     * @param reachable how many differences there can be at most: fewer than the plan's last look
     *     where rounds were lost
     * @param expectedSpread the standard deviation of one value the protocol expects (a difference
     *     then has sqrt(2) times that), used while fewer than two differences are there; above 0
     * @param random seeded by the caller
     * @return silent without any value, and with one value and no expected spread
     * @throws IllegalArgumentException if the schedule is not for pairs or a value is not finite
     */
    public static Forecast paired(
            Rules rules,
            double[] differences,
            int reachable,
            OptionalDouble expectedSpread,
            RandomGenerator random) {
        Course course = Sequential.pairedCourse(rules, differences);
        OptionalDouble spread =
                expectedSpread.isPresent()
                        ? OptionalDouble.of(rules.analysedSpread(expectedSpread.getAsDouble()))
                        : expectedSpread;
        return forecast(rules, course, new double[0], differences, reachable, spread, random);
    }

    /**
     * From two independent arms.
     *
     * @param reference values of the reference, in order
     * @param other values of the other condition, in order
     * @param expectedSpread the standard deviation of one value the protocol expects, used while
     *     the values leave no degree of freedom; above 0
     * @param random seeded by the caller
     * @return silent while an arm is empty, and without spread
     * @throws IllegalArgumentException if the schedule is not for independent arms or a value is
     *     not finite
     */
    public static Forecast independent(
            Rules rules,
            double[] reference,
            double[] other,
            OptionalDouble expectedSpread,
            RandomGenerator random) {
        Course course = Sequential.independentCourse(rules, reference, other);
        if (reference.length == 0) {
            return Forecast.SILENT;
        }
        return forecast(rules, course, reference, other, Integer.MAX_VALUE, expectedSpread, random);
    }

    private static Forecast forecast(
            Rules rules,
            Course course,
            double[] reference,
            double[] other,
            int reachable,
            OptionalDouble expectedSpread,
            RandomGenerator random) {
        Optional<Finding> settled = course.settling();
        if (settled.isPresent()) {
            return done(settled.get().verdict());
        }
        if (other.length == 0) {
            return Forecast.SILENT;
        }
        Sample sample = reference.length == 0 ? Sample.of(other) : Sample.of(reference, other);
        boolean known = sample.degreesOfFreedom() < 1;
        if (known && expectedSpread.isEmpty()) {
            return Forecast.SILENT;
        }
        double spread =
                known
                        ? expectedSpread.getAsDouble()
                        : Math.max(sample.spread(), rules.roundingSpread());
        if (!Double.isFinite(spread)) {
            return Forecast.SILENT;
        }
        return play(
                rules,
                reference,
                other,
                reachable,
                spread,
                known ? 0 : (int) sample.degreesOfFreedom(),
                random);
    }

    private static Forecast play(
            Rules rules,
            double[] reference,
            double[] other,
            int reachable,
            double spread,
            int df,
            RandomGenerator random) {
        boolean paired = reference.length == 0;
        double referenceMean = paired ? 0 : Sample.mean(reference);
        double otherMean = Sample.mean(other);
        Campaign campaign = new Campaign(rules, reference, other, otherMean);
        int looks = rules.schedule().looks().size();
        int[] settledAt = new int[looks];
        int meaningful = 0;
        int noMeaningful = 0;
        for (int i = 0; i < CAMPAIGNS; i++) {
            double sigma = df == 0 ? spread : spread * Math.sqrt(df / chiSquare(df, random));
            double muReference =
                    paired
                            ? 0
                            : referenceMean
                                    + sigma * random.nextGaussian() / Math.sqrt(reference.length);
            double muOther = otherMean + sigma * random.nextGaussian() / Math.sqrt(other.length);
            campaign.play(muReference, muOther, sigma, false, random);
            int at = campaign.settledAt();
            if (at >= 0 && rules.schedule().looks().get(at).arms().other() <= reachable) {
                settledAt[at]++;
                if (campaign.verdict() == Verdict.MEANINGFUL_DIFFERENCE) {
                    meaningful++;
                } else {
                    noMeaningful++;
                }
            }
        }
        double settles = (double) Arrays.stream(settledAt).sum() / CAMPAIGNS;
        return new Forecast(
                OptionalDouble.of(settles),
                OptionalDouble.of(
                        campaign.next() < looks
                                ? (double) settledAt[campaign.next()] / CAMPAIGNS
                                : 0),
                further(rules, reference, other, settledAt, 0.5),
                further(rules, reference, other, settledAt, 0.1),
                further(rules, reference, other, settledAt, 0.9),
                (double) meaningful / CAMPAIGNS,
                (double) noMeaningful / CAMPAIGNS,
                settles < 0.5
                        ? new Needed(rules, otherMean - referenceMean, spread).rounds(WISHED)
                        : OptionalInt.empty());
    }

    private static Forecast done(Verdict verdict) {
        boolean meaningful = verdict == Verdict.MEANINGFUL_DIFFERENCE;
        return new Forecast(
                OptionalDouble.of(1),
                OptionalDouble.of(1),
                OptionalInt.of(0),
                OptionalInt.of(0),
                OptionalInt.of(0),
                meaningful ? 1 : 0,
                meaningful ? 0 : 1,
                OptionalInt.empty());
    }

    /** Further values until this share of the campaigns has settled. */
    private static OptionalInt further(
            Rules rules, double[] reference, double[] other, int[] settledAt, double share) {
        int settled = 0;
        for (int i = 0; i < settledAt.length; i++) {
            settled += settledAt[i];
            if (settled >= share * CAMPAIGNS) {
                Schedule.Arms arms = rules.schedule().looks().get(i).arms();
                int more = arms.other() - other.length;
                if (reference.length > 0) {
                    more = Math.max(more, arms.reference() - reference.length);
                }
                return OptionalInt.of(Math.max(0, more));
            }
        }
        return OptionalInt.empty();
    }

    private static double chiSquare(int df, RandomGenerator random) {
        double sum = 0;
        for (int i = 0; i < df; i++) {
            double z = random.nextGaussian();
            sum += z * z;
        }
        return sum;
    }
}
