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
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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
        refused("of the wearer 'B'", "spread", "--measure", "seal", "--wearer", "B");
    }

    private static void refused(String words, String... line) {
        Said said = say(line);
        assertTrue(said.err().contains(words), () -> String.join(" ", line) + ": " + said.err());
        assertTrue(said.exit() == Exit.PROBLEMS || said.exit() == Exit.USAGE);
        assertEquals("", said.out());
    }
}
