package rigside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanTest {
    private static final String[] TYPICAL = {
        "--fewest", "3", "--most", "6", "--meaningful", "10%", "--spread", "0.05"
    };

    @TempDir private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        List<String> all = new ArrayList<>(List.of("--home", folder.toString(), "plan"));
        all.addAll(List.of(arguments));
        return Rigside.commandLine()
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(all.toArray(String[]::new));
    }

    private int typical(String... more) {
        List<String> arguments = new ArrayList<>(List.of(TYPICAL));
        arguments.addAll(List.of(more));
        return run(arguments.toArray(String[]::new));
    }

    @Test
    void jsonHasLooksOutcomesAndAdviceAndNothingElse() throws IOException {
        assertEquals(Exit.DONE, typical("--json"));
        JsonNode root = new ObjectMapper().readTree(out.toString());
        assertEquals(List.of("looks", "outcomes", "advice"), names(root));
        assertEquals(List.of("round", "critical", "nominal_p"), names(root.at("/looks/0")));
        assertEquals(
                List.of(
                        "true",
                        "meaningful_difference",
                        "no_meaningful_difference",
                        "unsettled",
                        "mean_rounds",
                        "p90_rounds",
                        "coverage"),
                names(root.at("/outcomes/0")));
        assertEquals(4, root.get("looks").size());
        assertEquals(3, root.at("/looks/0/round").intValue());
        assertEquals(1, root.at("/outcomes/0/true").doubleValue());
        assertTrue(root.at("/advice/0").textValue().startsWith("this plan settles "));
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Test
    void theTableIsPrintedInWords() {
        assertEquals(Exit.DONE, typical());
        String text = out.toString();
        assertTrue(text.contains("3 to 6 rounds, 95 % confidence over all looks together"), text);
        assertTrue(text.contains("spread (standard deviation) of one round's log ratio 0.0500"));
        assertTrue(text.contains("1.000 (none)"), text);
        assertTrue(text.contains("if the truth is matters    matter    open    mean     most"));
        assertTrue(text.contains("- this plan settles "), text);
        for (String line : text.lines().filter(each -> each.contains("x)")).toList()) {
            assertTrue(line.length() <= 80, line);
        }
    }

    @Test
    void theSameSeedPrintsTheSame() {
        typical("--seed", "5");
        String first = out.toString();
        out.getBuffer().setLength(0);
        typical("--seed", "5");
        assertEquals(first, out.toString());
    }

    @Test
    void aShippedProtocolIsPlannedFromItsExpectedSpread() {
        assertEquals(Exit.DONE, protocol("breathing-only", "--most", "6"));
        assertTrue(out.toString().contains("a round takes about"), out.toString());
        assertTrue(out.toString().contains(" to 6 rounds"), out.toString());
    }

    @Test
    void whatATableOfOneMeasureLeavesOutIsSaidOnTheOtherStream() {
        assertEquals(Exit.DONE, protocol("prefilter-disc"));
        assertTrue(
                err.toString().contains("the protocol compares 'seal', 'breathing'; this is the"),
                err.toString());
        err.getBuffer().setLength(0);
        assertEquals(Exit.DONE, protocol("prefilter-disc", "--measure", "breathing", "--json"));
        assertEquals("", err.toString());
    }

    @Test
    void aMeasureThatIsNotThereIsSaidToBeMissing() {
        assertEquals(Exit.USAGE, protocol("breathing-only", "--measure", "sealing"));
        assertTrue(err.toString().contains("compares nothing called 'sealing'; it compares '"));
    }

    @Test
    void aProtocolThatIsNotThereIsAProblem() {
        assertEquals(Exit.PROBLEMS, protocol("no-such"));
        assertTrue(err.toString().contains("there is no protocol 'no-such'"));
    }

    @Test
    void whatAProtocolFixesCannotBeSaidBesideIt() {
        assertEquals(Exit.USAGE, protocol("breathing-only", "--compare", "difference"));
        assertTrue(err.toString().contains("--compare is said by the protocol itself"));
    }

    private int protocol(String name, String... more) {
        List<String> arguments = new ArrayList<>(List.of(name));
        arguments.addAll(List.of(more));
        return run(arguments.toArray(String[]::new));
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            --fewest        | 1       | --fewest 1 and --most 6: fewest must be 2 or more
            --fewest        | 7       | --fewest 7 and --most 6: fewest must be 2 or more
            --fewest        | three   | '--fewest': 'three' is not a whole number, such as 3
            --fewest        | 3.5     | '--fewest': '3.5' is not a whole number, such as 3
            --most          | 51      | most at least that and at most 50
            --spread        | 0       | --spread is '0.0', must be above 0
            --spread        | -1      | --spread is '-1.0', must be above 0
            --spread        | NaN     | '--spread': 'NaN' is not a number, such as 0.1
            --spread        | 10%     | '--spread': '10%' is not a number, such as 0.1
            --meaningful    | 0%      | --meaningful is '0%', must be a percentage above 0
            --confidence    | 1       | --confidence is '1', must be from 0.80 to 0.999
            --exponent      | 6       | --exponent is '6.0', must be from 0.5 to 5
            --settle        | 1       | --settle is '1', must be above 0 and below 1, such as 0.8
            --settle        | most    | --settle is 'most', must be above 0 and below 1
            --seed          | x       | '--seed': 'x' is not a whole number, such as 3
            --matters       | more    | --matters is 'more', must be one of either, increase
            --design        | crossed | --design is 'crossed', must be one of rounds, independent
            --compare       | odds    | --compare is 'odds', must be one of ratio, difference
            --measure       | seal    | --measure names a measure of a protocol, and no protocol
            --trials        | 3       | --trials goes with --trial-takes
            --donning-takes | -3      | --donning-takes is '-3.0', must be above 0
            --trial-spread  | 0.01    | --trial-spread weighs more trials against more donnings
            """)
    void whatCannotBeUsedIsSaid(String option, String value, String message) {
        List<String> arguments = new ArrayList<>(List.of(TYPICAL));
        int at = arguments.indexOf(option);
        if (at >= 0) {
            arguments.set(at + 1, value);
        } else {
            arguments.addAll(List.of(option, value));
        }
        assertEquals(Exit.USAGE, run(arguments.toArray(String[]::new)));
        assertTrue(err.toString().contains(message), err.toString());
        assertEquals("", out.toString());
    }

    @ParameterizedTest(name = "{0} trials of spread {1}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            0  | 0.01 | --trials is '0', must be 1 to 50
            51 | 0.01 | --trials is '51', must be 1 to 50
            3  | 0    | --trial-spread is '0.0', must be above 0
            3  | 1    | --trial-spread is '1.0', which is more than whole donnings spread
            """)
    void trialsThatCannotBeAreSaid(String count, String spread, String message) {
        String[] said = {
            "--trials",
            count,
            "--trial-takes",
            "1",
            "--donning-takes",
            "9",
            "--trial-spread",
            spread
        };
        assertEquals(Exit.USAGE, typical(said));
        assertTrue(err.toString().contains(message), err.toString());
    }

    @Test
    void aDecimalCommaAndAPercentageAreRead() {
        assertEquals(Exit.DONE, typical("--settle", "0.9", "--confidence", "0.9"));
        String first = out.toString();
        out.getBuffer().setLength(0);
        assertEquals(Exit.DONE, typical("--settle", "90%", "--confidence", "90 %"));
        assertEquals(first, out.toString());
        out.getBuffer().setLength(0);
        String[] comma = TYPICAL.clone();
        comma[7] = "0,05";
        assertEquals(Exit.DONE, run(comma));
        assertTrue(out.toString().contains("log ratio 0.0500"), out.toString());
    }

    @Test
    void theCheapestRoundsAndTrialsAreNamedFromTheirCosts() {
        assertEquals(
                Exit.DONE,
                typical(
                        "--donning-takes",
                        "9",
                        "--trial-takes",
                        "1",
                        "--trials",
                        "2",
                        "--trial-spread",
                        "0.04",
                        "--settle",
                        "0.8"));
        assertTrue(
                out.toString()
                        .matches(
                                "(?s).*- cheapest plan found that settles that often with looks from"
                                        + " round 3 on: at most \\d+ rounds with \\d+ trials a donning, about .* at the"
                                        + " bench when nothing differs.*"),
                out.toString());
    }

    @Test
    void withoutAProtocolThePlanHasToBeSaid() {
        assertEquals(Exit.USAGE, run("--fewest", "3"));
        assertTrue(err.toString().contains("without a protocol --meaningful is needed"));
    }
}
