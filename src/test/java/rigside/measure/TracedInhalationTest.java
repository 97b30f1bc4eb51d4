package rigside.measure;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rigside.measure.PenetrationTest.refused;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TracedInhalationTest {
    private static final double TARGET = 150;
    private static final double TOLERANCE = 0.1;

    /** Relative; sums of some hundred doubles. */
    private static final double ROUNDING = 1e-12;

    /**
     * Rises in 0.4 s from 2 s on, is held at {@code held} for 5.6 s, falls in 0.4 s: corners at
     * 2.0, 2.4, 8.0, 8.4 s.
     */
    private static double trapezoid(double at, double held) {
        double up = (at - 2.0) / 0.4;
        double down = (8.4 - at) / 0.4;
        return -held * Math.max(0, Math.min(1, Math.min(up, down)));
    }

    private static TracedInhalation found(TimedTrace trace) {
        return find(trace, 2.5, 8.0).orElseThrow();
    }

    private static Optional<TracedInhalation> find(TimedTrace trace, double from, double to) {
        return TracedInhalation.find(trace, TARGET, TOLERANCE, from, to);
    }

    /** Corners fall on readings, so trapezoids are exact. Worked by hand from the geometry. */
    @Test
    void aTrapezoidGivesItsClosedForms() {
        TracedInhalation pull = found(Traces.even(0, 12, 50, t -> trapezoid(t, TARGET)));
        double edge = 0.4 * 0.95; // from 5 % of the target up to it
        double integral = TARGET * (5.6 + 2 * edge * (1 + 0.05) / 2);
        double seconds = 5.6 + 2 * edge;
        double mean = integral / seconds;
        double meanSquare =
                TARGET * TARGET * (5.6 + 2 * edge * (1 + 0.05 + 0.05 * 0.05) / 3) / seconds;
        assertAll(
                () -> assertEquals(2.02, pull.startSeconds(), 1e-12),
                () -> assertEquals(8.38, pull.endSeconds(), 1e-12),
                () -> assertEquals(integral, pull.integral(), integral * ROUNDING),
                () -> assertEquals(integral / TARGET, pull.equivalentSeconds(TARGET), 1e-11),
                () -> assertEquals(mean, pull.meanPa(), mean * ROUNDING),
                () -> assertEquals(Math.sqrt(meanSquare - mean * mean), pull.spreadPa(), 1e-7),
                () -> assertEquals((5.6 + 2 * 0.04) / seconds, pull.withinShare(), 1e-12),
                () -> assertEquals(0, pull.unseenSeconds()),
                () -> assertTrue(pull.whole()),
                () -> assertEquals(1, pull.pulls()));
    }

    /**
     * The same 4.5 L through the same linear 200 Pa s/L: at 150 Pa held exactly 6.0 s (BR9 of the
     * worked values). Each profile stays from 0.5 to 1.6 times the target; its mean is off so far
     * that the clock is wrong by a fifth or more. Noise of 2 Pa, 25 uneven readings a second.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "too weak throughout, 0.7, 0, 0.3",
        "too hard throughout, 1.5, 0, 0.3",
        "weak and wavering, 0.78, 0.28, 1.3",
        "weak and shaking, 0.75, 0.25, 4.1",
        "hard and wavering, 1.3, 0.3, 0.7",
        "hard and swelling slowly, 1.35, 0.25, 0.09"
    })
    void anUnsteadyPullThroughALinearResistanceGivesTheSameEquivalentTime(
            String name, double level, double swing, double hertz) {
        DoubleUnaryOperator profile =
                since -> TARGET * (level + swing * Math.sin(2 * Math.PI * hertz * since));
        double falls = fallsAt(profile, 900);
        double seconds = falls + EDGE;
        TracedInhalation pull =
                found(
                        Traces.uneven(
                                0,
                                20,
                                25,
                                2,
                                17,
                                t -> -profile.applyAsDouble(t - 2) * edges(t - 2, falls)));
        assertEquals(6.0, pull.equivalentSeconds(TARGET), 0.06, "equivalent time");
        assertTrue(Math.abs(seconds / 6.0 - 1) >= 0.2, () -> "the clock says " + seconds);
        assertEquals(seconds, pull.seconds(), 0.08, "start and end within two readings");
    }

    /** A pull takes so long to rise and to fall, in seconds. */
    private static final double EDGE = 0.2;

    private static double edges(double since, double falls) {
        double up = since / EDGE;
        double down = (falls + EDGE - since) / EDGE;
        return Math.max(0, Math.min(1, Math.min(up, down)));
    }

    /** When the pull has to begin to fall for the integral of the suction to be so much. */
    private static double fallsAt(DoubleUnaryOperator profile, double integral) {
        double step = 1e-4;
        double sum = 0;
        double at = 0;
        while (sum + EDGE / 2 * profile.applyAsDouble(at) < integral) {
            sum +=
                    step
                            * profile.applyAsDouble(at + step / 2)
                            * Math.min(1, (at + step / 2) / EDGE);
            at += step;
        }
        return at;
    }

    /**
     * Through dP = a Q^b the flow at x times the target is x^(1/b) times that at the target. So a
     * pull held at x takes x^(-1/b) times as long, and has x^(1 - 1/b) times the integral over the
     * target; one that spends half its time at 0.5 and half at 1.6 has 1.05 over the mean flow.
     * Worked from that; the pull here is made of one-second halves.
     */
    @ParameterizedTest(name = "power {0}: {1} and {2} times the target")
    @CsvSource({
        "1.0, 0.5, 1.6, 1.0000",
        "1.5, 0.5, 1.6, 1.0511",
        "2.0, 0.5, 1.6, 1.0649",
        "1.5, 0.5, 0.5, 0.7937",
        "2.0, 0.5, 0.5, 0.7071",
        "1.5, 1.6, 1.6, 1.1696",
        "2.0, 1.6, 1.6, 1.2649",
        "1.5, 0.9, 1.1, 1.0011",
        "2.0, 0.9, 1.1, 1.0013"
    })
    void aPowerLawResistanceIsCorrectedTooMuch(
            double power, double one, double other, double times) {
        double flow = (Math.pow(one, 1 / power) + Math.pow(other, 1 / power)) / 2;
        double volume = 8 * flow; // in units of the flow at the target, over 8 s
        double equivalent = 8 * (one + other) / 2;
        assertEquals(times, equivalent / volume, 0.00005);
        TracedInhalation pull =
                found(
                        Traces.even(
                                0,
                                12,
                                100,
                                t ->
                                        t < 2 || t > 10
                                                ? 0
                                                : -TARGET * ((int) t % 2 == 0 ? one : other)));
        assertEquals(equivalent, pull.equivalentSeconds(TARGET), equivalent * 0.002);
    }

    @Test
    void noiseAtTheThresholdNeitherBeginsNorEndsAPull() {
        TimedTrace trace = Traces.uneven(0, 12, 50, 6, 3, t -> trapezoid(t, TARGET));
        TracedInhalation pull = found(trace);
        assertEquals(1, pull.pulls());
        assertEquals(2.02, pull.startSeconds(), 0.1);
        assertEquals(8.38, pull.endSeconds(), 0.1);
    }

    @Test
    void aPullThatFaltersForAMomentIsOneAndBreathingOutInBetweenMakesTwo() {
        DoubleUnaryOperator falters = t -> t > 5 && t < 5.25 ? 0 : trapezoid(t, TARGET);
        DoubleUnaryOperator breathesOut = t -> t > 5 && t < 5.25 ? 20 : trapezoid(t, TARGET);
        assertEquals(1, found(Traces.even(0, 12, 50, falters)).pulls());
        TracedInhalation longest = found(Traces.even(0, 12, 50, breathesOut));
        assertEquals(2, longest.pulls());
        assertEquals(5.25, longest.startSeconds(), 0.02);
    }

    @Test
    void aTraceThatBeginsOrEndsWithinThePullIsNotWhole() {
        assertFalse(found(Traces.even(3, 12, 50, t -> trapezoid(t, TARGET))).whole());
        TracedInhalation still = found(Traces.even(0, 6, 50, t -> trapezoid(t, TARGET)));
        assertFalse(still.whole());
        assertEquals(6, still.endSeconds(), 1e-9);
    }

    @Test
    void aGapIsBridgedAndSaid() {
        TimedTrace all = Traces.even(0, 12, 50, t -> trapezoid(t, TARGET));
        TracedInhalation pull = found(Traces.without(all, 4, 6));
        assertEquals(found(all).integral(), pull.integral(), 1e-9);
        assertEquals(2, pull.unseenSeconds(), 1e-9);
        assertTrue(pull.whole());
    }

    @Test
    void aBeginningThatLiesInAGapIsNotSeen() {
        TimedTrace all = Traces.even(0, 12, 50, t -> trapezoid(t, TARGET));
        assertFalse(found(Traces.without(all, 1, 4)).whole());
    }

    @Test
    void thePullThatSharesMostTimeWithThePressesIsTaken() {
        TimedTrace trace =
                Traces.even(0, 24, 50, t -> trapezoid(t, TARGET) + trapezoid(t - 10, 2 * TARGET));
        assertEquals(TARGET, find(trace, 2, 9).orElseThrow().meanPa(), 0.1 * TARGET);
        assertEquals(2 * TARGET, find(trace, 11, 19).orElseThrow().meanPa(), 0.2 * TARGET);
        assertEquals(Optional.empty(), find(trace, 9, 11));
    }

    @Test
    void breathingThatNeverReachesAFifthOfTheTargetIsNoPull() {
        assertEquals(Optional.empty(), find(Traces.even(0, 12, 50, t -> -25), 2, 8));
        assertEquals(
                Optional.empty(), find(new TimedTrace(List.of(), 0.1), 2, 8), "an empty trace");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aTargetThatIsNoPressureIsRefused(double target) {
        assertEquals(
                "target pressure " + Numbers.plain(target) + ", must be a finite number above 0",
                refused(
                        () ->
                                TracedInhalation.find(
                                        new TimedTrace(List.of(), 0.1), target, TOLERANCE, 0, 1)));
    }
}
