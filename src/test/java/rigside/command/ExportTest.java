package rigside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.protocol.Protocol;
import rigside.protocol.Shipped;

class ExportTest {
    private static final String DEMONSTRATION = "demo/recorded-session";
    private static final Path STRAPS =
            Path.of("src/test/resources/protocols-written-by-a-new-user/strap-lengths.yaml");

    private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");

    @TempDir Path home;

    private String out;
    private String err;

    private int run(String... words) {
        StringWriter said = new StringWriter();
        StringWriter wrong = new StringWriter();
        int exit =
                Rigside.commandLine()
                        .setOut(new PrintWriter(said, true))
                        .setErr(new PrintWriter(wrong, true))
                        .execute(words);
        out = said.toString();
        err = wrong.toString();
        return exit;
    }

    static Stream<String> comparisons() {
        return Shipped.names()
                .filter(name -> Shipped.protocol(name).purpose() == Protocol.Purpose.COMPARISON);
    }

    /** With donnings abandoned, struck out and done again, and a reading five times too large. */
    @ParameterizedTest
    @MethodSource("comparisons")
    void thePrintedLineMakesTheSameComparisonsFromTheTableAlone(String name) throws IOException {
        Path session =
                rehearsed(
                        name,
                        "--fault",
                        "struck-out:2",
                        "--fault",
                        "abandoned:3",
                        "--fault",
                        "odd-value:4");
        assertTrue(exported(session) > 0);
    }

    @Test
    void soItDoesWhereDonningsStandForThemselves() throws IOException {
        Path protocol =
                Files.writeString(
                        home.resolve("straps.yaml"),
                        Files.readString(STRAPS).replace("  replicates: trials\n", ""));
        assertTrue(exported(rehearsed(protocol.toString())) > 0);
    }

    @Test
    void whereTrialsStandForThemselvesItIsSaidWhatATableCannotHold() throws IOException {
        assertEquals(0, exported(rehearsed(STRAPS.toString())));
        run("export", made().toString(), "--replace");
        assertTrue(out.contains("It differs. ") && out.contains("each trial is a value"), out);
    }

    @Test
    void whereTheCounterBoundsValuesTheSameIsSaidOrWhyNot() throws IOException {
        Path rig =
                Files.writeString(
                        home.resolve("tight.rig.yaml"),
                        Files.readString(Path.of("demo/prefilter-disc.rig.yaml"))
                                .replaceAll("median: [0-9]+,", "median: 60000,"));
        Path session = rehearsed("prefilter-disc", "--rig", rig.toString());
        assertTrue(exported(session) > 0);
        String values = Files.readString(session.resolve("data").resolve("values.csv"));
        assertTrue(values.contains(",true,"), values);
    }

    /** How many comparisons were the same; where one is not, its reason holds in the session. */
    private int exported(Path session) throws IOException {
        assertEquals(Exit.DONE, run("export", session.toString()), err);
        String told = out;
        assertEquals(Exit.DONE, run("analyse", session.toString(), "--json"), err);
        JsonNode whole = new ObjectMapper().readTree(out).get("comparisons");
        int same = 0;
        List<String> lines = told.lines().map(String::strip).toList();
        for (int at = 0; at < lines.size(); at++) {
            if (lines.get(at).startsWith("rigside analyse")) {
                List<String> words = words(lines.get(at));
                words.add("--json");
                assertEquals(Exit.DONE, run(words.toArray(String[]::new)), err);
                JsonNode again = new ObjectMapper().readTree(out).get("comparisons");
                String verdict = lines.get(at + 1);
                if (verdict.equals("It gives the same verdicts, estimates and intervals.")) {
                    String measure = Path.of(words.get(2)).getFileName().toString();
                    same += same(whole, again, measure.replaceAll("^values-|\\.csv$", ""));
                } else {
                    assertTrue(verdict.startsWith("It differs. "), verdict);
                }
            }
        }
        return same;
    }

    private static int same(JsonNode whole, JsonNode again, String measure) {
        int same = 0;
        for (JsonNode one : whole) {
            for (JsonNode other : again) {
                if (one.get("measure").asText().equals(measure)
                        && one.get("condition").equals(other.get("condition"))) {
                    for (String part :
                            List.of("n", "estimate", "interval", "critical", "verdict", "looks")) {
                        assertEquals(one.get(part), other.get(part), measure + " " + part);
                    }
                    same++;
                }
            }
        }
        return same;
    }

    private static List<String> words(String line) {
        List<String> words = new ArrayList<>();
        Matcher matcher = WORD.matcher(line.replaceFirst("^rigside ", ""));
        while (matcher.find()) {
            words.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
        }
        return words;
    }

    private Path rehearsed(String... words) throws IOException {
        List<String> command = new ArrayList<>(List.of("rehearse"));
        command.addAll(List.of(words));
        command.addAll(List.of("--seed", "5", "--into", home.resolve("in").toString()));
        assertEquals(Exit.DONE, run(command.toArray(String[]::new)), () -> err);
        return made();
    }

    private Path made() throws IOException {
        try (Stream<Path> made = Files.list(home.resolve("in"))) {
            return made.findFirst().orElseThrow();
        }
    }

    @Test
    void anEarlierExportIsReplacedOnlyWhenAsked() throws IOException {
        Path to = home.resolve("tables");
        assertEquals(Exit.DONE, run("export", DEMONSTRATION, "--to", to.toString()));
        assertTrue(out.startsWith("Written to " + to + ":\n  datapackage.json\n"), out);
        assertEquals(Exit.PROBLEMS, run("export", DEMONSTRATION, "--to", to.toString()));
        assertEquals(
                "'"
                        + to
                        + "' holds an earlier export\n    write over it with --replace, or name"
                        + " another folder with --to FOLDER\n",
                err);
        assertEquals(Exit.DONE, run("export", DEMONSTRATION, "--to", to.toString(), "--replace"));
    }

    @Test
    void whatSomebodyElsePutThereStays() throws IOException {
        Path mine = Files.writeString(home.resolve("thesis.txt"), "mine");
        for (String option : List.of("--replace", "--debug")) {
            assertEquals(
                    Exit.PROBLEMS, run("export", DEMONSTRATION, "--to", home.toString(), option));
            assertTrue(err.startsWith("'" + home + "' holds something else\n"), err);
        }
        assertEquals("mine", Files.readString(mine));
        assertEquals(Exit.PROBLEMS, run("export", DEMONSTRATION, "--to", mine + "/below"));
        assertTrue(err.contains("cannot be written"), err);
        assertEquals("mine", Files.readString(mine));
    }

    @Test
    void ofADamagedJournalWhatStandsBeforeTheDamageIsWritten() throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(journal(DEMONSTRATION)));
        lines.set(200, "not a line");
        Path session = Files.createDirectory(home.resolve("damaged"));
        Files.write(session.resolve("journal.jsonl"), lines);
        assertEquals(Exit.PROBLEMS, run("export", session.toString()));
        assertTrue(err.contains("journal.jsonl:201"), err);
        String description = Files.readString(session.resolve("data").resolve("datapackage.json"));
        assertTrue(description.contains("The journal is damaged"), description);
    }

    @Test
    void whatIsNoSessionIsSaid() {
        assertEquals(Exit.PROBLEMS, run("export", home.resolve("none").toString()));
        assertTrue(err.contains("there is no such file"), err);
        assertFalse(Files.exists(home.resolve("data")));
    }

    private static Path journal(String session) {
        return Path.of(session).resolve("journal.jsonl");
    }
}
