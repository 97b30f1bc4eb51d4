package rigside.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rigside.measure.PenetrationTest.refused;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TimedInhalationTest {
    /** Relative; some roundings of doubles, the logarithm's and the exponential's among them. */
    private static final double ROUNDING = 1e-14;

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/measure/inhalations.csv", useHeadersInDisplayName = true)
    void resistanceAndFlowFollowFromPressureTimeAndVolume(
            String id,
            double pressurePa,
            double litres,
            double seconds,
            double resistance,
            double flow,
            double tolerance) {
        double m3 = Unit.LITRE.toSi(litres);
        assertEquals(
                resistance,
                Unit.PASCAL_SECOND_PER_LITRE.fromSi(
                        TimedInhalation.resistance(pressurePa, seconds, m3)),
                resistance * tolerance,
                id);
        assertEquals(
                flow,
                Unit.LITRE_PER_SECOND.fromSi(TimedInhalation.meanFlow(m3, seconds)),
                flow * tolerance,
                id);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/measure/drops-at-85.csv", useHeadersInDisplayName = true)
    void dropAt85IsTheResistanceTimesTheFlow(
            String id, double resistance, double drop, double tolerance) {
        double si = Unit.PASCAL_SECOND_PER_LITRE.toSi(resistance);
        assertEquals(drop, TimedInhalation.estimatedDropAt85LitresPerMinute(si), tolerance, id);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/measure/timing-shares.csv", useHeadersInDisplayName = true)
    void timingExplainsItsShareOfTheSpread(
            String id, double timingSd, double trialSd, double share, double tolerance) {
        assertEquals(share, TimedInhalation.timingShare(timingSd, trialSd), tolerance, id);
    }

    /** By hand: the sum of squared distances is 0.004, over 4, doubled. */
    @Test
    void aPairOfPressesSpreadsByTheRootOfTwoMoreThanOne() {
        List<Double> reactions = List.of(0.20, 0.24, 0.22, 0.18, 0.26);
        assertEquals(
                Math.sqrt(0.002),
                TimedInhalation.pairSpread(reactions).orElseThrow(),
                Math.sqrt(0.002) * ROUNDING);
        assertEquals(OptionalDouble.empty(), TimedInhalation.pairSpread(reactions.subList(0, 4)));
    }

    /** Every reaction later by the sound system's delay. */
    @Test
    void whatTheSoundSystemDelaysDoesNotSpread() {
        List<Double> reactions = List.of(0.20, 0.24, 0.22, 0.18, 0.26);
        List<Double> later = reactions.stream().map(seconds -> seconds + 0.5).toList();
        double spread = TimedInhalation.pairSpread(reactions).orElseThrow();
        assertEquals(spread, TimedInhalation.pairSpread(later).orElseThrow(), spread * 1e-13);
    }

    @Test
    void timesAreSummarisedByTheirGeometricMean() {
        assertEquals(4, mean(2.0, 8.0), 4 * ROUNDING);
        assertEquals(12.4, mean(12.4), 12.4 * ROUNDING);
        assertEquals(6, mean(4.0, 6.0, 9.0), 6 * ROUNDING);
        assertEquals(OptionalDouble.empty(), TimedInhalation.geometricMean(List.of()));
    }

    @Test
    void theOrderOfTrialsAndTheUnitDoNotMatter() {
        double seconds = mean(8.0, 9.2, 8.7);
        assertEquals(seconds, mean(8.7, 8.0, 9.2), seconds * ROUNDING);
        assertEquals(seconds / 60, mean(8.0 / 60, 9.2 / 60, 8.7 / 60), seconds / 60 * ROUNDING);
    }

    /** BR10: 8.0 s without the part and 9.2 s with it; also as resistances, the volume any. */
    @Test
    void anAddedPartInSeriesIsTheRatioLessOne() {
        assertEquals(0.15, TimedInhalation.addedInSeries(9.2 / 8.0), 1e-15);
        double without = TimedInhalation.resistance(250, 8.0, 0.0047);
        double with = TimedInhalation.resistance(250, 9.2, 0.0047);
        assertEquals(0.15, (with - without) / without, 1e-14);
        assertEquals(-0.2, TimedInhalation.addedInSeries(0.8), 1e-15);
    }

    @ParameterizedTest
    @CsvSource({"50, 0.02", "100, 0.01", "1, 1", "0.5, 1"})
    void whatCanHaveLeakedIsOneOverTheFitFactor(double fitFactor, double share) {
        assertEquals(share, TimedInhalation.possibleLeakShare(fitFactor));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesWhatIsNotAboveZero(double wrong) {
        String condition = " " + Numbers.plain(wrong) + ", must be a finite number above 0";
        assertEquals(
                "inhalation time" + condition,
                refused(() -> TimedInhalation.geometricMean(List.of(8.0, wrong))));
        assertEquals(
                "inhaled volume" + condition, refused(() -> TimedInhalation.meanFlow(wrong, 1)));
        assertEquals(
                "inhalation time" + condition, refused(() -> TimedInhalation.meanFlow(1, wrong)));
        assertEquals(
                "held pressure" + condition,
                refused(() -> TimedInhalation.resistance(wrong, 1, 1)));
        assertEquals(
                "inhalation time" + condition,
                refused(() -> TimedInhalation.resistance(1, wrong, 1)));
        assertEquals(
                "inhaled volume" + condition,
                refused(() -> TimedInhalation.resistance(1, 1, wrong)));
        assertEquals(
                "resistance" + condition,
                refused(() -> TimedInhalation.estimatedDropAt85LitresPerMinute(wrong)));
        assertEquals(
                "ratio of times" + condition, refused(() -> TimedInhalation.addedInSeries(wrong)));
        assertEquals(
                "fit factor" + condition, refused(() -> TimedInhalation.possibleLeakShare(wrong)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesWhatIsNoSpread(double wrong) {
        String condition = " " + Numbers.plain(wrong) + ", must be a finite number, 0 or above";
        assertEquals(
                "spread of timing" + condition,
                refused(() -> TimedInhalation.timingShare(wrong, 1)));
        assertEquals(
                "spread of trials" + condition,
                refused(() -> TimedInhalation.timingShare(1, wrong)));
    }

    private static double mean(Double... times) {
        return TimedInhalation.geometricMean(List.of(times)).orElseThrow();
    }
}
