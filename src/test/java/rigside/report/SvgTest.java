package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

/** Drawings are SVG that any reader of XML takes, whatever their texts hold. */
class SvgTest {
    private static Figure figure(String text) {
        Drawing drawing =
                new Drawing(
                        100,
                        50,
                        List.of(
                                new Mark.Line(0, 0, 100, 1, Ink.RULE, 1, Mark.Stroke.DASHED),
                                new Mark.Words(
                                        2,
                                        12,
                                        11,
                                        Mark.Anchor.END,
                                        Mark.Weight.BOLD,
                                        Ink.INK,
                                        text)));
        return new Figure("seal-values", text, text, drawing, drawing);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plain words",
                "<script>alert(1)</script>",
                "\"/><image href='x'/>",
                "]]> & <!-- -- -->",
                "nul \u0000 bell \u0007 escape \u001B[31m",
                "\u202Egnirts \u2066x\u2069",
                "\uFFFE \uFFFF \uD800",
            })
    void everyTextIsWords(String text) {
        Document file = Xml.read(figure(text).svg());
        NodeList all = file.getElementsByTagName("*");
        List<String> names =
                java.util.stream.IntStream.range(0, all.getLength())
                        .mapToObj(at -> all.item(at).getNodeName())
                        .toList();
        assertEquals(List.of("svg", "title", "desc", "rect", "path", "text"), names);
        String shown = Legible.of(text);
        assertEquals(shown, all.item(1).getTextContent());
        assertEquals(shown, all.item(2).getTextContent());
        assertEquals(shown, all.item(5).getTextContent());
    }

    @Test
    void everyShapeIsDrawn() {
        for (Mark.Shape shape : Mark.Shape.values()) {
            Drawing drawing = new Drawing(9, 9, List.of(new Mark.Sign(4, 4, 3, shape, Ink.MARK)));
            Document file = Xml.read(new Figure("a", "t", "d", drawing, drawing).svg());
            assertTrue(file.getElementsByTagName("*").getLength() > 4, shape::name);
        }
    }

    @Test
    void aFileOfItsOwnLeavesNothingToAStyleSheet() {
        String svg = figure("words").svg();
        assertFalse(svg.contains("class=") || svg.contains("var(") || svg.contains("style="), svg);
        assertTrue(svg.contains("font-family=\"Arial, Helvetica, 'Liberation Sans', "));
    }

    @Test
    void aPageHoldsItsTitleAndDescription() {
        Page page = new Page("t", "", List.of(new Block.Drawn(figure("a < b"))));
        assertTrue(page.html().contains("<figcaption>a &lt; b</figcaption>"), page.html());
        assertTrue(page.html().contains("aria-labelledby=\"seal-values-wide-figure-title"));
        assertEquals("t\n=\n\nFigure: a < b\na < b\n", page.text(40));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "../up", "Seal", "a b", "a--b", "-a", "a/b", "\u00E9"})
    void aNameThatIsNoFilesNameEverywhereIsRefused(String name) {
        Drawing drawing = new Drawing(1, 1, List.of());
        assertThrows(
                IllegalArgumentException.class, () -> new Figure(name, "t", "d", drawing, drawing));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void noMarkStandsNowhere(double place) {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Mark.Sign(place, 0, 3, Mark.Shape.DISC, Ink.INK));
        assertThrows(IllegalArgumentException.class, () -> new Mark.Point(0, place));
        assertThrows(IllegalArgumentException.class, () -> new Drawing(place, 1, List.of()));
    }
}
