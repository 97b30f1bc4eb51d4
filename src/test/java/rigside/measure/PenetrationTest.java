package rigside.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class PenetrationTest {
    /** Relative; some roundings of doubles over at most eight exercises. */
    private static final double ROUNDING = 1e-14;

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/measure/harmonic-means.csv", useHeadersInDisplayName = true)
    void meanInvertedIsTheHarmonicMean(
            String id, String fitFactors, double overall, double tolerance) {
        assertEquals(overall, Penetration.mean(measured(fitFactors)).fitFactor(), tolerance, id);
    }

    @Test
    void aMeasuredPenetrationIsAPoint() {
        Penetration measured = Penetration.of(4200, 40, 8.4);
        assertEquals(40 / 4200.0, measured.low());
        assertEquals(40 / 4200.0, measured.high());
        assertFalse(measured.bounded());
        assertFalse(measured.unresolved());
        assertEquals(105, measured.fitFactor(), 105 * ROUNDING);
    }

    @ParameterizedTest
    @CsvSource({"8.4", "8.3", "0"})
    void atOrBelowTheDetectionLimitItIsBounded(double mask) {
        Penetration bounded = Penetration.of(4200, mask, 8.4);
        assertEquals(new Penetration(0, 8.4 / 4200), bounded);
        assertTrue(bounded.bounded());
        assertTrue(bounded.unresolved());
        assertEquals(500, bounded.fitFactor(), 500 * ROUNDING);
    }

    /** HM7: at least 500, 250 and 250 give at least 3/0.010 and never above 3/0.008. */
    @Test
    void aMeanOverSomeBoundedExercisesIsAtLeastAndAtMost() {
        Penetration overall = Penetration.mean(oneBounded());
        assertEquals(300, overall.fitFactor(), 300 * ROUNDING);
        assertEquals(375, 1 / overall.low(), 375 * ROUNDING);
        assertTrue(overall.bounded());
        assertFalse(overall.unresolved());
    }

    @Test
    void aMeanOverBoundedExercisesOnlyIsUnresolved() {
        assertTrue(Penetration.mean(List.of(bounded(500), bounded(400))).unresolved());
    }

    @Test
    void halvingHalvesTheBoundedExercisesOnly() {
        Penetration halved = Penetration.mean(oneBounded()).halved();
        double byHand = (0.5 / 500 + 1 / 250.0 + 1 / 250.0) / 3;
        assertEquals(byHand, halved.high(), byHand * ROUNDING);
        assertEquals(1000 / 3.0, halved.fitFactor(), 1000 / 3.0 * ROUNDING);
        assertFalse(halved.bounded());
    }

    @Test
    void halvingBeforeOrAfterTheMeanIsTheSame() {
        List<Penetration> exercises = oneBounded();
        double before =
                Penetration.mean(exercises.stream().map(Penetration::halved).toList()).high();
        assertEquals(before, Penetration.mean(exercises).halved().high(), before * ROUNDING);
    }

    @Test
    void halvingLeavesWhatWasMeasured() {
        Penetration measured = Penetration.of(4200, 40, 8.4);
        assertEquals(measured, measured.halved());
        assertEquals(bounded(1000).high(), bounded(500).halved().high(), 1e-3 * ROUNDING);
    }

    @Test
    void overallLiesBetweenTheExercisesAndNotAboveTheirGeometricMean() {
        Random random = new Random(1);
        for (int donning = 0; donning < 200; donning++) {
            double[] ff = random.doubles(7, 1, 8).map(Math::exp).toArray();
            double overall = Penetration.mean(measured(ff)).fitFactor();
            double least = DoubleStream.of(ff).min().orElseThrow();
            double most = DoubleStream.of(ff).max().orElseThrow();
            double geometric = Math.exp(DoubleStream.of(ff).map(Math::log).average().orElseThrow());
            assertTrue(least < overall && overall < most, Arrays.toString(ff));
            assertTrue(overall < geometric, Arrays.toString(ff));
        }
    }

    @Test
    void scalingOneKindOfConcentrationScalesTheFitFactor() {
        double plain = Penetration.of(4200, 40, 1).fitFactor();
        assertEquals(3 * plain, Penetration.of(3 * 4200, 40, 1).fitFactor(), plain * ROUNDING);
        assertEquals(plain / 3, Penetration.of(4200, 3 * 40, 1).fitFactor(), plain * ROUNDING);
        double perCubicMetre = Penetration.of(4200e6, 40e6, 1e6).fitFactor();
        assertEquals(plain, perCubicMetre, plain * ROUNDING);
    }

    @Test
    void theOrderOfExercisesDoesNotMatter() {
        List<Penetration> exercises = new ArrayList<>(measured("200 100 50 200 100 200 100"));
        exercises.add(bounded(500));
        Penetration inOrder = Penetration.mean(exercises);
        Random random = new Random(2);
        for (int i = 0; i < 50; i++) {
            Collections.shuffle(exercises, random);
            Penetration shuffled = Penetration.mean(exercises);
            assertEquals(inOrder.low(), shuffled.low(), inOrder.low() * ROUNDING);
            assertEquals(inOrder.high(), shuffled.high(), inOrder.high() * ROUNDING);
        }
    }

    @ParameterizedTest(name = "ambient {0}, mask {1}, limit {2}")
    @CsvSource({
        "0, 40, 1, 'ambient concentration 0, must be a finite number above 0'",
        "-1, 40, 1, 'ambient concentration -1, must be a finite number above 0'",
        "NaN, 40, 1, 'ambient concentration NaN, must be a finite number above 0'",
        "Infinity, 40, 1, 'ambient concentration Infinity, must be a finite number above 0'",
        "4200, -1, 1, 'mask concentration -1, must be a finite number, 0 or above'",
        "4200, NaN, 1, 'mask concentration NaN, must be a finite number, 0 or above'",
        "4200, Infinity, 1, 'mask concentration Infinity, must be a finite number, 0 or above'",
        "4200, 40, -1, 'detection limit -1, must be a finite number, 0 or above'",
        "4200, 40, NaN, 'detection limit NaN, must be a finite number, 0 or above'",
        "4200, 40, Infinity, 'detection limit Infinity, must be a finite number, 0 or above'",
        "4200, 0, 0, 'mask concentration 0, must be above 0 where no detection limit is known'",
    })
    void refusesWhatIsNoReading(double ambient, double mask, double limit, String message) {
        assertEquals(message, refused(() -> Penetration.of(ambient, mask, limit)));
    }

    @ParameterizedTest(name = "low {0}, high {1}")
    @CsvSource({
        "-0.1, 0.1, 'low penetration -0.1, must be a finite number, 0 or above'",
        "NaN, 0.1, 'low penetration NaN, must be a finite number, 0 or above'",
        "0, 0, 'high penetration 0, must be a finite number above 0'",
        "0, NaN, 'high penetration NaN, must be a finite number above 0'",
        "0, Infinity, 'high penetration Infinity, must be a finite number above 0'",
        "0.2, 0.1, 'low penetration 0.2, must be at most the high one 0.1'",
    })
    void refusesWhatIsNoInterval(double low, double high, String message) {
        assertEquals(message, refused(() -> new Penetration(low, high)));
    }

    @Test
    void refusesAMeanOfNothing() {
        assertEquals(
                "0 penetrations, must be at least 1", refused(() -> Penetration.mean(List.of())));
    }

    static String refused(Runnable call) {
        return assertThrows(IllegalArgumentException.class, call::run).getMessage();
    }

    static List<Penetration> measured(String fitFactors) {
        return measured(
                Arrays.stream(fitFactors.split(" ", -1))
                        .mapToDouble(Double::parseDouble)
                        .toArray());
    }

    private static List<Penetration> measured(double... fitFactors) {
        return DoubleStream.of(fitFactors).mapToObj(f -> new Penetration(1 / f, 1 / f)).toList();
    }

    static Penetration bounded(double atLeast) {
        return new Penetration(0, 1 / atLeast);
    }

    /** HM7. */
    static List<Penetration> oneBounded() {
        List<Penetration> exercises = new ArrayList<>(measured("250 250"));
        exercises.add(0, bounded(500));
        return exercises;
    }
}
