package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names from right to left: \u05D0 is a Hebrew letter, \u0628 an Arabic one, \u0661 a digit. */
class DirectionsTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "none at all: 1.25 | none at all: 1.25",
                "\u05D0\u05D1 | [\u05D0\u05D1]",
                "\u05D0\u05D1 \u05D2: 1.25 times | [\u05D0\u05D1 \u05D2]: 1.25 times",
                "a \u05D0 2 \u05D1 3 b | a [\u05D0 2 \u05D1] 3 b",
                "\u05D0, compared with \u0628\u0661 | [\u05D0], compared with [\u0628\u0661]",
                "(\u05D0) % | ([\u05D0]) %",
                "\u05D0\u05B8. | [\u05D0\u05B8].",
                "\uD83A\uDD00\uD83A\uDD01: 2 | [\uD83A\uDD00\uD83A\uDD01]: 2"
            })
    void aRunFromRightToLeftKeepsToItself(String text, String isolated) {
        assertEquals(
                isolated,
                Directions.isolated(text, each -> each)
                        .replace("<bdi>", "[")
                        .replace("</bdi>", "]"));
    }

    /** Letters with points (\u05B8) keep them; figures are read from left to right. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "none (at all) 1.25 | none (at all) 1.25",
                "a \u05D0\u05D1, -2 | a \u05D1\u05D0, -2",
                "\u05D0\u05B8\u05D1 | \u05D1\u05D0\u05B8",
                "\u05D0 12 (\u05D1) \u05D2 b | \u05D2 (\u05D1) 12 \u05D0 b",
                "\uD83A\uDD00\uD83A\uDD01: 2 | \uD83A\uDD01\uD83A\uDD00: 2"
            })
    void whereLettersAreOnlyDrawnFromTheLeftTheyAreTurnedRound(String text, String seen) {
        assertEquals(seen, Directions.asSeen(text));
    }

    /** Chromium then draws the figure behind the name, and before it where it is left to itself. */
    @Test
    void inDrawingsItKeepsToItselfToo() {
        Mark words =
                new Mark.Words(
                        1,
                        20,
                        12,
                        Mark.Anchor.START,
                        Mark.Weight.NORMAL,
                        Ink.INK,
                        "of \u05D0\u05D1, -2 <b>");
        Drawing drawing = new Drawing(100, 30, List.of(words));
        String svg = new Figure("names", "\u05D0", "\u05D0", drawing, drawing).svg();
        assertTrue(
                svg.contains(
                        ">of <tspan unicode-bidi=\"isolate\">\u05D0\u05D1</tspan>,"
                                + " -2 &lt;b&gt;</text>"),
                svg);
        assertTrue(svg.contains("<title id=\"names-file-title\">\u05D0</title>"), svg);
    }

    @Test
    void itIsSafeAndOnlyInTheBodyOfAPage() {
        String name = "\u05D0<b>\u05D1";
        Page page = new Page(name, name, List.of(new Block.Words(name + ": 5 %")));
        String html = page.html();
        assertTrue(html.contains("<title>\u05D0&lt;b&gt;\u05D1</title>"), html);
        assertTrue(
                html.contains("<p><bdi>\u05D0</bdi>&lt;b&gt;<bdi>\u05D1</bdi>: 5\u00a0%</p>"),
                html);
        assertFalse(html.contains(name), html);
    }
}
