package rigside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rigside.analysis.Comparison;
import rigside.decide.Forecast;
import rigside.decide.Limits;
import rigside.decide.Verdict;
import rigside.protocol.Measure.Compared.Matters;

final class AxisTest {

    private static final Glyphs ASCII = Glyphs.of(Scenes.ASCII);

    private static Comparison comparison(
            boolean ratio, double estimate, Optional<Limits> interval, Limits band) {
        return comparison(ratio, estimate, interval, band, Matters.EITHER);
    }

    private static Comparison comparison(
            boolean ratio,
            double estimate,
            Optional<Limits> interval,
            Limits band,
            Matters matters) {
        return new Comparison(
                "m",
                "other",
                "reference",
                ratio,
                true,
                3,
                OptionalDouble.of(estimate),
                interval,
                OptionalDouble.empty(),
                band,
                matters,
                Verdict.NOT_SETTLED,
                Optional.empty(),
                Verdict.NOT_SETTLED,
                false,
                false,
                Forecast.SILENT,
                false,
                false,
                true,
                List.of(),
                List.of(),
                new Comparison.Words("", "", "", "", List.of()));
    }

    private static String axis(Comparison comparison) {
        return Axis.of(comparison, 41, ASCII).row(comparison);
    }

    /**
     * The line reaches to 1.6 half bands, so that a ratio of 2 lies 12.5 of 20 places from the
     * middle, and half places are rounded to the right.
     */
    @Test
    void theIntervalLiesAgainstTheBandByLogarithms() {
        Comparison inside =
                comparison(true, 1.2, Optional.of(new Limits(1 / 1.5, 1.5)), new Limits(0.5, 2));
        assertEquals("........[....=======|==o====.....].......", axis(inside));
    }

    /** The line reaches as far as the edge that counts asks for, whatever the other would. */
    @Test
    void whereOneDirectionMattersOnlyItsEdgeIsDrawn() {
        Optional<Limits> interval = Optional.of(new Limits(1 / 1.5, 1.5));
        Limits band = new Limits(0.01, 2);
        Comparison rise = comparison(true, 1.2, interval, band, Matters.INCREASE);
        assertEquals(".............=======|==o====.....].......", axis(rise));
        assertEquals("2.00]", Axis.edges(band, Matters.INCREASE));
        Axis fall =
                Axis.of(
                        comparison(true, 1.2, interval, new Limits(0.5, 99), Matters.DECREASE),
                        41,
                        ASCII);
        assertEquals("........[....=======|==o====.............", fall.row(rise));
        assertEquals("      0.500       1.00", fall.numbers());
        assertEquals("[0.500", Axis.edges(fall.band(), Matters.DECREASE));
    }

    @Test
    void anIntervalThatReachesBeyondTheLineEndsInAnArrow() {
        Comparison wide =
                comparison(false, 10, Optional.of(new Limits(-100, 200)), new Limits(-10, 10));
        String line = axis(wide);
        assertEquals('<', line.charAt(0));
        assertEquals('>', line.charAt(40));
    }

    @Test
    void beforeTheFirstLookOnlyTheEstimateStands() {
        Comparison early = comparison(false, 4, Optional.empty(), new Limits(-10, 10));
        assertEquals("........[...........|....o.......].......", axis(early));
    }
}
