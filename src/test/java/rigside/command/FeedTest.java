package rigside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class FeedTest {
    private static final String RIG =
            """
            format: 1
            title: bench (invented)
            feeds:
              - {id: gauge, quantity: mask-pressure, replay: trace.tsv, column: 1, unit: Pa}
            """;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir Path home;

    @Test
    void linesValuesAndTroubleOfATraceArePrintedAsTheyCome() throws IOException {
        trace("0.0\t12.5\n0.01\tabc\u001b[2J\n0.02\t-3\n");
        assertEquals(Exit.PROBLEMS, run(RIG, "--seconds", "0.2"));
        List<String> lines = out.toString().lines().toList();
        assertEquals("bench (invented); Ctrl-C ends", lines.get(0));
        assertEquals(
                "  gauge: mask-pressure from recorded trace " + home.resolve("trace.tsv"),
                lines.get(1));
        assertEquals("gauge      12.5 Pa        '12.5'", at(lines, 2));
        assertEquals(
                "gauge      -              'abc?[2J'  no reading: it is no number", at(lines, 3));
        assertEquals("gauge      -3 Pa          '-3'", at(lines, 4));
        assertTrue(out.toString().contains("!! gauge: 'abc?[2J' is no number"), out.toString());
        assertEquals(
                "gauge: readings 2, other lines 1, drop-outs 0, not well at the end",
                lines.get(lines.size() - 1));
    }

    @Test
    void aFeedThatReadsWellIsSaidToBeWell() throws IOException {
        trace("0\t1\n3600\t2\n");
        assertEquals(Exit.DONE, run(RIG, "--seconds", "0.1"));
        assertTrue(out.toString().contains("drop-outs 0, well at the end"), out.toString());
    }

    @Test
    void aFileThatIsNotThereIsTrouble() throws IOException {
        String rig = RIG.replace("replay: trace.tsv", "file: none.csv");
        assertEquals(Exit.PROBLEMS, run(rig, "--seconds", "0.3"));
        assertTrue(out.toString().contains("there is no such file"), out.toString());
        assertTrue(out.toString().contains("readings 0"), out.toString());
    }

    @Test
    void problemsOfTheRigFileAreToldWithTheirPlace() throws IOException {
        assertEquals(Exit.PROBLEMS, run(RIG.replace("unit: Pa", "unit: bar")));
        assertTrue(err.toString().contains(":4:78: unknown unit 'bar'"), err.toString());
    }

    @Test
    void noMoreThanFiveGoodLinesOfASecondArePrintedAndTheOthersCounted() throws IOException {
        StringBuilder many = new StringBuilder();
        for (int count = 0; count < 100; count++) {
            many.append("0.00").append(count % 10).append("\t7\n");
        }
        trace(many + "3600\t7\n");
        assertEquals(Exit.DONE, run(RIG, "--seconds", "0.1"));
        assertEquals(5, out.toString().lines().filter(line -> line.endsWith("'7'")).count());
        assertTrue(
                out.toString().contains("    1.000 s  gauge      95 more lines"), out.toString());
        assertTrue(out.toString().contains("gauge: readings 100"), out.toString());
    }

    @Test
    void nonsenseIsPrintedHoweverManyLinesASecondHas() throws IOException {
        trace("0.001\t7\n".repeat(6) + "0.002\tERROR\n".repeat(3) + "0.003\t7\n3600\t7\n");
        assertEquals(Exit.PROBLEMS, run(RIG, "--seconds", "0.1"));
        long nonsense = out.toString().lines().filter(line -> line.contains("no reading")).count();
        assertEquals(3, nonsense, out.toString());
        assertTrue(out.toString().contains("    1.000 s  gauge      2 more lines"), out.toString());
    }

    /** As at a wrong baud rate. */
    @Test
    void ofAFloodOfNonsenseFiveLinesASecondArePrintedAndTheOthersCounted() throws IOException {
        trace("0.001\t@#\n".repeat(300) + "0.002\t7\n3600\t7\n");
        assertEquals(Exit.PROBLEMS, run(RIG, "--seconds", "0.1"));
        assertEquals(
                5, out.toString().lines().filter(line -> line.contains("  no reading: ")).count());
        assertTrue(
                out.toString().contains("    1.000 s  gauge      295 more lines without a reading"),
                out.toString());
        assertTrue(out.toString().contains("'7'"), out.toString());
        assertTrue(out.toString().contains("gauge: readings 1, other lines 300"), out.toString());
    }

    /** A line of a reading without its time: that is when this machine came to replay it. */
    private static String at(List<String> lines, int index) {
        String line =
                lines.stream().filter(each -> each.contains(" s  gauge ")).toList().get(index - 2);
        assertTrue(line.matches(" *\\d+\\.\\d{3} s  .*"), line);
        return line.substring(line.indexOf("gauge "));
    }

    private void trace(String text) throws IOException {
        Files.writeString(home.resolve("trace.tsv"), text);
    }

    private int run(String rig, String... options) throws IOException {
        Path file = Files.writeString(home.resolve("bench.rig.yaml"), rig);
        CommandLine line =
                Rigside.commandLine()
                        .setOut(new PrintWriter(out, true))
                        .setErr(new PrintWriter(err, true));
        String[] arguments = new String[options.length + 2];
        arguments[0] = "feed";
        arguments[1] = file.toString();
        System.arraycopy(options, 0, arguments, 2, options.length);
        return line.execute(arguments);
    }
}
