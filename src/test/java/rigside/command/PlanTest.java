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
import picocli.CommandLine;

class PlanTest {
    private static final String[] TYPICAL = {
        "--fewest", "3", "--most", "6", "--meaningful", "10%", "--spread", "0.05"
    };

    @TempDir private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        return new CommandLine(new Plan())
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .setParameterExceptionHandler(new Messages())
                .execute(arguments);
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
        assertTrue(text.contains("- this plan settles "), text);
        for (String line : text.lines().filter(each -> each.contains("x)")).toList()) {
            assertTrue(line.length() <= 80, line);
        }
    }

    @Test
    void aPlanLongerThanAnyProtocolsIsStillJudged() {
        assertEquals(
                Exit.DONE,
                run("--fewest", "60", "--most", "61", "--meaningful", "10%", "--spread", "1"));
        assertTrue(out.toString().contains("no plan of up to 61 rounds"), out.toString());
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
        List<String> arguments =
                new ArrayList<>(List.of("--home", folder.toString(), "plan", name));
        arguments.addAll(List.of(more));
        return Rigside.commandLine()
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(arguments.toArray(String[]::new));
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "--fewest, 1, --fewest 1 and --most 6",
        "--fewest, 7, --fewest 7 and --most 6",
        "--most, 101, at most 100",
        "--spread, 0, --spread is 0.0",
        "--spread, NaN, --spread is NaN",
        "--spread, -1, --spread is -1.0",
        "--meaningful, 0%, --meaningful is '0%'",
        "--confidence, 1, --confidence is '1'",
        "--settle, 1, --settle is 1.0",
        "--matters, more, --matters is 'more'",
        "--design, crossed, --design is 'crossed'",
        "--trial-spread, 1, --trial-spread is 1.0",
        "--trials, 0, --trials is 0"
    })
    void whatCannotBeUsedIsSaid(String option, String value, String message) {
        List<String> arguments = new ArrayList<>(List.of(TYPICAL));
        int at = arguments.indexOf(option);
        if (at >= 0) {
            arguments.set(at + 1, value);
        } else {
            arguments.addAll(List.of(option, value));
        }
        if (option.equals("--trials")) {
            arguments.addAll(List.of("--trial-takes", "1"));
        }
        assertEquals(Exit.USAGE, run(arguments.toArray(String[]::new)));
        assertTrue(err.toString().contains(message), err.toString());
        assertEquals("", out.toString());
    }

    @Test
    void withoutAProtocolThePlanHasToBeSaid() {
        assertEquals(Exit.USAGE, run("--fewest", "3"));
        assertTrue(err.toString().contains("without a protocol --meaningful is needed"));
    }
}
