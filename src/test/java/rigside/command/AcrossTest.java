package rigside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Commands about several sessions, on four rehearsed ones a week apart. */
class AcrossTest {
    @TempDir static Path home;

    private static final List<String> NAMES = new ArrayList<>();

    @BeforeAll
    static void keep() throws Exception {
        KeptSessions kept = KeptSessions.ofDemo(home.resolve("sessions"), true);
        for (int week = 0; week < 4; week++) {
            NAMES.add(kept.keep(7 * week, 100 + week, 0.06).getFileName().toString());
        }
    }

    /** What was printed, and how it ended. */
    private record Said(int exit, String out, String err) {}

    private static Said say(String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] all = new String[words.length + 2];
        all[0] = "--home";
        all[1] = home.toString();
        System.arraycopy(words, 0, all, 2, words.length);
        int exit =
                Rigside.commandLine()
                        .setOut(new PrintWriter(out, true))
                        .setErr(new PrintWriter(err, true))
                        .execute(all);
        return new Said(exit, out.toString(), err.toString());
    }

    private static JsonNode json(String... words) throws Exception {
        Said said = say(words);
        assertEquals(Exit.DONE, said.exit(), said.err());
        return new ObjectMapper().readTree(said.out());
    }

    @Test
    void sessionsNamedAreTheSameAsThoseTheArchiveChooses() {
        Said named = say("pool", NAMES.get(2), NAMES.get(0), NAMES.get(3), NAMES.get(1));
        assertEquals(Exit.DONE, named.exit(), named.err());
        assertEquals(named, say("pool", "--protocol", "pre-filter"));
        assertTrue(named.out().contains("No verdict is given."), named.out());
        NAMES.forEach(each -> assertTrue(named.out().contains(each), each));
        assertTrue(named.out().lines().allMatch(line -> line.length() <= 80), named.out());
    }

    /** The wearer of these sessions breathes 7.8 / 6.1 times as long with the disc, each day. */
    @Test
    void theDifferenceThatWasPutInIsFoundAndNoVerdictIsGiven() throws Exception {
        JsonNode pool = json("pool", "--wearer", "rehearsed", "--json");
        assertTrue(pool.get("verdict").isNull());
        JsonNode breathing = pool.get("comparisons").get(1);
        assertEquals("breathing", breathing.get("measure").textValue());
        JsonNode pooled = breathing.get("pooled");
        assertTrue(pooled.get("interval").get(0).doubleValue() < 7.8 / 6.1);
        assertTrue(pooled.get("interval").get(1).doubleValue() > 7.8 / 6.1);
        assertEquals(
                "meaningful-difference",
                breathing.get("sessions").get(0).get("verdict").textValue());
    }

    @Test
    void conditionsOfTwoDaysAreComparedThroughTheReferenceFirst() throws Exception {
        String one = NAMES.get(0) + ":with-disc";
        String two = home.resolve("sessions").resolve(NAMES.get(1)) + ":with-disc";
        Said said = say("compare", one, two);
        assertEquals(Exit.DONE, said.exit(), said.err());
        int through = said.out().indexOf("Through the reference");
        int direct = said.out().indexOf("Directly");
        assertTrue(through > 0 && direct > through, said.out());
        JsonNode breathing = json("compare", one, two, "--json").get("measures").get(1);
        // Two other days are too few.
        assertEquals(2, breathing.get("other_days").intValue());
        assertTrue(breathing.get("over_days").isNull());
        assertFalse(breathing.get("within_sessions_too_narrow").isNull());
    }

    @Test
    void aConditionIsFollowedWithAChartThatStandsInAnyTerminal() throws Exception {
        Said said = say("follow", "--condition", "plain", "--measure", "breathing");
        assertEquals(Exit.DONE, said.exit(), said.err());
        assertEquals(4, said.out().lines().filter(line -> line.startsWith("2026-03-")).count());
        assertTrue(said.out().chars().allMatch(c -> c == '\n' || (c >= ' ' && c <= '~')));
        assertTrue(said.out().lines().allMatch(line -> line.length() <= 80), said.out());
        JsonNode json = json("follow", "--condition", "plain", "--measure", "breathing", "--json");
        assertEquals(4, json.get("sessions").size());
        assertTrue(json.get("chart").get("next_expected").isArray());
        assertTrue(json.get("pieces").get(0).get("slope_a_wearing").isObject());
    }

    @Test
    void theSpreadForAPlanIsAKeyThatAProtocolTakes() throws Exception {
        JsonNode json = json("spread", "--measure", "breathing", "--json");
        String spread = json.get("expected_spread_cautious").textValue();
        Path protocol = home.resolve("new.yaml");
        Files.writeString(
                protocol,
                Files.readString(Path.of("demo", "prefilter-disc.yaml"))
                        .replace("expected-spread: 5 %", "expected-spread: " + spread));
        Said check = say("check", protocol.toString());
        assertEquals(Exit.DONE, check.exit(), check.err());
        assertTrue(
                say("spread", "--measure", "breathing")
                        .out()
                        .contains("\nexpected-spread: " + spread + "\n"));
    }

    /**
     * Two roads: what {@code spread} tells, typed as the spread of a round, gives the same table.
     */
    @ParameterizedTest
    @CsvSource({"spread, ''", "upper_80, --cautious"})
    void aPlanTakesTheSpreadOnRecordThatIsTold(String told, String how) throws Exception {
        double spread =
                json("spread", "--measure", "breathing", "--json")
                        .at("/by_rounds/" + told)
                        .doubleValue();
        String[] plan = {"plan", "prefilter-disc", "--measure", "breathing", "--json"};
        JsonNode typed = json(and(plan, "--spread", String.valueOf(spread * Math.sqrt(2))));
        JsonNode taken = json(and(plan, ("--spread-on-record " + how).strip().split(" ", -1)));
        assertEquals(typed.get("outcomes"), taken.get("outcomes"));
        JsonNode breathing = taken.at("/expected_spreads/1");
        assertEquals("record", breathing.get("from").textValue());
        assertEquals(spread, breathing.at("/on_record/" + told).doubleValue());
        assertEquals("5.0 %", breathing.get("of_file").textValue());
    }

    private static String[] and(String[] line, String... more) {
        return Stream.concat(Stream.of(line), Stream.of(more)).toArray(String[]::new);
    }

    @Test
    void aPlanSaysWhatItTookFromTheRecordAndWhatItKept() {
        String taken = say("plan", "prefilter-disc", "--spread-on-record").out();
        assertTrue(taken.startsWith("expected spreads on record, as seen:\n- seal: "), taken);
        assertTrue(taken.contains("differences in 4 sessions; the file has 1.50 times\n"), taken);
        assertTrue(taken.contains("differences in 4 sessions; the file has 5.0 %\n"), taken);
        String kept = say("plan", "pressure-while-breathing", "--spread-on-record").out();
        assertTrue(
                kept.contains("- sitting: 8.0 %, kept from the file; no session on record tells"),
                kept);
        assertEquals(
                Set.of(),
                planned("pressure-while-breathing"),
                "lines that a plan without the record has and this one has not");
    }

    /** Lines of the plain plan that the one with the record lacks. */
    private static Set<String> planned(String protocol) {
        Set<String> plain = new TreeSet<>(say("plan", protocol).out().lines().toList());
        plain.removeAll(say("plan", protocol, "--spread-on-record").out().lines().toList());
        return plain;
    }

    @Test
    void aPageIsWrittenBesideTheText() throws Exception {
        Path file = home.resolve("pool.html");
        Said said = say("pool", "--protocol", "disc", "--html", file.toString());
        assertEquals(Exit.DONE, said.exit(), said.err());
        String html = Files.readString(file);
        assertTrue(html.contains("No verdict is given."), html);
        assertFalse(html.contains("<script"), html);
        Path followed = home.resolve("follow.html");
        say(
                "follow",
                "--condition",
                "plain",
                "--measure",
                "breathing",
                "--html",
                followed.toString());
        String page = Files.readString(followed);
        assertTrue(page.contains("<svg"));
        assertTrue(page.indexOf("Mean over sessions") < page.indexOf("<table"), page);
        assertTrue(page.contains("Mean over sessions"), page);
        Said again = say("pool", "--protocol", "disc", "--html", file.toString());
        assertEquals(Exit.PROBLEMS, again.exit());
        assertTrue(again.err().contains("is there already"), again.err());
        assertEquals(
                Exit.DONE,
                say("pool", "--protocol", "disc", "--replace", "--html", file.toString()).exit());
    }

    @Test
    void whatCannotBeDoneIsRefusedInWords() {
        refused("name two sessions or more", "pool");
        refused("pooling takes two sessions", "pool", NAMES.get(0));
        refused("is named twice", "pool", NAMES.get(0), NAMES.get(0));
        refused("there is no such file", "pool", NAMES.get(0), "nowhere");
        refused("there is no closed simulated session", "pool", "--simulated");
        refused("is not a session and a condition", "compare", NAMES.get(0), "a:b");
        refused("of one session", "compare", NAMES.get(0) + ":plain", NAMES.get(0) + ":plain");
        refused("has no condition 'x'", "compare", NAMES.get(0) + ":plain", NAMES.get(1) + ":x");
        refused("has a condition 'x'", "follow", "--condition", "x", "--measure", "seal");
        refused("has a measure 'x'", "spread", "--measure", "x");
        refused(
                "no closed simulated",
                "plan",
                "breathing-only",
                "--spread-on-record",
                "--simulated");
        refused("is not given", "plan", "breathing-only", "--wearer", "A");
        refused("is not given", "plan", "breathing-only", "--cautious");
        refused("no protocol is named", "plan", "--spread-on-record");
        refused(
                "leave one of them out",
                "plan",
                "breathing-only",
                "--spread-on-record",
                "--spread",
                "0.1");
        refused("of the wearer 'B'", "spread", "--measure", "seal", "--wearer", "B");
    }

    private static void refused(String words, String... line) {
        Said said = say(line);
        assertTrue(said.err().contains(words), () -> String.join(" ", line) + ": " + said.err());
        assertTrue(said.exit() == Exit.PROBLEMS || said.exit() == Exit.USAGE);
        assertEquals("", said.out());
    }
}
