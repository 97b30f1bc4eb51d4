package rigside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigside.archive.Archived;
import rigside.archive.ManySessions;
import rigside.archive.SomeSession;
import rigside.decide.Conclusion;
import rigside.decide.Limits;
import rigside.decide.Verdict;
import rigside.journal.Damage;
import rigside.protocol.Measure.Compared.Matters;
import rigside.protocol.Subject;
import rigside.report.Legible;

class ListSessionsTest {
    private static final int ALL = 50;

    @TempDir static Path home;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeAll
    static void makeSessions() throws Exception {
        ManySessions.write(home.resolve("sessions"), ALL, 6, 3);
    }

    private int run(String... arguments) {
        return Rigside.commandLine()
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(
                        Stream.concat(
                                        Stream.of("sessions", "--home", home.toString()),
                                        Stream.of(arguments))
                                .toArray(String[]::new));
    }

    private int count(String... arguments) throws Exception {
        out.getBuffer().setLength(0);
        assertEquals(Exit.DONE, run(arguments), err::toString);
        return new ObjectMapper().readTree(out.toString()).get("count").asInt();
    }

    private static Archived some() {
        return SomeSession.in(Path.of("2026-11-25-0916-straps"))
                .begun("2026-11-25T09:16:00+01:00")
                .closed()
                .simulated()
                .about("Straps at the glass bench, old ones and new ones, one after another", "?")
                .comparing("old", "new")
                .fact("wearer", "ab12", Subject.WEARER_CODE)
                .rounds(6)
                .found(
                        new Archived.Finding(
                                "seal",
                                "new",
                                new Conclusion(Verdict.MEANINGFUL_DIFFERENCE, -1),
                                Matters.EITHER,
                                OptionalDouble.of(0.5),
                                Optional.of(new Limits(0.4, Double.POSITIVE_INFINITY)),
                                6))
                .archived();
    }

    @Test
    void theTableTellsWhenWhoHowManyRoundsWhatAndWhatCameOfIt() {
        Archived open =
                SomeSession.in(Path.of("2026-11-24-1700-disc"))
                        .begun("2026-11-24T17:00:00Z")
                        .rounds(12)
                        .archived();
        Archived broken =
                SomeSession.in(Path.of("broken"))
                        .damaged(List.of(new Damage("broken/journal.jsonl", 3, "no event", "")))
                        .archived();
        assertEquals(
                """
                begun             wearer  rounds  what, and what came of it
                2026-11-25 09:16  ab12         6  Straps at the glass bench, old ones and new
                                                  ones, one after another (simulated)
                                                  seal: a meaningful decrease
                                                  2026-11-25-0916-straps
                2026-11-24 17:00  -           12  Disc
                                                  open
                                                  2026-11-24-1700-disc
                unknown           -            0  Disc
                                                  damaged: no event
                                                  broken

                3 of 7 sessions, 1 closed
                """,
                SessionsText.of(List.of(some(), open, broken), 7));
        assertEquals("0 of 7 sessions\n", SessionsText.of(List.of(), 7));
        assertEquals("0 sessions\n", SessionsText.of(List.of(), 0));
    }

    @Test
    void jsonHoldsWhatIsRemembered() throws Exception {
        JsonNode read = new ObjectMapper().readTree(SessionsJson.of(List.of(some()), 7));
        assertEquals(7, read.get("of").asInt());
        JsonNode session = read.get("sessions").get(0);
        assertEquals("2026-11-25-0916-straps", session.get("name").asText());
        assertEquals("2026-11-25", session.get("day").asText());
        assertEquals("ab12", session.get("wearer").asText());
        JsonNode finding = session.get("findings").get(0);
        assertEquals("meaningful-difference", finding.get("verdict").asText());
        assertEquals(-1, finding.get("direction").asInt());
        assertEquals(0.4, finding.get("interval").get(0).asDouble());
        assertTrue(finding.get("interval").get(1).isNull());
    }

