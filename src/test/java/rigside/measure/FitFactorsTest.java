package rigside.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rigside.measure.FitFactors.Rule.EVERY_EXERCISE;
import static rigside.measure.FitFactors.Rule.OVERALL;
import static rigside.measure.PenetrationTest.bounded;
import static rigside.measure.PenetrationTest.measured;
import static rigside.measure.PenetrationTest.refused;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.measure.FitFactors.Rule;
import rigside.measure.FitFactors.Sample;

class FitFactorsTest {
    /** Relative; some roundings of doubles. */
    private static final double ROUNDING = 1e-14;

    /** HM6: ambient 4000, 4400, 4200 around mask samples of 40 and 43 per cm3. */
    private static final List<Sample> AMBIENT = List.of(at(0, 4000), at(60, 4400), at(120, 4200));

    private static final Sample FIRST = at(30, 40);
    private static final Sample SECOND = at(90, 43);

    @Test
    void ambientIsTheMeanOfTheSamplesAroundTheMaskSample() {
        assertEquals(OptionalDouble.of(4200), FitFactors.ambient(AMBIENT, FIRST));
        assertEquals(OptionalDouble.of(4300), FitFactors.ambient(AMBIENT, SECOND));
        Penetration first = FitFactors.exercise(AMBIENT, FIRST, 0).orElseThrow();
        Penetration second = FitFactors.exercise(AMBIENT, SECOND, 0).orElseThrow();
        assertEquals(105, first.fitFactor(), 105 * ROUNDING);
        assertEquals(100, second.fitFactor(), 100 * ROUNDING);
        double overall =
                FitFactors.overall(List.of(Optional.of(first), Optional.of(second)))
                        .orElseThrow()
                        .fitFactor();
        assertEquals(102.4390, overall, 5e-5, "the source prints four decimals");
    }

    @Test
    void theOrderOfTheListDoesNotMatter() {
        List<Sample> backwards = new ArrayList<>(AMBIENT);
        Collections.reverse(backwards);
        assertEquals(OptionalDouble.of(4300), FitFactors.ambient(backwards, SECOND));
    }

    @Test
    void theOnlySideThereIsCountsAlone() {
        assertEquals(OptionalDouble.of(4200), FitFactors.ambient(AMBIENT, at(150, 43)));
        assertEquals(OptionalDouble.of(4000), FitFactors.ambient(AMBIENT, at(-30, 43)));
    }

    @Test
    void aMissingAmbientSampleIsReplacedByTheNextNearest() {
        List<Sample> firstAndLast = List.of(AMBIENT.get(0), AMBIENT.get(2));
        assertEquals(OptionalDouble.of(4100), FitFactors.ambient(firstAndLast, FIRST));
        assertEquals(OptionalDouble.of(4100), FitFactors.ambient(firstAndLast, SECOND));
    }

    @Test
    void aSampleAtTheSameTimeCountsAsBefore() {
        List<Sample> samples = List.of(at(0, 1000), at(30, 2000), at(60, 4000));
        assertEquals(OptionalDouble.of(3000), FitFactors.ambient(samples, FIRST));
    }

    @ParameterizedTest(name = "ambient {0}, mask {1}, limit {2}")
    @CsvSource({", 40, 1", "0, 40, 1", "0, 0, 1", "4200, 0, 0"})
    void samplesThatLeaveNoFitFactorGiveNone(Double ambient, double mask, double limit) {
        List<Sample> samples = ambient == null ? List.of() : List.of(at(0, ambient));
        assertEquals(Optional.empty(), FitFactors.exercise(samples, at(30, mask), limit));
    }

    @Test
    void aMaskSampleOfZeroIsBoundedByTheDetectionLimit() {
        assertEquals(
                Optional.of(new Penetration(0, 8.4 / 4200)),
                FitFactors.exercise(AMBIENT, at(30, 0), 8.4));
    }

    @Test
    void anExerciseWithoutValueLeavesNoOverall() {
        List<Optional<Penetration>> gap = List.of(Optional.of(bounded(500)), Optional.empty());
        assertEquals(Optional.empty(), FitFactors.overall(gap));
        assertEquals(Optional.empty(), FitFactors.overall(List.of()));
    }

    @ParameterizedTest(name = "{0}: {1} at {2}, {3}")
    @CsvSource({
        "HM1, 100 100 100 100 100 100 100, 100, OVERALL, true",
        "HM1, 100 100 100 100 100 100 100, 100, EVERY_EXERCISE, true",
        "HM2, 200 100 50 200 100 200 100, 100, OVERALL, true",
        "HM2, 200 100 50 200 100 200 100, 100, EVERY_EXERCISE, false",
        "HM4, 1000 1000 1000 20, 100, OVERALL, false",
        "HM5, 2000 2000 2000 2000 2000 2000 100, 500, OVERALL, true",
        "HM5, 2000 2000 2000 2000 2000 2000 100, 2000, EVERY_EXERCISE, false",
        "HM8, 200 100 50 200, 100, OVERALL, true",
        "exactly 60 before rounding, 40 60 50 200, 60, OVERALL, true",
        "just below, 99.9999, 100, OVERALL, false",
    })
    void measuredDonningsPassOrFallShort(
            String id, String fitFactors, double level, Rule rule, boolean passes) {
        List<Optional<Penetration>> exercises = known(measured(fitFactors));
        assertEquals(passes, FitFactors.passes(exercises, level, rule), id);
        assertEquals(!passes, FitFactors.fallsShort(exercises, level, rule), id);
    }

