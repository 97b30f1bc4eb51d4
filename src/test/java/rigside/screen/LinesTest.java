package rigside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class LinesTest {

    private static final Glyphs ASCII = Glyphs.of(Scenes.ASCII);

    private static List<String> texts(List<Line> lines) {
        return lines.stream().map(LinesTest::text).toList();
    }

    private static String text(Line line) {
        return String.join("", line.spans().stream().map(Line.Span::text).toList());
    }

    /** Each line reckoned the width of all that was left: minutes for so many. */
    @ParameterizedTest
    @ValueSource(strings = {"x", "\u754C", "\uFFFD"})
    void aWordAsLongAsAFileIsBrokenAtOnce(String letter) {
        int columns = 74;
        String word = letter.repeat(2_000_000);
        List<String> lines =
                assertTimeoutPreemptively(
                        Duration.ofSeconds(20), () -> texts(Wrap.lines(word, columns)));
        assertEquals(word, String.join("", lines));
        int last = lines.size() - 1;
        assertTrue(lines.subList(0, last).stream().allMatch(each -> Clean.width(each) == columns));
    }

    @Test
    void wordsAreNotBrokenWhereTheyFit() {
        assertEquals(
                List.of("full breaths", "in a row"),
                texts(Wrap.lines("full breaths in a row", 12)));
    }

    @Test
    void aWordLongerThanTheLineIsBroken() {
        assertEquals(List.of("abcde", "f gh"), texts(Wrap.lines("abcdef gh", 5)));
    }

    @Test
    void wideCharactersCountTwice() {
        assertEquals(List.of("日本", "語"), texts(Wrap.lines("日本語", 5)));
        assertEquals(6, Line.of("日本語").width());
    }

    @Test
    void lineEndsInATextAreKept() {
        assertEquals(List.of("a", "", "b"), texts(Wrap.lines("a\n\nb\n", 9)));
    }

    @Test
    void aCutLineSaysSo() {
        assertEquals("abc~", text(Line.of("abcdef").cut(4, "~")));
        assertEquals("日~", text(Line.of("日本語").cut(4, "~")));
        assertEquals("abcd", text(Line.of("abcd").cut(4, "~")));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "0.2, 1", "59.9, 1:00", "60, 1:00", "61, 1:01", "179.5, 3:00", "-1, 0"})
    void secondsToGoAreNeverZeroBeforeTheEnd(double seconds, String shown) {
        assertEquals(shown, Figures.left(seconds));
    }

    @ParameterizedTest
    @CsvSource({
        "1.1, 1.10",
        "0.90909, 0.909",
        "152.34, 152",
        "1523.4, 1523",
        "12.345, 12.3",
        "0, 0",
        "999.7, 1000",
        "9999.4, 9999",
        "260025, 260~000",
        "-260025, -260~000",
        "1234567, 1~230~000",
        "-25.04, -25.0",
        "0.00012345, 0.000123",
    })
    void figuresHaveThreeDigits(double value, String shown) {
        assertEquals(shown.replace('~', '\u00a0'), Figures.three(value));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0123456789",
                "GO",
                "HELD?",
                "1:05",
                "12.4",
                "ABCDEFGHIJKLM",
                "NOPQRSTUVWXYZ"
            })
    void bigLettersStandInFiveRowsOfOneWidth(String text) {
        List<Line> lines = Big.of(text, Big.USUAL, 200, ASCII);
        assertEquals(5, lines.size());
        assertEquals(1, lines.stream().map(Line::width).distinct().count());
    }

    @Test
    void bigTextShrinksBeforeItIsGivenUp() {
        assertEquals(22, Big.of("100", 2, 40, ASCII).get(0).width());
        assertEquals(11, Big.of("100", 2, 20, ASCII).get(0).width());
        assertEquals(List.of("100"), texts(Big.of("100", 2, 10, ASCII)));
        assertEquals(List.of("\u65e5\u672c"), texts(Big.of("\u65e5\u672c", 2, 80, ASCII)));
    }

    @ParameterizedTest
    @CsvSource({"1, 5, 11", "2, 5, 22", "3, 10, 22", "4, 10, 33", "5, 10, 44", "8, 20, 88"})
    void aLargerSizeTakesMoreRowsAndColumns(int size, int rows, int columns) {
        List<Line> lines = Big.of("100", size, 200, ASCII);
        assertEquals(rows, lines.size());
        assertEquals(columns, lines.get(0).width());
    }

    @Test
    void bigTextIsBrokenBetweenWordsBeforeItShrinks() {
        List<Line> lines = Big.of("Mask with the disc", 2, 76, ASCII);
        assertEquals(11, lines.size());
        assertEquals(Line.BLANK, lines.get(5));
        assertTrue(lines.stream().allMatch(line -> line.width() <= 76));
    }

    @Test
    void bigTextOfManyLinesIsGivenUp() {
        assertEquals(0, Big.fitting("one two three four five six seven eight", 2, 26));
        assertEquals(2, Big.fitting("one two", 2, 26));
    }

    @Test
    void accentsAreLeftAwayInBigLetters() {
        assertEquals(Big.of("UBER", 2, 80, ASCII), Big.of("\u00dcber", 2, 80, ASCII));
    }

    @ParameterizedTest
    @CsvSource({
        "260025, at least 260~000",
        "259999, at least 259~000",
        "12345, at least 12~300",
        "1523.9, at least 1523",
        "152.99, at least 152",
    })
    void aLowerBoundIsNeverRoundedUp(double value, String shown) {
        assertEquals(shown.replace('~', '\u00a0'), Figures.value(OptionalDouble.of(value), true));
    }

    @Test
    void aStripMarksValuesWhereTheyLie() {
        Strip strip = Strip.over(List.of(10.0, 20.0, 20.0), false, 11);
        assertEquals("o......|..2", strip.of(List.of(10.0, 20.0, 20.0), 16.7, ASCII));
    }

    @Test
    void aStripOfRatiosGoesByTheLogarithm() {
        Strip strip = Strip.over(List.of(10.0, 100.0, 1000.0), true, 11);
        assertEquals("o....o....o", strip.of(List.of(10.0, 100.0, 1000.0), Double.NaN, ASCII));
    }

    @Test
    void equalValuesStandInTheMiddle() {
        Strip strip = Strip.over(List.of(5.0, 5.0), true, 5);
        assertEquals("..2..", strip.of(List.of(5.0, 5.0), 5, ASCII));
    }

    @Test
    void keysAreNeverPartedFromTheirWords() {
        List<String> lines =
                texts(
                        KeyLine.lines(
                                List.of(
                                        new KeyLine.Named("Up", ""),
                                        new KeyLine.Named("Down", "scroll"),
                                        new KeyLine.Named("q", "leave")),
                                20));
        assertEquals(List.of("[Up][Down] scroll", "[q] leave"), lines);
        assertTrue(lines.stream().allMatch(line -> line.length() <= 20));
    }
}
