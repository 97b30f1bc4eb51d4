package rigside.measure;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rigside.measure.FreeBreathing.Zero;

class FreeBreathingTest {
    private static final double PEAK = 80;
    private static final double PERIOD = 4;

    /** Inhales from 0 to 2 s, exhales from 2 to 4 s, and so on. */
    private static double sine(double at) {
        return -PEAK * Math.sin(2 * Math.PI * at / PERIOD);
    }

    private static Breath medians(FreeBreathing breathing) {
        return breathing.medians().orElseThrow();
    }

    /**
     * From 3 s to 42.5 s: the inhalations that begin at 4, 8, ..., 36 are followed by another, so
     * nine are whole; those before and after are cut. Over half a sine the integral is P T / pi.
     */
    @ParameterizedTest
    @EnumSource
    void aSineGivesItsClosedForms(Zero zero) {
        FreeBreathing breathing =
                FreeBreathing.of(Traces.even(3, 42.5, 100, FreeBreathingTest::sine), zero);
        Breath median = medians(breathing);
        double integral = PEAK * PERIOD / Math.PI;
        assertAll(
                () -> assertEquals(9, breathing.breaths().size()),
                () -> assertEquals(4, breathing.breaths().get(0).startSeconds(), 1e-3),
                () -> assertEquals(0, breathing.broken()),
                () -> assertEquals(PERIOD, median.seconds(), 1e-3),
                () -> assertEquals(PERIOD / 2, median.inhalationSeconds(), 1e-3),
                // The parabola is 0.14 % low on a sine.
                () -> assertEquals(PEAK, median.peakInhalationPa(), 0.0015 * PEAK),
                () -> assertEquals(PEAK, median.peakExhalationPa(), 0.0015 * PEAK),
                // Trapezoids on a sine, 200 to a half: (pi/200)^2 / 12 low.
                () -> assertEquals(integral, median.inhalationIntegral(), 1e-4 * integral),
                () -> assertEquals(integral, median.exhalationIntegral(), 1e-4 * integral));
    }

    /**
     * What the gauge adds: an offset, a drift of three times the peak over five minutes, straight
     * or curved, noise of a twentieth of the peak, 20 uneven readings a second. From 3 s to 302 s:
     * inhalations begin at 4, ..., 300, so 74 are whole.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "clean, 0, 0, 0, 0",
        "noise, 0, 0, 0, 4",
        "offset, 25, 0, 0, 4",
        "straight drift, -40, 0.8, 0, 4",
        "slow wave, 10, 0, 40, 4",
        "everything, 30, -0.5, 25, 4"
    })
    void breathsAreCountedExactlyAndPeaksFoundWithinTwoPercent(
            String name, double offset, double perSecond, double wave, double noise) {
        DoubleUnaryOperator read =
                t -> sine(t) + offset + perSecond * t + wave * Math.sin(2 * Math.PI * t / 240);
        FreeBreathing breathing =
                FreeBreathing.of(Traces.uneven(3, 302, 20, noise, 11, read), Zero.BREATHS);
        Breath median = medians(breathing);
        assertAll(
                () -> assertEquals(74, breathing.breaths().size()),
                () -> assertEquals(PEAK, median.peakInhalationPa(), 0.02 * PEAK),
                () -> assertEquals(PEAK, median.peakExhalationPa(), 0.02 * PEAK),
                () ->
                        assertEquals(
                                PEAK * PERIOD / Math.PI,
                                median.inhalationIntegral(),
                                0.02 * PEAK * PERIOD / Math.PI),
                () -> assertEquals(PERIOD, median.seconds(), 0.01 * PERIOD));
    }

    /** With a valve the exhalation meets a quarter of the resistance and rests before the next. */
    private static double valved(double at) {
        double phase = at % 5;
        return phase < 2
                ? -PEAK * Math.sin(Math.PI * phase / 2)
                : phase < 3.5 ? PEAK / 4 * Math.sin(Math.PI * (phase - 2) / 1.5) : 0;
    }

    @Test
    void anExhalationValveNeedsTheGaugesOwnZero() {
        TimedTrace trace = Traces.uneven(3, 103, 25, 1, 5, FreeBreathingTest::valved);
        Breath median = medians(FreeBreathing.of(trace, Zero.GAUGE));
        assertAll(
                () -> assertEquals(19, FreeBreathing.of(trace, Zero.GAUGE).breaths().size()),
                () -> assertEquals(PEAK, median.peakInhalationPa(), 0.02 * PEAK),
                () -> assertEquals(PEAK / 4, median.peakExhalationPa(), 0.05 * PEAK / 4),
                () -> assertEquals(2, median.inhalationSeconds(), 0.06));
        double shifted = medians(FreeBreathing.of(trace, Zero.BREATHS)).peakInhalationPa();
        assertTrue(shifted < 0.9 * PEAK, () -> "the mean over breaths would say " + shifted);
    }

    @Test
    void aGapCostsTheBreathsItTouchesAndIsCounted() {
        TimedTrace trace =
                Traces.without(Traces.even(3, 42.5, 50, FreeBreathingTest::sine), 13, 18);
        FreeBreathing breathing = FreeBreathing.of(trace, Zero.GAUGE);
        assertEquals(1, breathing.broken());
        assertEquals(
                List.of(4L, 8L, 20L, 24L, 28L, 32L, 36L),
                breathing.breaths().stream().map(b -> Math.round(b.startSeconds())).toList());
    }

    @Test
    void mediansAreTakenFigureByFigure() {
        DoubleUnaryOperator growing = t -> sine(t) * (1 + Math.floor(t / PERIOD) / 10);
        FreeBreathing breathing = FreeBreathing.of(Traces.even(3, 26, 100, growing), Zero.GAUGE);
        assertEquals(5, breathing.breaths().size());
        assertEquals(1.3 * PEAK, medians(breathing).peakInhalationPa(), 0.0015 * 1.3 * PEAK);
    }

    @ParameterizedTest
    @EnumSource
    void whatIsNoBreathingGivesNone(Zero zero) {
        for (TimedTrace trace :
                List.of(
                        new TimedTrace(List.of(), 1),
                        Traces.even(0, 0, 10, t -> 5),
                        Traces.even(0, 60, 10, t -> 0),
                        Traces.uneven(0, 600, 10, 1, 2, t -> 3),
                        Traces.uneven(0, 600, 50, 10, 2, t -> 3),
                        Traces.even(0, 60, 10, t -> -t))) {
            FreeBreathing none = FreeBreathing.of(trace, zero);
            assertEquals(List.of(), none.breaths());
            assertEquals(Optional.empty(), none.medians());
        }
    }
}
