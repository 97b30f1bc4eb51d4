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

final class AxisTest {

    private static final Glyphs ASCII = Glyphs.of(Scenes.ASCII);

    private static Comparison comparison(
            boolean ratio, double estimate, Optional<Limits> interval, Limits band) {
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
