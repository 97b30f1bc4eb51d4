package rigside.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.measure.Unit;
import rigside.yaml.Document;

class RigFileTest {
    private static final Path FOLDER = Path.of("bench");

    private static final String BENCH =
            """
            format: 1
            title: bench by the window (invented)
            feeds:
              - id: gauge
                quantity: mask-pressure
                serial: /dev/ttyS9
                baud: 19200
                parity: even
                stop-bits: 2
                pattern: 'P *(?<value>[-+0-9.]+)'
                unit: mbar
                scale: -1
                offset: 0.02
                from: -10
                to: 10
                rate: 10 /s
                lost-after: 1500 ms
              - id: counter
                quantity: switched-concentration
                file: counter.csv
                column: particles
                separator: semicolon
                decimal: comma
                pass-over: '^#'
                side:
                  column: tube
                  ambient: A
                  mask: M
                unit: /cm3
                rate: 60 /min
                settling: 3 s
            """;

    @Test
    void instrumentsAreReadAsDeclared() {
        Instruments bench = instruments(BENCH);
        assertEquals("bench by the window (invented)", bench.title());
        Feed gauge = bench.feeds().get(0);
        assertEquals(
                new Origin.Serial("/dev/ttyS9", 19200, 8, Origin.Parity.EVEN, 2), gauge.origin());
        assertEquals(new Scale(Unit.MILLIBAR, -1, 0.02, -10, 10), gauge.scale());
        assertEquals(OptionalDouble.of(10), gauge.perSecond());
        assertEquals(1.5, gauge.lostAfter());
        Feed counter = bench.feed(Signal.MASK).orElseThrow();
        assertEquals(new Origin.Appended(FOLDER.resolve("counter.csv")), counter.origin());
        assertEquals(OptionalDouble.of(1), counter.perSecond());
        assertEquals(3, counter.settling());
        assertEquals(5, counter.lostAfter());
        assertEquals(Signal.MASK, counter.form().sides().get("M"));
    }

    @Test
    void aSimulatedRigIsStillOne() {
        String wearer =
                """
                format: 1
                title: somebody (invented)
                ambient: 3800 /cm3
                ambient-varies: 3 %
                conditions:
                  - id: plain
                    fit-factor: {median: 260, between-donnings: 20 %, within-donning: 15 %}
                    inhalation: {median: 6.1 s, between-donnings: 3 %, within-donning: 4 %}
                    peak-pressure: {median: 105 Pa, between-donnings: 5 %, within-donning: 8 %}
                """;
        RigFile read = RigFile.read("a.rig.yaml", wearer, FOLDER).value().orElseThrow();
        assertEquals(
                "somebody (invented)",
                assertInstanceOf(RigFile.Simulated.class, read).wearer().title());
    }

    @Test
    void theExampleOfTheDemonstrationIsSound() throws IOException {
        try (InputStream in = RigFileTest.class.getResourceAsStream("/demo/instruments.rig.yaml")) {
            Document<RigFile> read = RigFile.read("demo", in.readAllBytes(), FOLDER);
            assertEquals(List.of(), read.problems());
        }
    }

    @Test
    void anAbsolutePathStaysAsItIs() {
        Path there = Path.of("/var/counter.csv").toAbsolutePath();
        String text = BENCH.replace("file: counter.csv", "file: '" + there + "'");
        assertEquals(
                new Origin.Appended(there),
                instruments(text).feed(Signal.MASK).orElseThrow().origin());
    }

