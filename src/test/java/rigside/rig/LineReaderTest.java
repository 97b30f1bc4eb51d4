package rigside.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineReaderTest {
    private static final LineForm SECOND = columns(Separator.COMMA, "2", false);

    @ParameterizedTest(name = "\"{0}\" reads {1}")
    @CsvSource(
            delimiter = '|',
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                "a,12.5|12.5",
                "a, 12.5 ,b|12.5",
                "a,\"12.5\"|12.5",
                "a,-0012.50|-12.5",
                "a,+.5|0.5",
                "a,5.|5",
                "a,1.2e3|1200"
            })
    void aColumnIsRead(String line, double value) {
        assertEquals(value, number(new LineReader(SECOND), line));
    }

    @ParameterizedTest(name = "\"{0}\" is no reading: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "a|no column 2, only 1",
                "a,NaN|'NaN' is no number",
                "a,Infinity|is no number",
                "a,1e999|is no number",
                "a,0x10|is no number",
                "a,12.5 Pa|is no number",
                "a,1.2.3|is no number",
                "a,--|is no number",
                "a,|'' is no number",
                "a,1d|is no number"
            })
    void whatIsNoNumberIsNonsense(String line, String why) {
        String told = nonsense(new LineReader(SECOND), line);
        assertEquals(why, told.substring(Math.max(0, told.indexOf(why))), told);
    }

    @Test
    void aDecimalCommaIsReadWhereItIsDeclared() {
        LineReader reader = new LineReader(columns(Separator.SEMICOLON, "1", true));
        assertEquals(12.5, number(reader, "12,5;7"));
        assertEquals("'1.234,5' is no number with a decimal comma", nonsense(reader, "1.234,5"));
        assertEquals("'1,234,5' is no number with a decimal comma", nonsense(reader, "1,234,5"));
    }

    @Test
    void manySpacesSeparateLikeOne() {
        assertEquals(3, number(new LineReader(columns(Separator.SPACE, "2", false)), "  1 \t  3 "));
    }

    @Test
    void aNamedColumnWaitsForItsHeaderAndFollowsANewOne() {
        LineReader reader = new LineReader(columns(Separator.COMMA, "p", false));
        assertEquals("no header line with column 'p' has come yet", nonsense(reader, "1,2"));
        assertInstanceOf(Parsed.Passed.class, reader.read("t,p"));
        assertEquals(2, number(reader, "1,2"));
        assertInstanceOf(Parsed.Passed.class, reader.read("p,t"));
        assertEquals(1, number(reader, "1,2"));
    }

    @Test
    void aPatternFindsItsNumberAnywhere() {
        LineReader reader = new LineReader(named("P=(?<value>[-0-9.]+)"));
        assertEquals(-3.5, number(reader, "12:01 P=-3.5 Pa ok"));
        assertEquals("it does not match the pattern", nonsense(reader, "P: 3"));
    }

    @Test
    void linesToBePassedOverAndBlankOnesAreNoFault() {
        LineForm form =
                new LineForm(SECOND.shape(), false, Optional.of(Pattern.compile("^#")), Map.of());
        assertInstanceOf(Parsed.Passed.class, new LineReader(form).read("# warm-up"));
        assertInstanceOf(Parsed.Passed.class, new LineReader(form).read("  \t"));
    }

    @Test
    void whatTheTubeIsOnIsReadFromItsColumnOrGroup() {
        Map<String, Signal> words = Map.of("A", Signal.AMBIENT, "M", Signal.MASK);
        LineReader columns =
                new LineReader(
                        new LineForm(
                                new LineForm.Columns(
                                        Separator.COMMA,
                                        Column.of("1"),
                                        Optional.of(Column.of("2"))),
                                false,
                                Optional.empty(),
                                words));
        assertEquals(new Parsed.Found(7, Optional.of(Signal.MASK)), columns.read("7,M"));
        assertEquals(
                "column 2 says 'X'; 'A' (tube on the room) or 'M' (on the mask) would be right",
                nonsense(columns, "7,X"));
        LineReader named =
                new LineReader(
                        new LineForm(
                                new LineForm.Named(
                                        Pattern.compile("(?<side>[A-Z])?(?<value>[0-9]+)")),
                                false,
                                Optional.empty(),
                                words));
        assertEquals(new Parsed.Found(8, Optional.of(Signal.AMBIENT)), named.read("A8"));
        assertEquals(
                "group 'side' says nothing; 'A' (tube on the room) or 'M' (on the mask) would be"
                        + " right",
                nonsense(named, "8"));
    }

    /** Each of these takes a usual matcher hours, or its whole stack. */
    @ParameterizedTest
    @CsvSource({"'(a+)+(?<value>b)'", "'(a|a)*(?<value>b)'", "'(?<value>(.|x)*)!'"})
    void aPatternThatTakesForEverIsGivenUp(String pattern) {
        LineReader reader = new LineReader(named(pattern));
        String line = "a".repeat(LineSplitter.LONGEST);
        assertTimeoutPreemptively(
                Duration.ofSeconds(10),
                () -> assertInstanceOf(Parsed.Nonsense.class, reader.read(line)));
    }

    @Test
    void noTextMakesAReaderThrow() {
        Random random = new Random(8);
        for (LineForm form :
                new LineForm[] {
                    SECOND,
                    columns(Separator.TAB, "x", true),
                    columns(Separator.SPACE, "3", false),
                    named("(?<value>.*)")
                }) {
            LineReader reader = new LineReader(form);
            for (int count = 0; count < 2000; count++) {
                byte[] junk = new byte[random.nextInt(60)];
                random.nextBytes(junk);
                reader.read(new String(junk, java.nio.charset.StandardCharsets.ISO_8859_1));
            }
        }
    }

    private static LineForm columns(Separator separator, String column, boolean comma) {
        return new LineForm(
                new LineForm.Columns(separator, Column.of(column), Optional.empty()),
                comma,
                Optional.empty(),
                Map.of());
    }

    private static LineForm named(String pattern) {
        return new LineForm(
                new LineForm.Named(Pattern.compile(pattern)), false, Optional.empty(), Map.of());
    }

    private static double number(LineReader reader, String line) {
        return assertInstanceOf(Parsed.Found.class, reader.read(line)).raw();
    }

    private static String nonsense(LineReader reader, String line) {
        return assertInstanceOf(Parsed.Nonsense.class, reader.read(line)).why();
    }
}