    /** HM7: overall at least 300, at most 375. */
    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource({
        "300, OVERALL, true, false",
        "301, OVERALL, false, false",
        "375, OVERALL, false, false",
        "376, OVERALL, false, true",
        "250, EVERY_EXERCISE, true, false",
        "251, EVERY_EXERCISE, false, true",
    })
    void aBoundedDonningMayBeLeftOpen(double level, Rule rule, boolean passes, boolean fallsShort) {
        List<Optional<Penetration>> exercises = known(PenetrationTest.oneBounded());
        assertEquals(passes, FitFactors.passes(exercises, level, rule));
        assertEquals(fallsShort, FitFactors.fallsShort(exercises, level, rule));
    }

    @Test
    void aDonningWithAGapPassesNowhereButCanFallShort() {
        List<Optional<Penetration>> gap = new ArrayList<>(known(measured("200 50")));
        gap.add(Optional.empty());
        assertFalse(FitFactors.passes(gap, 10, OVERALL));
        assertFalse(FitFactors.passes(gap, 10, EVERY_EXERCISE));
        assertFalse(FitFactors.fallsShort(gap, 100, OVERALL));
        assertTrue(FitFactors.fallsShort(gap, 100, EVERY_EXERCISE));
        assertFalse(FitFactors.passes(List.of(), 10, EVERY_EXERCISE));
        assertFalse(FitFactors.fallsShort(List.of(), 10, EVERY_EXERCISE));
    }

    @Test
    void countingVarianceAddsTheTwoCounts() {
        assertEquals(0.05, FitFactors.countingLogVariance(25, 100), 0.05 * ROUNDING);
    }

    @Test
    void countingVarianceOfTheOverallIsWeightedByPenetration() {
        List<Penetration> exercises = measured("100 50");
        double byHand = (0.01 * 0.01 / 20 + 0.02 * 0.02 / 40) / (0.03 * 0.03);
        assertEquals(
                byHand,
                FitFactors.countingLogVariance(exercises, List.of(20.0, 40.0)),
                byHand * ROUNDING);
    }

    @Test
    void equalExercisesCountAsOneLongOne() {
        double four =
                FitFactors.countingLogVariance(
                        measured("100 100 100 100"), List.of(25.0, 25.0, 25.0, 25.0));
        double one = FitFactors.countingLogVariance(measured("100"), List.of(100.0));
        assertEquals(one, four, one * ROUNDING);
    }

    @Test
    void refusesWhatIsNoSampleLevelOrCount() {
        assertEquals(
                "concentration -1, must be a finite number, 0 or above", refused(() -> at(0, -1)));
        assertEquals(
                "concentration NaN, must be a finite number, 0 or above",
                refused(() -> at(0, Double.NaN)));
        assertEquals(
                "start of a sample NaN, must be a finite number",
                refused(() -> new Sample(Double.NaN, 1, 1)));
        assertEquals(
                "end of a sample Infinity, must be a finite number",
                refused(() -> new Sample(0, Double.POSITIVE_INFINITY, 1)));
        assertEquals(
                "end of a sample 1, must not be before its start 2",
                refused(() -> new Sample(2, 1, 1)));
        assertEquals(
                "required level 0, must be a finite number above 0",
                refused(() -> FitFactors.passes(List.of(), 0, OVERALL)));
        assertEquals(
                "required level NaN, must be a finite number above 0",
                refused(() -> FitFactors.fallsShort(List.of(), Double.NaN, OVERALL)));
        assertEquals(
                "detection limit -1, must be a finite number, 0 or above",
                refused(() -> FitFactors.exercise(List.of(), FIRST, -1)));
        assertEquals(
                "mask count 0, must be a finite number above 0",
                refused(() -> FitFactors.countingLogVariance(0, 10)));
        assertEquals(
                "ambient count NaN, must be a finite number above 0",
                refused(() -> FitFactors.countingLogVariance(10, Double.NaN)));
        assertEquals(
                "mask counts 1, must be one for each exercise (2) and at least 1",
                refused(() -> FitFactors.countingLogVariance(measured("100 50"), List.of(20.0))));
        assertEquals(
                "mask counts 0, must be one for each exercise (0) and at least 1",
                refused(() -> FitFactors.countingLogVariance(List.of(), List.of())));
    }

    private static Sample at(double seconds, double concentration) {
        return new Sample(seconds, seconds + 20, concentration);
    }

    private static List<Optional<Penetration>> known(List<Penetration> exercises) {
        return exercises.stream().map(Optional::of).toList();
    }
}
