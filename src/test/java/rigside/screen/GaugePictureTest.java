package rigside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.protocol.Step;

/** 250 Pa are to be held within 20 %: from 200 to 300 Pa. */
class GaugePictureTest {

    @ParameterizedTest(name = "{0} Pa")
    @CsvSource({
        "-40, TOO_WEAK",
        "0, TOO_WEAK",
        "199.9, TOO_WEAK",
        "200.1, RIGHT",
        "250, RIGHT",
        "299.9, RIGHT",
        "300.1, TOO_HARD",
        "4000, TOO_HARD",
    })
    void theWordIsThatOfTheBand(double suction, GaugePicture.Sign sign) {
        assertEquals(sign, picture(suction, 76).sign());
    }

    /** The bar ends before, in or beyond the band, as the word says. */
    @ParameterizedTest(name = "{0} Pa at {1} columns")
    @CsvSource({
        "100, 76", "205, 76", "250, 76", "295, 76", "310, 76", "900, 76",
        "100, 196", "205, 196", "250, 196", "295, 196", "310, 196", "900, 196",
        "100, 56", "205, 56", "250, 56", "295, 56", "310, 56", "900, 56",
    })
    void whereTheBarEndsAndWhatTheWordSaysAgree(double suction, int columns) {
        GaugePicture picture = picture(suction, columns);
        String row = text(picture.small().get(1));
        assertEquals(columns, row.length());
        int low = row.indexOf('|');
        int high = row.indexOf('|', low + 1);
        int end = row.lastIndexOf('#');
        switch (picture.sign()) {
            case TOO_WEAK -> assertTrue(end < low, row);
            case RIGHT -> assertTrue(low < end && end < high, row);
            case TOO_HARD -> assertTrue(end > high, row);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {100, 250, 400})
    void theWordStandsWhereThePressureIs(double suction) {
        List<Line> lines = picture(suction, 76).large();
        int left = lines.stream().limit(5).mapToInt(GaugePictureTest::begin).min().orElseThrow();
        int right = lines.stream().limit(5).mapToInt(Line::width).max().orElseThrow();
        double middle = (left + right) / 2.0 / 76;
        assertEquals(suction < 200 ? 0 : suction > 300 ? 1 : 0.5, middle, 0.45);
        assertTrue(
                suction < 200 ? left == 0 : suction > 300 ? right >= 75 : left > 15 && right < 61);
    }

    @Test
    void theEndsOfTheBandAreNamedInTheUnitOfTheTarget() {
        String scale = text(picture(100, 76).small().get(2));
        assertEquals("125 200 250 300 375 Pa", scale.strip().replaceAll(" +", " "));
    }

    @ParameterizedTest
    @CsvSource({
        "-51.9, blowing 51.9 Pa, < blowing",
        "-1.2, blowing 1.2 Pa, < none",
        "0, 0 Pa, < none",
        "12, suction 12 Pa, < none",
        "60, suction 60 Pa, < below 125",
        "126, suction 126 Pa, ''",
    })
    void anEmptyBarSaysWhy(double suction, String reading, String below) {
        GaugePicture picture = picture(suction, 56);
        assertEquals(reading, picture.reading());
        String row = text(picture.small().get(1));
        assertEquals(below, row.substring(0, row.indexOf('|')).replace("#", "").strip());
    }

    /** The pictures differ in nothing but the time that has passed. */
    @ParameterizedTest
    @ValueSource(strings = {"gauge-weak", "gauge-right", "gauge-hard", "gauge-silent"})
    void aConcealedClockDoesNotShowInTheGauge(String name) {
        View view = Scenes.pages().get(name);
        View later = Scenes.at(view, view.now() + 9_876_000_000L).with(view.gauge());
        for (int columns : new int[] {80, 120, 200}) {
            assertEquals(
                    Drawn.of(view, columns, columns * 3 / 10),
                    Drawn.of(later, columns, columns * 3 / 10));
        }
    }

    @Test
    void aSilentGaugeIsSaidWhereverATrialIsPulled() {
        View pulling = Scenes.pages().get("gauge-silent");
        View ready =
                Scenes.pages()
                        .get("gauge-ready")
                        .with(Optional.of(new View.Gauge(OptionalDouble.empty())));
        for (View view : List.of(pulling, ready)) {
            assertTrue(Drawn.of(view, 80, 24).contains("GAUGE SILENT"));
            assertTrue(Drawn.of(view, 60, 18).contains("GAUGE SILENT"));
        }
        assertFalse(Drawn.of(Scenes.steps().get("pulling"), 80, 24).contains("GAUGE"));
    }

    private static int begin(Line line) {
        String text = text(line);
        return text.length() - text.stripLeading().length();
    }

    private static String text(Line line) {
        StringBuilder text = new StringBuilder();
        line.spans().forEach(span -> text.append(span.text()));
        return text.toString();
    }

    private static GaugePicture picture(double suction, int columns) {
        View view = Scenes.styled(Scenes.steps().get("pulling"), Scenes.ASCII);
        Step.Trials step =
                new Step.Trials(
                        Step.Head.of("Breaths", ""),
                        Step.Starting.BY_KEY,
                        "breathing",
                        2,
                        new Quantity(250, Unit.PASCAL),
                        OptionalDouble.of(0.2),
                        0.5,
                        3,
                        30,
                        2,
                        20);
        return new GaugePicture(new Scene(view, columns, 17, false, Big.USUAL), step, suction);
    }
}
