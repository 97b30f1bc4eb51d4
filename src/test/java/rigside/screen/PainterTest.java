package rigside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.TextColor;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

final class PainterTest {

    /**
     * The contrast of two colours: WCAG 2.1 of the World Wide Web Consortium, "contrast ratio" and
     * "relative luminance".
     */
    private static double contrast(TextColor one, TextColor other) {
        double first = luminance(one);
        double second = luminance(other);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    private static double luminance(TextColor colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int value) {
        double share = value / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    /** 3 is what the same source asks of large and bold letters, 4.5 of small ones. */
    @ParameterizedTest
    @EnumSource(Tone.class)
    void everyColourStandsOutFromBlackAndFromWhite(Tone tone) {
        TextColor colour = Painter.colour(tone, View.Colours.MANY);
        if (colour instanceof TextColor.Indexed) {
            double least = tone == Tone.QUIET ? 4.5 : 3;
            assertTrue(contrast(colour, new TextColor.RGB(0, 0, 0)) >= least, tone.toString());
            assertTrue(
                    contrast(colour, new TextColor.RGB(255, 255, 255)) >= least, tone.toString());
        } else {
            assertEquals(TextColor.ANSI.DEFAULT, colour);
        }
    }

    @ParameterizedTest
    @EnumSource(Tone.class)
    void withoutColoursEverythingHasTheTerminalsOwn(Tone tone) {
        assertEquals(TextColor.ANSI.DEFAULT, Painter.colour(tone, View.Colours.NONE));
    }
}
