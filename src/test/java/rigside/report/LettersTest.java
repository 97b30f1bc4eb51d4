package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.awt.font.FontRenderContext;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How wide words are reckoned to be. */
class LettersTest {
    private static final List<String> SAID =
            List.of(
                    "Half mask with disc: geometric mean 7.76 s of 5 donnings",
                    "Fit factor, how many times the reference's, logarithmic scale",
                    "required 1000",
                    "10\u00A0000",
                    "MMWW mmww iill 1111 @%&");

    /** Measured by java.awt, of whatever of these fonts the machine has. */
    @ParameterizedTest
    @ValueSource(strings = {"Arial", "Helvetica", "Liberation Sans", "DejaVu Sans"})
    void noFontAskedForIsWider(String font) {
        System.setProperty("java.awt.headless", "true");
        List<String> here =
                List.of(
                        GraphicsEnvironment.getLocalGraphicsEnvironment()
                                .getAvailableFontFamilyNames());
        assumeTrue(here.contains(font), "no " + font + " here");
        FontRenderContext fine = new FontRenderContext(null, true, true);
        for (String words : SAID) {
            double plain = new Font(font, Font.PLAIN, 100).getStringBounds(words, fine).getWidth();
            double bold = new Font(font, Font.BOLD, 100).getStringBounds(words, fine).getWidth();
            double reckoned = Letters.width(words, 100, Mark.Weight.NORMAL);
            assertTrue(plain <= reckoned + 1e-6, () -> words + " " + plain + " " + reckoned);
            double heavy = Letters.width(words, 100, Mark.Weight.BOLD);
            assertTrue(bold <= heavy + 1e-6, () -> words + " " + bold + " " + heavy);
        }
    }

    private static List<String> lines(String text, double width, int most) {
        return Letters.lines(text, 10, Mark.Weight.NORMAL, width, most);
    }

    @Test
    void wordsGoToTheNextLineWhole() {
        assertEquals(List.of("one two", "three"), lines("one two three", 50, 3));
    }

    @Test
    void whatDoesNotFitIsCutWithASign() {
        List<String> lines = lines("a title of words ".repeat(120), 80, 2);
        assertEquals(2, lines.size());
        assertTrue(lines.get(1).endsWith("\u2026"), lines::toString);
        lines.forEach(line -> assertTrue(Letters.width(line, 10, Mark.Weight.NORMAL) <= 80, line));
    }

    @Test
    void aWordLongerThanALineIsBroken() {
        List<String> lines = lines("x".repeat(2000), 80, 3);
        assertEquals(3, lines.size());
        lines.forEach(line -> assertTrue(Letters.width(line, 10, Mark.Weight.NORMAL) <= 80, line));
    }

    @Test
    void nothingIsOneEmptyLine() {
        assertEquals(List.of(""), lines("", 80, 2));
    }
}
