package rigside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.analysis.Analysis;
import rigside.analysis.Looks;
import rigside.journal.Journal;
import rigside.journal.Stamp;
import rigside.session.Activity;
import rigside.session.Event;
import rigside.session.Input;
import rigside.session.Recorded;
import rigside.session.State;
import rigside.session.Story;

class AnalyseTest {

    private static final Map<String, String> VERDICTS =
            Map.of(
                    "meaningful", "meaningful-difference",
                    "no meaningful", "no-meaningful-difference",
                    "difference", "difference-size-unsettled",
                    "open", "not-settled");

    @TempDir private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        return Rigside.commandLine()
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(
                        Stream.concat(Stream.of("analyse"), Stream.of(arguments))
                                .toArray(String[]::new));
    }

    private Path table(String text) throws IOException {
        return Files.writeString(folder.resolve("values.csv"), text);
    }

    private int analyse(String text, String... more) throws IOException {
        List<String> arguments =
                new ArrayList<>(
                        List.of(
                                "--values", table(text).toString(),
                                "--fewest", "3",
                                "--most", "10",
                                "--meaningful", "10%"));
        arguments.addAll(Arrays.asList(more));
        return run(arguments.toArray(String[]::new));
    }

    private static String resource(String name) throws IOException {
        try (InputStream in = AnalyseTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Made with NumPy and the quadrature of the reference scripts; source in the file. */
    static Stream<Named<JsonNode>> workedSequences() throws IOException {
        List<JsonNode> entries = new ArrayList<>();
        new ObjectMapper()
                .readTree(resource("/rigside/decide/worked_sequences.json"))
                .get("entries")
                .forEach(entries::add);
        return entries.stream()
                .map(each -> Named.of(each.get("kind") + " " + each.get("n_max"), each));
    }

    @ParameterizedTest
    @MethodSource("workedSequences")
    void everyLookOfAWorkedSequenceComesOutOfItsTable(JsonNode entry) throws IOException {
        StringBuilder rows = new StringBuilder("round,condition,value\n");
        int look = 0;
        for (int round = 1; round <= entry.get("n_max").intValue(); round++) {
            rows.append(round).append(",plain,").append(entry.get("A").get(round - 1)).append('\n');
            rows.append(round).append(",part,").append(entry.get("B").get(round - 1)).append('\n');
            JsonNode comparison = comparison(entry, rows.toString());
            assertEquals(round, comparison.get("n").intValue());
            if (round < entry.get("n_min").intValue()) {
                assertTrue(comparison.get("interval").isNull());
                assertEquals("too-few-rounds", comparison.get("verdict").textValue());
                continue;
            }
            JsonNode expected = entry.get("looks").get(look++);
            assertEquals(
                    VERDICTS.get(expected.get("verdict").textValue()),
                    comparison.get("verdict").textValue());
            // 10 digits of estimate and standard error, 7 of c with its quadrature error of 4.1e-7.
            assertClose(expected.get("ratio"), comparison.get("estimate"), 1e-9);
            assertClose(expected.get("ratio_lower"), comparison.get("interval").get(0), 1e-6);
            assertClose(expected.get("ratio_upper"), comparison.get("interval").get(1), 1e-6);
            assertClose(expected.get("c"), comparison.get("critical"), 1e-6);
            assertEquals(
                    round == entry.get("n_max").intValue(),
                    comparison.get("plan_used_up").booleanValue());
        }
        assertEquals(entry.get("looks").size(), look);
    }

    private JsonNode comparison(JsonNode entry, String rows) throws IOException {
        out.getBuffer().setLength(0);
        int code =
                run(
                        "--values",
                        table(rows).toString(),
                        "--fewest",
                        entry.get("n_min").asText(),
                        "--most",
                        entry.get("n_max").asText(),
                        "--meaningful",
                        entry.get("ratio").asText() + "x",
                        "--confidence",
                        Math.round(100 * (1 - entry.get("alpha").doubleValue())) + "%",
                        "--exponent",
                        entry.get("rho").asText(),
                        "--design",
                        entry.get("kind").textValue().equals("paired") ? "rounds" : "independent",
                        "--json");
        assertEquals(0, code, err.toString());
        return new ObjectMapper().readTree(out.toString()).get("comparisons").get(0);
    }

    private static void assertClose(JsonNode expected, JsonNode actual, double relative) {
        assertEquals(1, actual.doubleValue() / expected.doubleValue(), relative);
    }

    /** Rewrite with {@code -Drigside.approve=true} and look at the difference. */
    private static void assertApproved(String name, String actual) throws IOException {
        if (Boolean.getBoolean("rigside.approve")) {
            Files.writeString(Path.of("src/test/resources/command", name), actual);
            return;
        }
        assertEquals(resource("/command/" + name), actual);
    }

    private static final String FOUR_ROUNDS =
            """
            round,condition,value
            1,plain,12.1
            1,disc,14.6
            2,disc,13.5
            2,plain,11.4
            3,plain,12.8
            3,disc,14.1
            4,plain,12.0
            """;

    @Test
    void theJsonIsAsApproved() throws IOException {
        assertEquals(0, analyse(FOUR_ROUNDS, "--json"));
        assertApproved("four-rounds.json", out.toString());
        assertEquals(
                "disc: Left out, since one of the two has no value there: round 4.\n",
                err.toString());
    }

    @Test
    void theTextIsAsApproved() throws IOException {
        assertEquals(0, analyse(FOUR_ROUNDS));
        assertApproved("four-rounds.txt", out.toString());
    }

    /** Seven rounds of which the fourth stands apart. */
    private static String farRound() {
        double[] plain = {5, 5.12, 4.93, 5.04, 5.07, 4.97, 5.03};
        double[] disc = {5.6, 5.72, 5.51, 9.1, 5.63, 5.58, 5.66};
        StringBuilder rows = new StringBuilder("round,condition,value\n");
        for (int at = 0; at < plain.length; at++) {
            rows.append(at + 1).append(",plain,").append(plain[at]).append('\n');
            rows.append(at + 1).append(",disc,").append(disc[at]).append('\n');
        }
        return rows.toString();
    }

    @Test
    void whatIsWorthASecondLookIsPrintedWithItsWhatIf() throws IOException {
        assertEquals(0, analyse(farRound()));
        String text = out.toString();
        int flag = text.indexOf("- Worth a second look: Round 4 stands apart: the value is 1.81");
        int whatIf =
                text.indexOf("  without round 4: disc, compared with plain: the value is 1.12");
        int note = text.indexOf("  Only a view: a verdict reached by choosing values is none.");
        int looks = text.indexOf("  with 3 of each (disc): estimate 1.12, interval ");
        assertTrue(0 < flag && flag < whatIf && whatIf < note && note < looks, text);
        assertEquals(5, text.split(" of each [(]disc[)]: ", -1).length - 1);
    }

    @Test
    void theJsonHoldsLooksAndFlagsToo() throws IOException {
        assertEquals(0, analyse(farRound(), "--json"));
        JsonNode json = new ObjectMapper().readTree(out.toString());
        JsonNode comparison = json.get("comparisons").get(0);
        assertEquals(5, comparison.get("looks").size());
        JsonNode last = comparison.get("looks").get(4);
        for (String same : List.of("n", "estimate", "interval", "critical")) {
            assertEquals(comparison.get(same), last.get(same), same);
        }
        assertEquals("[0.909090909091,1.1]", comparison.get("band").toString());
        assertTrue(
                comparison.get("sentence").textValue().startsWith("Settled after 3 rounds as"),
                out.toString());
        assertFalse(comparison.get("next").textValue().isBlank());
        assertTrue(comparison.get("technical").textValue().startsWith("Paired log ratios, n = 7"));
        assertTrue(comparison.get("change").textValue().startsWith("It "));
        JsonNode flag = json.get("flags").get(0);
        assertEquals("far-value", flag.get("kind").textValue());
        assertEquals(6, flag.get("what_if").get(0).get("n").intValue());
        assertEquals("without round 4", flag.get("what_if").get(0).get("without").textValue());
    }

    @Test
    void threeConditionsGiveTwoComparisonsThatShareTheError() throws IOException {
        String rows =
                """
                round,condition,value
                1,plain,10
                1,disc,12.5
                1,felt,10.1
                2,plain,11
                2,disc,13.2
                2,felt,11.3
                3,plain,10.5
                3,disc,12.9
                3,felt,10.4
                """;
        assertEquals(0, analyse(rows, "--json"));
        JsonNode all = new ObjectMapper().readTree(out.toString()).get("comparisons");
        assertEquals(2, all.size());
        assertEquals("felt", all.get(1).get("condition").textValue());
        // Two degrees of freedom: t = (1 - p) sqrt(2 / (p (2 - p))), p = .025 * (3/10)^2.
        double p = 0.025 * 0.09;
        assertEquals(
                (1 - p) * Math.sqrt(2 / (p * (2 - p))),
                all.get(0).get("critical").doubleValue(),
                1e-7);
        String plain = all.get(0).get("sentence").textValue();
        assertTrue(plain.contains(", 95 % for both comparisons together"), plain);
        String technical = all.get(0).get("technical").textValue();
        assertTrue(
                technical.contains(
                        "97.5 % confidence interval (95 % for both comparisons together)"),
                technical);
    }

    /** Ids that differ in nothing but their letters' size stay what they are. */
    @Test
    void idsOfATableAreLeftAsWritten() throws IOException {
        assertEquals(0, analyse("round,condition,value\n1,B,10\n1,b,12\n2,B,11\n2,b,12\n"));
        assertTrue(out.toString().startsWith("b, compared with B: "), out.toString());
    }

    @Test
    void anIntervalBeyondWordsIsOnePhrase() throws IOException {
        StringBuilder rows = new StringBuilder("round,condition,value\n");
        for (int round = 1; round <= 3; round++) {
            rows.append(round).append(",plain,1\n");
            rows.append(round).append(",disc,").append(90_000 + 100 * round).append('\n');
        }
        assertEquals(0, analyse(rows.toString()));
        assertTrue(
                out.toString().contains("(95 % interval wholly above 1000): not settled."),
                out.toString());
    }

    @Test
    void whatEachConditionHasIsSaidWhereTheyDiffer() throws IOException {
        String rows = "round,condition,value\n1,plain,10\n2,plain,11\n3,plain,10\n1,disc,12\n";
        assertEquals(0, analyse(rows, "--design", "independent"));
        assertTrue(
                out.toString()
                        .contains(
                                " so far. Too few for an interval: plain has 3, disc 1 of at"
                                        + " least 3 values.\nToo early to say, the first look comes"
                                        + " after 2 more values of disc; it is"),
                out.toString());
    }

    @Test
    void aGapOfOneConditionCostsTheOthersNothing() throws IOException {
        String rows =
                """
                round,condition,value
                1,plain,10
                1,disc,12.5
                1,felt,10.1
                2,plain,11
                2,disc,13.2
                3,plain,10.5
                3,disc,12.9
                3,felt,10.4
                """;
        assertEquals(0, analyse(rows));
        assertTrue(out.toString().contains("disc, compared with plain: the value is 1.23"));
        assertTrue(out.toString().contains("n 3, estimate"), out.toString());
        assertTrue(out.toString().contains("no value there: round 2."), out.toString());
        assertTrue(
                out.toString()
                        .contains(
                                "- The 95 % covers every look from 3 to 10 rounds, both"
                                        + " comparisons, which share the error equally."),
                out.toString());
    }

    @Test
    void aVerdictOnceReachedStandsAndALaterLookIsTold() throws IOException {
        StringBuilder rows = new StringBuilder("round,condition,value\n");
        double[] disc = {13.51, 13.52, 13.49, 13.51, 8, 17};
        for (int round = 1; round <= 6; round++) {
            rows.append(round).append(",plain,10.00\n");
            rows.append(round).append(",disc,").append(disc[round - 1]).append('\n');
        }
        assertEquals(0, analyse(rows.toString(), "--json"));
        JsonNode comparison = new ObjectMapper().readTree(out.toString()).get("comparisons").get(0);
        assertEquals("meaningful-difference", comparison.get("verdict").textValue());
        assertEquals(1, comparison.get("forecast").get("settles_within_plan").doubleValue());
        assertEquals(3, comparison.get("settled_at").intValue());
        assertEquals(1, comparison.get("direction").intValue());
        assertFalse(comparison.get("contradicted").booleanValue());
        out.getBuffer().setLength(0);
        assertEquals(0, analyse(rows.toString()));
        assertTrue(
                out.toString()
                        .startsWith(
                                "Settled after 3 rounds as a meaningful increase (1.35), which stays. The"
                                        + " latest look by itself does not settle it: "),
                out.toString());
        assertTrue(out.toString().contains(STAYS), out.toString());
    }

    /** The numbers are the latest look's, so the verdict beside them is its own. */
    private static final String STAYS =
            ": not settled (settled after 3 as a meaningful increase, stays)\n";

    @ParameterizedTest
    @CsvSource({"increase, 1.10, up to 1.10", "decrease, 0.909, down to 0.909"})
    void whereOneDirectionMattersTheNumbersSaySo(String matters, String edge, String band)
            throws IOException {
        StringBuilder rows = new StringBuilder("round,condition,value\n");
        double about = matters.equals("increase") ? 6 : 16;
        for (int round = 1; round <= 4; round++) {
            double value = about + (round % 2) / 10.0;
            rows.append(round).append(",plain,10.00\n");
            rows.append(round).append(",disc,").append(value).append('\n');
        }
        assertEquals(0, analyse(rows.toString(), "--matters", matters));
        String text = out.toString();
        assertTrue(text.contains(", band " + band + ": no meaningful " + matters + "\n"), text);
        assertTrue(text.contains(" " + edge + "): no meaningful " + matters + ".\n"), text);
        assertEquals(3, text.split("critical value .*: no meaningful " + matters, -1).length - 1);
        assertFalse(text.contains("meaningful difference"), text);
    }

    /** An increase settled early; then values that leave no room for it. */
    @Test
    void aLaterLookThatExcludesTheVerdictContradictsIt() throws IOException {
        StringBuilder rows = new StringBuilder("round,condition,value\n");
        double[] disc = {13.51, 13.52, 13.49, 4.01, 4.11, 4.01, 4.11, 4, 4.1, 4};
        for (int round = 1; round <= 10; round++) {
            rows.append(round).append(",plain,10.00\n");
            rows.append(round).append(",disc,").append(disc[round - 1]).append('\n');
        }
        assertEquals(0, analyse(rows.toString()));
        assertTrue(
                out.toString()
                        .startsWith(
                                "Settled after 3 rounds as a meaningful increase (1.35), which stays."
                                        + " The latest look contradicts it: disc, compared with"
                                        + " plain: the value is 0.5"),
                out.toString());
        assertTrue(out.toString().contains("Take the question as open"), out.toString());
    }

    @Test
    void aLargeTableTakesNoLongerThanItsLines() throws IOException {
        StringBuilder rows = new StringBuilder("round,condition,value\n");
        for (int round = 1; round <= 50_000; round++) {
            rows.append(round).append(",plain,10.").append(round % 7).append('\n');
            rows.append(round).append(",disc,12.").append(round % 5).append('\n');
        }
        assertTimeout(Duration.ofSeconds(10), () -> assertEquals(0, analyse(rows.toString())));
    }

    @Test
    void manyRoundsLeftOutAreCounted() throws IOException {
        StringBuilder rows = new StringBuilder("round,condition,value\n20,plain,10\n20,disc,12\n");
        for (int round = 1; round < 20; round++) {
            rows.append(round).append(",plain,10\n");
        }
        assertEquals(0, analyse(rows.toString()));
        assertTrue(
                out.toString().contains("rounds 1, 2, 3, 4, 5, 6, 7, 8, 9, 10 and 9 more."),
                out.toString());
    }

    @Test
    void onlyTheFirstProblemsOfATableArePrinted() throws IOException {
        assertEquals(1, analyse("round,condition,value\n" + "1,a,x\n".repeat(60)));
        assertTrue(err.toString().contains(":51:5: value"), err.toString());
        assertFalse(err.toString().contains(":52:5: value"), err.toString());
        assertTrue(err.toString().endsWith("values.csv: 10 more problems\n"), err.toString());
    }

    @Test
    void differencesAreInTheUnitOfTheValues() throws IOException {
        String rows =
                """
                round,condition,value
                1,plain,-3
                1,disc,7
                2,plain,0
                2,disc,11
                3,plain,2
                3,disc,11.5
                """;
        assertEquals(
                0,
                run(
                        "--values",
                        table(rows).toString(),
                        "--fewest",
                        "3",
                        "--most",
                        "10",
                        "--meaningful",
                        "2",
                        "--compare",
                        "difference",
                        "--matters",
                        "increase",
                        "--json"));
        JsonNode comparison = new ObjectMapper().readTree(out.toString()).get("comparisons").get(0);
        assertEquals("difference", comparison.get("compare").textValue());
        assertEquals((10 + 11 + 9.5) / 3, comparison.get("estimate").doubleValue(), 1e-10);
    }

    @Test
    void everyProblemOfATableIsPrintedWithItsPlace() throws IOException {
        assertEquals(1, analyse("round,condition,value\n1,a,x\n0,b,2\n"));
        String file = folder.resolve("values.csv").toString();
        assertEquals(
                file
                        + ":2:5: value 'x' is not a number\n"
                        + "    write a number such as 12.4; if nothing was measured leave the line out, and say so with the result\n"
                        + file
                        + ":3:1: round '0' is not a whole number from 1\n"
                        + "    number the rounds 1, 2, 3\n",
                err.toString());
        assertEquals("", out.toString());
    }

    @Test
    void aTableThatIsNotThereIsTold() {
        String file = folder.resolve("none.csv").toString();
        assertEquals(
                1, run("--values", file, "--fewest", "3", "--most", "4", "--meaningful", "10%"));
        assertEquals(file + ": there is no such file\n", err.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    --fewest=1       | --fewest 1 and --most 10: fewest must be 2 or more
                    --most=2         | --fewest 3 and --most 2: fewest must be 2 or more
                    --meaningful=0%  | --meaningful is '0%', must be a percentage above 0
                    --confidence=95  | --confidence is '95', must be from 0.80 to 0.999
                    --confidence=60% | --confidence is '60%', must be from 0.80 to 0.999
                    --most=51        | --fewest 3 and --most 51: fewest must be 2 or more
                    --exponent=9     | --exponent is '9.0', must be from 0.5 to 5
                    --compare=odds   | --compare is 'odds', must be one of ratio, difference
                    --design=pairs   | --design is 'pairs', must be one of rounds, independent
                    --matters=no     | --matters is 'no', must be one of either, increase, decrease
                    """)
    void wrongUsageIsToldAndEndsWithTwo(String option, String message) {
        List<String> arguments = new ArrayList<>(List.of("--values=x.csv"));
        for (String usual : List.of("--fewest=3", "--most=10", "--meaningful=10%")) {
            arguments.add(
                    option.startsWith(usual.substring(0, usual.indexOf('='))) ? option : usual);
        }
        if (!arguments.contains(option)) {
            arguments.add(option);
        }
        assertEquals(2, run(arguments.toArray(String[]::new)));
        assertTrue(err.toString().startsWith("rigside: " + message), err.toString());
    }

    @Test
    void theReferenceIsThatOfTheFirstLineOrTheOneThatIsNamed() throws IOException {
        String rows =
                "round,condition,value\n1,disc,6\n1,plain,5\n2,disc,6.1\n2,plain,5.2\n3,plain,5.1\n3,disc,6.2\n";
        List<String> usual =
                List.of(
                        "--values=" + table(rows),
                        "--fewest=3",
                        "--most=10",
                        "--meaningful=10%",
                        "--json");
        run(usual.toArray(String[]::new));
        assertTrue(out.toString().contains("\"reference\":\"disc\""), out.toString());
        out.getBuffer().setLength(0);
        List<String> named = new ArrayList<>(usual);
        named.add("--reference=plain");
        assertEquals(0, run(named.toArray(String[]::new)));
        assertTrue(out.toString().contains("\"reference\":\"plain\""), out.toString());
        named.set(named.size() - 1, "--reference=Plain");
        assertEquals(1, run(named.toArray(String[]::new)));
        assertTrue(
                err.toString().endsWith("there is no condition 'Plain'\n    it has disc, plain\n"),
                err.toString());
    }

    @Test
    void neitherSessionNorTableIsWrongUsage() {
        assertEquals(2, run("--json"));
        assertTrue(
                err.toString()
                        .startsWith("rigside: name either the folder of a session, or a table"));
    }

    @Test
    void aSessionThatIsNotThereIsTold() {
        assertEquals(1, run(folder.resolve("none").toString()));
        assertEquals(
                folder.resolve("none") + ": there is no such file\n",
                err.toString(),
                "named as it was given");
    }

    @Test
    void aTableGivenAsASessionIsWrongUsage() {
        assertEquals(2, run("w.csv"));
        assertTrue(
                err.toString()
                        .startsWith(
                                "rigside: w.csv is a table, not a session: read it with --values"),
                err.toString());
    }

    /** Two rounds of the small comparison, the second donning of round 3 not begun. */
    private Path session(String conceal) throws Exception {
        String text =
                Story.text("/session/small.yaml")
                        .replace("most: 4", "most: 4\n  conceal: {result: " + conceal + "}");
        Story story =
                Story.opened(
                        new Event.SessionOpened(
                                "test", "small.yaml", text, 7, "typed", "", false, 1));
        story.goOn().type("W1").type("21").goOn();
        for (int donning = 0; donning < 4; donning++) {
            boolean bare = ((Activity.NextDonning) story.activity()).condition().equals("bare");
            double seconds = (bare ? 8.0 : 10.0) + (donning < 2 ? 0.1 : 0);
            story.donning(String.valueOf(38 + donning), seconds);
            if (story.state().lookDue()) {
                State state = story.state();
                story.send(new Input.LookArrived(Looks.of(Analysis.of(state), state)));
            }
        }
        Recorded first = story.journal().get(0);
        try (Journal journal = Journal.create(folder, "small", first.wall())) {
            for (Recorded each : story.journal()) {
                journal.append(List.of(each.event()), new Stamp(each.wall(), each.at()));
            }
            return journal.folder();
        }
    }

    @Test
    void aSessionGivesTheSameNumbersAsItsTable() throws Exception {
        assertEquals(0, run(session("until-donning-ends").toString(), "--json"));
        JsonNode breathing = new ObjectMapper().readTree(out.toString()).get("comparisons").get(1);
        assertEquals("inhalation", breathing.get("measure").textValue());
        out.getBuffer().setLength(0);
        String rows =
                "round,condition,value\n1,bare,%s\n1,disc,%s\n2,bare,%s\n2,disc,%s\n"
                        .formatted("8.10", "10.10", "8.00", "10.00");
        assertEquals(
                0,
                run(
                        "--values",
                        table(rows).toString(),
                        "--fewest",
                        "2",
                        "--most",
                        "4",
                        "--meaningful",
                        "10%",
                        "--json"));
        JsonNode table = new ObjectMapper().readTree(out.toString()).get("comparisons").get(0);
        for (String same : List.of("condition", "reference", "compare", "n", "verdict")) {
            assertEquals(table.get(same), breathing.get(same));
        }
        assertClose(table.get("estimate"), breathing.get("estimate"), 1e-11);
        assertClose(table.get("interval").get(0), breathing.get("interval").get(0), 1e-11);
        assertClose(table.get("critical"), breathing.get("critical"), 1e-11);
    }

    @Test
    void anOpenSessionKeepsWhatIsConcealed() throws Exception {
        Path session = session("until-session-ends");
        assertEquals(0, run(session.toString(), "--json"));
        assertEquals(
                "{\"comparisons\":[],\"concealed\":\"the running result is concealed until the session"
                        + " ends\",\"complete_rounds\":2,\"enough\":false,"
                        + "\"plan_used_up\":false}\n",
                out.toString());
        out.getBuffer().setLength(0);
        assertEquals(0, run(session.toString()));
        assertEquals(
                """
                Small comparison
                Concealed: the running result is concealed until the session ends.
                2 rounds complete. Go on with another round.

                This is not a certified fit test.
                """,
                out.toString());
    }

    @Test
    void aDamagedSessionIsNotSaidToGoOn() throws Exception {
        Path made = session("until-donning-ends");
        Files.writeString(
                made.resolve("journal.jsonl"), "no line\nnor this\n", StandardOpenOption.APPEND);
        assertEquals(Exit.PROBLEMS, run(made.toString()));
        assertTrue(
                out.toString().contains("cannot be gone on with: its journal is damaged.\n"),
                out.toString());
        assertFalse(out.toString().contains("Go on with"), out.toString());
        assertFalse(out.toString().contains("Too early"), out.toString());
    }

    @Test
    void aSessionIsNamedAsBelowTheFolderOfSessions() throws Exception {
        Path home = Files.createDirectory(folder.resolve("home"));
        Path made = session("until-donning-ends");
        Files.createDirectory(home.resolve("sessions"));
        Files.move(made, home.resolve("sessions").resolve("mine"));
        assertEquals(0, run("mine", "--home", home.toString()), err.toString());
        assertTrue(out.toString().startsWith("Small comparison\n"), out.toString());
    }

    @Test
    void inventedValuesAreSaidToBeInTheJsonToo() throws Exception {
        assertEquals(0, run("demo/recorded-session", "--json"));
        JsonNode json = new ObjectMapper().readTree(out.toString());
        assertTrue(json.get("simulated").booleanValue());
    }

    @Test
    void aSessionIsTextAsApproved() throws Exception {
        assertEquals(0, run(session("until-donning-ends").toString()));
        assertApproved("small-session.txt", out.toString());
    }
}
