package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** PNG pictures show what the SVG says, on white, fine enough for print. */
class PngTest {
    private static final int WHITE = 0xFFFFFFFF;

    @BeforeAll
    static void fontsAreHere() {
        System.setProperty("java.awt.headless", "true");
        assumeTrue(
                GraphicsEnvironment.getLocalGraphicsEnvironment()
                                .getAvailableFontFamilyNames()
                                .length
                        > 0,
                "no fonts on this machine");
    }

    private static BufferedImage picture(List<Mark> marks) throws IOException {
        Drawing drawing = new Drawing(Drawing.WIDE, 100, marks);
        byte[] png = Figures.png(new Figure("a", "title", "words", drawing, drawing));
        return ImageIO.read(new ByteArrayInputStream(png));
    }

    @Test
    void itIsWideEnoughForPrintAndWhite() throws IOException {
        BufferedImage picture = picture(List.of());
        assertEquals(1648, picture.getWidth());
        assertEquals(248, picture.getHeight());
        assertEquals(WHITE, picture.getRGB(0, 0));
        assertEquals(WHITE, picture.getRGB(800, 124));
    }

    @Test
    void marksAreWhereTheyShouldBe() throws IOException {
        BufferedImage picture = picture(List.of(new Mark.Box(100, 20, 10, 10, Ink.MARK)));
        int inside = picture.getRGB(2 * (12 + 105), 2 * (12 + 25));
        assertEquals(0xFF9A3412, inside);
        assertEquals(WHITE, picture.getRGB(2 * (12 + 97), 2 * (12 + 25)));
    }

    /** Lamed (\u05DC) rises above yod (\u05D9): the highest dot shows on which side it stands. */
    @Test
    void lettersFromRightToLeftAreDrawnInTheirOrder() throws IOException {
        assumeTrue(
                new Font(Font.SANS_SERIF, Font.PLAIN, 12).canDisplayUpTo("\u05DC\u05D9") < 0,
                "no Hebrew letters on this machine");
        int first = highest(picture(List.of(words("\u05DC\u05D9"))));
        int second = highest(picture(List.of(words("\u05D9\u05DC"))));
        assertTrue(first > second, first + " is left of " + second);
    }

    /** A title that begins with such letters was drawn without the space behind them. */
    @Test
    void aSpaceBehindLettersFromRightToLeftIsKept() throws IOException {
        assumeTrue(
                new Font(Font.SANS_SERIF, Font.PLAIN, 12).canDisplayUpTo("\u05DC") < 0,
                "no Hebrew letters on this machine");
        int apart = rightmost(picture(List.of(words("\u05DC 5"))));
        int together = rightmost(picture(List.of(words("\u05DC5"))));
        assertTrue(apart >= together + 4, apart + " is hardly right of " + together);
    }

    @Test
    void spacesAroundWordsDoNotMoveThem() throws IOException {
        assertEquals(
                rightmost(picture(List.of(words("5")))),
                rightmost(picture(List.of(words("  5 ")))));
    }

    private static int rightmost(BufferedImage picture) {
        for (int x = picture.getWidth() - 1; x >= 0; x--) {
            for (int y = 0; y < picture.getHeight(); y++) {
                if (picture.getRGB(x, y) != WHITE) {
                    return x;
                }
            }
        }
        throw new AssertionError("nothing is drawn");
    }

    private static int highest(BufferedImage picture) {
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                if (picture.getRGB(x, y) != WHITE) {
                    return x;
                }
            }
        }
        throw new AssertionError("nothing is drawn");
    }

    private static Mark words(String text) {
        return new Mark.Words(30, 50, 12, Mark.Anchor.START, Mark.Weight.NORMAL, Ink.INK, text);
    }

    @Test
    void wordsAreDrawn() throws IOException {
        BufferedImage picture =
                picture(
                        List.of(
                                new Mark.Words(
                                        400,
                                        50,
                                        12,
                                        Mark.Anchor.MIDDLE,
                                        Mark.Weight.BOLD,
                                        Ink.INK,
                                        "settled")));
        int dark = 0;
        for (int x = 0; x < picture.getWidth(); x++) {
            for (int y = 0; y < picture.getHeight(); y++) {
                dark += picture.getRGB(x, y) == WHITE ? 0 : 1;
            }
        }
        assertTrue(dark > 200, "only " + dark + " dots are not white");
    }

    /** A drawing library usually refuses so many, lest a foreign file takes all the time. */
    @Test
    void thousandsOfMarksAreDrawn() throws IOException {
        List<Mark> marks = new ArrayList<>();
        for (int at = 0; at < 20_000; at++) {
            marks.add(new Mark.Sign(at % 800, 50, 2, Mark.Shape.DISC, Ink.INK));
        }
        assertEquals(1648, picture(marks).getWidth());
    }
}