    @Test
    void whatIsAskedForAndWhatIsNotIsAllThereIs() throws Exception {
        assertEquals(ALL, count("--json"));
        assertEquals(ALL, count("--json", "--closed") + count("--json", "--open"));
        assertEquals(ALL, count("--json", "--simulated"));
        assertEquals(0, count("--json", "--no-simulated"));
        assertEquals(
                ALL,
                count("--json", "--to", "2024-06-30") + count("--json", "--from", "2024-07-01"));
        int all = 0;
        for (int wearer = 1; wearer <= 12; wearer++) {
            all += count("--json", "--wearer", String.format("W%02d", wearer));
        }
        assertEquals(ALL, all);
    }

    @Test
    void wordsNarrowFurther() throws Exception {
        int disc = count("--json", "pre-filter", "disc");
        int large = count("--json", "pre-filter", "disc", "--mask", "large");
        assertTrue(large > 0 && large < disc && disc < ALL, disc + " " + large);
        assertEquals(disc, count("--json", "--protocol", "prefilter-disc.yaml"));
        assertEquals(disc, count("--json", "--condition", "half mask WITH disc"));
    }

    @Test
    void everyLineStaysWithinEightyColumnsButAFoldersName() {
        assertEquals(Exit.DONE, run());
        out.toString()
                .lines()
                .filter(line -> !line.matches(" {34}\\S+"))
                .forEach(line -> assertTrue(line.length() <= 80, line));
        assertTrue(out.toString().endsWith("50 sessions, 48 closed\n"), out::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--from|yesterday|'yesterday' is not a day, such as 2026-11-20",
                "--to|2026-13-01|'2026-13-01' is not a day, such as 2026-11-20",
                "--verdict|meaningfull increase|did you mean 'meaningful increase'?",
                "--verdict|good|known here: meaningful difference, meaningful increase",
            })
    void whatCannotBeAskedForIsSaidSo(String option, String value, String words) {
        assertEquals(Exit.USAGE, run(option, value));
        assertTrue(err.toString().contains(words), err::toString);
        assertEquals("", out.toString());
    }

    @Test
    void daysTheWrongWayRoundAreSaidSo() {
        assertEquals(Exit.USAGE, run("--from", "2026-02-01", "--to", "2026-01-01"));
        assertTrue(err.toString().contains("--from 2026-02-01 is after --to 2026-01-01"));
    }

    @Test
    void openAndClosedTogetherAreRefused() {
        assertEquals(Exit.USAGE, run("--open", "--closed"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u001b[2J\u001b]0;title\u0007",
                "\u009b31m",
                "a\r\nb\tc",
                "\u202Eturned\u202C \u200Bunseen\uFEFF",
                "\uD83D half",
                "<script>alert(1)</script> & \"quoted\" \\ '",
                "=1+1|a",
                "\u0301\u0301\u0301marks",
                "\uD83D\uDE00 wide \u754C\u754C"
            })
    void hostileTextsAreHarmlessInTableAndJson(String text) throws Exception {
        Archived session =
                SomeSession.in(Path.of("some"))
                        .begun("2026-11-25T09:16:00Z")
                        .closed()
                        .about(text.repeat(12), text)
                        .comparing(text, "b", "c")
                        .fact("wearer", text, Subject.WEARER_CODE)
                        .fact("mask", text, Subject.MASK)
                        .archived();
        String table = SessionsText.of(List.of(session), 1);
        List<String> unsafe = new ArrayList<>();
        table.lines().filter(line -> !isHarmless(line)).forEach(unsafe::add);
        String json = SessionsJson.of(List.of(session), 1);
        json.lines().filter(line -> !isHarmless(line)).forEach(unsafe::add);
        assertEquals(List.of(), unsafe);
        JsonNode read = new ObjectMapper().readTree(json).get("sessions").get(0);
        assertEquals(text, read.get("protocol").get("question").asText());
        table.lines().forEach(line -> assertTrue(Legible.width(line) <= 80, line));
    }

    /** Nothing a terminal obeys, nor anything unseen. */
    private static boolean isHarmless(String line) {
        return line.codePoints()
                .noneMatch(
                        each ->
                                Character.getType(each) == Character.CONTROL
                                        || Character.getType(each) == Character.FORMAT);
    }
}
