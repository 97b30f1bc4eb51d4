package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.decide.Limits;

class ControlPlotTest {

    private static ControlPlot.Content content(
            int sessions, double first, double step, boolean ratio) {
        List<ControlPlot.Value> values =
                IntStream.range(0, sessions)
                        .mapToObj(
                                at ->
                                        new ControlPlot.Value(
                                                "s" + at, first + at * step, at == 1, at == 2))
                        .toList();
        double last = first + sessions * step;
        return new ControlPlot.Content(
                "Inhalation time",
                "Half mask <as it is>",
                "s",
                ratio,
                values,
                (first + last) / 2,
                new Limits(first - step, last + step),
                Optional.of(new Limits(first, last)));
    }

    private static long signs(Drawing drawing, Mark.Shape shape) {
        return drawing.marks().stream()
                .filter(mark -> mark instanceof Mark.Sign sign && sign.shape() == shape)
                .count();
    }

    /** Each shape once more, in the key. */
    @Test
    void everySessionHasItsSignAndTheUnusualOnesAnother() {
        Figure figure = ControlPlot.of(content(6, 6, 0.1, true));
        for (Drawing drawing : List.of(figure.narrow(), figure.wide())) {
            assertEquals(4 + 1, signs(drawing, Mark.Shape.DISC));
            assertEquals(1 + 1, signs(drawing, Mark.Shape.UP));
            assertEquals(1 + 1, signs(drawing, Mark.Shape.DIAMOND));
        }
        assertTrue(figure.description().contains("s2: 6.20, beyond the limits."));
        assertTrue(figure.description().contains("s1: at least 6.10."));
        assertFalse(figure.svg().contains("<as it is>"));
    }

    @ParameterizedTest
    @CsvSource({"1, 6, 0.1, true", "200, 6, 0.1, true", "3, 1e-9, 1e-12, false", "4, -5, 3, false"})
    void itStaysOnItsSheet(int sessions, double first, double step, boolean ratio) {
        Figure figure = ControlPlot.of(content(sessions, first, step, ratio));
        for (Drawing drawing : List.of(figure.narrow(), figure.wide())) {
            for (Mark mark : drawing.marks()) {
                if (mark instanceof Mark.Sign sign) {
                    assertTrue(sign.x() >= 0 && sign.x() <= drawing.width(), sign.toString());
                    assertTrue(sign.y() >= 0 && sign.y() <= drawing.height(), sign.toString());
                }
            }
        }
    }
}
