package rigside.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rigside.measure.PenetrationTest.refused;

import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CountedTest {
    private static final double VOLUME = Unit.CUBIC_CENTIMETRE.toSi(50);

    /** So many that their own uncertainty is nothing. */
    private static final double EVER_SO_MANY = 1e12;

    /** A mask count in 50 cm3 that belongs to this fit factor, the ambient error negligible. */
    private static Counted counted(double mask, double fitFactor) {
        double ambientVolume = VOLUME * EVER_SO_MANY / (mask * fitFactor);
        return new Counted(mask, VOLUME, EVER_SO_MANY, ambientVolume);
    }

    /** Nothing in the mask at an ambient concentration in /cm3. */
    private static Counted nothing(double concentration) {
        double ambientVolume = EVER_SO_MANY / Unit.PER_CUBIC_CENTIMETRE.toSi(concentration);
        return new Counted(0, VOLUME, EVER_SO_MANY, ambientVolume);
    }

    /** From the exact (Garwood 1936) limits of a count of 25, 16.179 to 36.905. */
    @Test
    void twentyFiveCountsAtTwoHundredSpreadAsWorked() {
        Counted.Limits limits = Counted.limits(List.of(counted(25, 200)), 0.95);
        assertEquals(135.48, limits.low(), 0.005);
        assertEquals(309.05, limits.high().orElseThrow(), 0.005);
    }

    /**
     * 50 cm3 at 5000 /cm3 would hold 250 000; the upper limit of no count is exactly -ln 0.05
     * (2.9957), one-sided, and -ln 0.025, two-sided: at least 83 452 and 67 771.
     */
    @Test
    void noCountAtAllGivesABound() {
        List<Counted> none = List.of(nothing(5000));
        assertEquals(250_000 / -Math.log(0.05), Counted.atLeast(none, 0.95), 0.001);
        assertEquals(250_000 / -Math.log(0.025), Counted.limits(none, 0.95).low(), 0.001);
        assertEquals(OptionalDouble.empty(), Counted.limits(none, 0.95).high());
    }

    /**
     * Garwood's limits of a count, computed from chi-square quantiles (3 digits after the point):
     * counts are turned into fit factors by count times fit factor 1000.
     */
    @ParameterizedTest(name = "{0} counts")
    @CsvSource({
        "1, 0.025, 5.572, 4.744",
        "2, 0.242, 7.225, 6.296",
        "3, 0.619, 8.767, 7.754",
        "5, 1.623, 11.668, 10.513",
        "10, 4.795, 18.390, 16.962",
        "20, 12.217, 30.888, 29.062",
        "100, 81.364, 121.627, 118.079"
    })
    void oneExerciseHasGarwoodsLimits(int count, double lower, double upper, double oneSided) {
        List<Counted> one = List.of(counted(count, 1000.0 / count));
        Counted.Limits limits = Counted.limits(one, 0.95);
        assertEquals(upper, 1000 / limits.low(), 0.0006);
        assertEquals(lower, 1000 / limits.high().orElseThrow(), 0.0006);
        assertEquals(oneSided, 1000 / Counted.atLeast(one, 0.95), 0.0006);
    }

    /** Four like exercises with 5 counts each have, together, the exact limits of 20 counts. */
    @Test
    void likeExercisesHaveTheLimitsOfTheirCountsTogether() {
        Counted.Limits limits = Counted.limits(Collections.nCopies(4, counted(5, 200)), 0.95);
        assertEquals(30.888, 200 * 20 / limits.low(), 0.0006);
        assertEquals(12.217, 200 * 20 / limits.high().orElseThrow(), 0.0006);
    }

    /**
     * To first order the variance of ln of the harmonic mean is sum(P^2/N) / (sum P)^2; with many
     * counts the limits are 1.96 of its roots from the value. Second order is the variance itself.
     */
    @Test
    void manyCountsGiveTheFirstOrderSpreadOfTheHarmonicMean() {
        List<Counted> exercises =
                List.of(counted(4000, 200), counted(1000, 800), counted(8000, 100));
        double[] penetrations = {1 / 200.0, 1 / 800.0, 1 / 100.0};
        double[] counts = {4000, 1000, 8000};
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < 3; i++) {
            sum += penetrations[i];
            squares += penetrations[i] * penetrations[i] / counts[i];
        }
        double spread = Math.sqrt(squares) / sum;
        Counted.Limits limits = Counted.limits(exercises, 0.95);
        double width = Math.log(limits.high().orElseThrow() / limits.low());
        assertEquals(2 * 1.959964 * spread, width, 2 * 1.959964 * spread * 0.01);
        double middle = Math.sqrt(limits.high().orElseThrow() * limits.low());
        assertEquals(3 / sum, middle, 3 / sum * 0.001);
    }

    /** 1/N_mask + 1/N_ambient: as many particles outside as inside double the variance. */
    @Test
    void fewAmbientCountsWidenTheLimitsByTheirShare() {
        List<Counted> both = List.of(new Counted(10_000, VOLUME, 10_000, VOLUME / 10));
        Counted.Limits limits = Counted.limits(both, 0.95);
        double expected = 2 * 1.959964 * Math.sqrt(2.0 / 10_000);
        assertEquals(
                expected, Math.log(limits.high().orElseThrow() / limits.low()), expected * 0.01);
    }

    @Test
    void anExerciseWithoutACountRaisesTheUpperLimitOfPenetrationByWhatItWeighs() {
        List<Counted> some = List.of(nothing(5000), counted(25, 200));
        Counted.Limits limits = Counted.limits(some, 0.95);
        assertEquals(400, harmonic(some), 1e-9);
        assertEquals(2 * 309.05, limits.high().orElseThrow(), 0.01);
        assertEquals(2 * 135.48, limits.low(), 0.01 * 2 * 135.48);
    }

    private static double harmonic(List<Counted> exercises) {
        return exercises.size() / exercises.stream().mapToDouble(Counted::penetration).sum();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.5, 95, Double.NaN})
    void aConfidenceOutsideItsRangeIsRefused(double confidence) {
        assertEquals(
                "confidence " + Numbers.plain(confidence) + ", must be between 0 and 1",
                refused(() -> Counted.limits(List.of(counted(25, 200)), confidence)));
    }

    @Test
    void withoutAnExerciseThereAreNoLimits() {
        assertEquals(
                "0 exercises, must be at least 1", refused(() -> Counted.limits(List.of(), 0.95)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void aCountMustBeOne(double count) {
        assertEquals(
                "mask count " + Numbers.plain(count) + ", must be a finite number, 0 or above",
                refused(() -> new Counted(count, VOLUME, 1, VOLUME)));
    }

    @Test
    void concentrationsAndVolumesGiveTheCounts() {
        // 25 particles of the mask in 50 cm3 at fit factor 200: 135.48 to 309.05, see
        // timing-and-counting.md, "ambient error negligible": so much air that it is.
        Counted counted =
                Counted.of(
                                new Counted.Sampled(0.5e6, 50e-6),
                                List.of(
                                        new Counted.Sampled(90e6, 1),
                                        new Counted.Sampled(110e6, 2)))
                        .orElseThrow();
        assertEquals(200, 1 / counted.penetration(), 1e-9, "the plain mean, whatever the volumes");
        Counted.Limits limits = Counted.limits(List.of(counted), 0.95);
        assertEquals(135.48, limits.low(), 0.005);
        assertEquals(309.05, limits.high().orElseThrow(), 0.005);
    }

    @Test
    void theRoomsCountsHaveTheVarianceOfThePlainMean() {
        // N1 = 100 in one litre, N2 = 400 in two: means 100 and 200 a litre, var 100 and 100 a
        // litre squared; the mean 150 has variance 50, so 150^2 / 50 = 450 particles.
        Counted counted =
                Counted.of(
                                new Counted.Sampled(1e3, 1e-3),
                                List.of(
                                        new Counted.Sampled(100e3, 1e-3),
                                        new Counted.Sampled(200e3, 2e-3)))
                        .orElseThrow();
        assertEquals(450, counted.ambient(), 1e-9);
        assertEquals(150e3, counted.ambient() / counted.ambientVolume(), 1e-6);
    }

    @Test
    void withoutAVolumeOrAmbientParticlesNothingIsCounted() {
        Counted.Sampled mask = new Counted.Sampled(1e6, 1e-5);
        assertEquals(
                java.util.Optional.empty(), Counted.of(mask, List.of(new Counted.Sampled(1e9, 0))));
        assertEquals(
                java.util.Optional.empty(),
                Counted.of(mask, List.of(new Counted.Sampled(0, 1e-5))));
        assertEquals(java.util.Optional.empty(), Counted.of(mask, List.of()));
    }
}