    @ParameterizedTest(name = "{0} -> {1}: {2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "id: gauge|id: Gauge|4:9: the id 'Gauge' is not a short plain word",
                "id: counter|id: gauge|18:9: the id 'gauge' is given to more than one feed",
                "quantity: mask-pressure|quantity: mask-presure|did you mean 'mask-pressure'?",
                "serial: /dev/ttyS9|seriel: /dev/ttyS9|did you mean 'serial'?",
                "serial: /dev/ttyS9|file: x.csv|'baud' goes with 'serial' only",
                "file: counter.csv|file: x.csv, pipe: y|'file' and 'pipe' exclude each other",
                "baud: 19200|baud: fast|'baud' must be a number",
                "parity: even|parity: mark|unknown word 'mark' for 'parity'",
                "pattern: 'P *(?<value>[-+0-9.]+)'|pattern: '(?<value>['|no regular expression",
                "pattern: 'P *(?<value>[-+0-9.]+)'|pattern: '[0-9]+'|no group named value",
                "pattern: 'P *(?<value>[-+0-9.]+)'|pattern: '\\(?<value>x'|no group named value",
                "unit: mbar|unit: /cm3|11:11: 'unit' is '/cm3', a particle concentration, must be a"
                        + " pressure",
                "unit: mbar|unit: bar|unknown unit 'bar'",
                "scale: -1|scale: 0|'scale' is 0",
                "to: 10|to: 10 kPa|it is in 'unit', mbar: write 100",
                "to: 10|to: 10 s|that is a time; it is a pressure in 'unit', mbar",
                "to: 10|to: -11|'to' is not above 'from'",
                "rate: 10 /s|rate: 10 s|'rate' is '10 s', a time, must be a rate",
                "rate: 10 /s|rate: 10 Hz|write for example '10 /s'",
                "rate: 10 /s|rate: 0 /s|must be above 0",
                "lost-after: 1500 ms|lost-after: 0 s|must be above 0",
                "lost-after: 1500 ms|settling: 2 s|is for a switched counter only",
                "column: particles|column: 0|columns are counted from 1",
                "separator: semicolon|separator: comma|a decimal comma cannot be told",
                "column: particles|pass-over: x|missing key in item 2 of 'feeds', one of column",
                "separator: semicolon|rate: 2 /s|a line of several columns needs its separator",
                "ambient: A|ambient: M|both sides have the same word",
                "mask: M|maks: M|did you mean 'mask'?",
                "settling: 3 s|time-column: 1|'time-column' goes with 'replay' only",
                "feeds:|feed:|did you mean 'feeds'?",
                "title: bench by|ambient: 5 /cm3\\ntitle: bench by|is for a simulated rig",
                "format: 1|format: 2|write a number from 1 to 1"
            })
    void mistakesAreToldWithTheirPlaceAndCure(String right, String wrong, String told) {
        assertTrue(BENCH.contains(right), right);
        String text = BENCH.replaceFirst(java.util.regex.Pattern.quote(right), quoted(wrong));
        List<String> problems = problems(text);
        assertTrue(problems.stream().anyMatch(each -> each.contains(told)), problems.toString());
    }

    private static String quoted(String wrong) {
        return java.util.regex.Matcher.quoteReplacement(
                wrong.replace("\\n", "\n").replace(", pipe", "\n    pipe"));
    }

    @Test
    void oneQuantityComesFromOneFeed() {
        String second =
                "  - {id: second, quantity: mask-concentration, file: b, column: 1, unit: /cm3}\n";
        assertEquals(
                List.of(
                        "bench.rig.yaml:32:28: a second feed gives the same quantity as one before"
                                + " it\n    keep the one that is to be used"),
                problems(BENCH + second));
    }

    @Test
    void severalMistakesAreToldTogether() {
        List<String> problems =
                problems(
                        BENCH.replace("id: gauge", "id: G")
                                .replace("unit: mbar", "unit: bar")
                                .replace("settling: 3 s", "settling: soon"));
        assertEquals(3, problems.size(), problems.toString());
    }

    @Test
    void junkMakesProblemsAndNoException() {
        byte[] junk = new byte[5000];
        new java.util.Random(4).nextBytes(junk);
        assertTrue(RigFile.read("junk", junk, FOLDER).value().isEmpty());
        for (int at = 0; at < BENCH.length(); at += 3) {
            Document<RigFile> cut =
                    RigFile.read(
                            "cut", BENCH.substring(0, at).getBytes(StandardCharsets.UTF_8), FOLDER);
            assertEquals(cut.value().isEmpty(), !cut.problems().isEmpty());
        }
    }

    private static List<String> problems(String text) {
        return RigFile.read("bench.rig.yaml", text, FOLDER).problems().stream()
                .map(Object::toString)
                .toList();
    }

    private static Instruments instruments(String text) {
        Document<RigFile> read = RigFile.read("bench.rig.yaml", text, FOLDER);
        assertEquals(List.of(), read.problems());
        return ((RigFile.Attached) read.value().orElseThrow()).instruments();
    }
}
