package rigside.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packaged program as a script sees it: exit codes, and errors on standard error only. */
class CommandLineIT {
    @TempDir Path home;

    private record Ended(int exit, String out, String err) {}

    private Ended run(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(Journey.JAVA, "-jar", Journey.JAR));
        command.addAll(List.of(arguments));
        Path out = home.resolve("out");
        Path err = home.resolve("err");
        Process process =
                new ProcessBuilder(command)
                        .redirectInput(ProcessBuilder.Redirect.from(Path.of("/dev/null").toFile()))
                        .redirectOutput(out.toFile())
                        .redirectError(err.toFile())
                        .start();
        int exit = process.waitFor();
        return new Ended(exit, read(out), read(err));
    }

    private static String read(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }

    @Test
    void theVersionIsDone() throws Exception {
        Ended ended = run("--version");
        assertEquals(0, ended.exit());
        assertEquals("", ended.err());
        assertTrue(ended.out().startsWith("rigside "), ended.out());
    }

    @Test
    void aFileWithProblemsPrintsThemAll() throws Exception {
        Path file = Files.writeString(home.resolve("bad.yaml"), "format: 1\ntitel: t\n");
        Ended ended = run("check", file.toString());
        assertEquals(1, ended.exit());
        assertEquals("", ended.out());
        assertTrue(ended.err().contains(file + ":2:1: "), ended.err());
        assertTrue(ended.err().lines().filter(line -> line.startsWith("" + file)).count() > 3);
        assertFalse(ended.err().contains("Exception"), ended.err());
    }

    @Test
    void aTableOfValuesIsAnalysed() throws Exception {
        Path file =
                Files.writeString(
                        home.resolve("values.csv"),
                        """
                        round,condition,value
                        1,plain,6.0
                        1,disc,8.1
                        2,plain,6.2
                        2,disc,8.3
                        3,plain,6.1
                        3,disc,8.3
                        """);
        Ended ended =
                run(
                        "analyse",
                        "--values",
                        "" + file,
                        "--fewest",
                        "3",
                        "--most",
                        "10",
                        "--meaningful",
                        "10%",
                        "--confidence",
                        "0.95",
                        "--json");
        assertEquals("", ended.err());
        assertEquals(0, ended.exit());
        assertTrue(ended.out().contains("\"verdict\":\"meaningful-difference\""), ended.out());
    }

    @Test
    void wrongUsageIsToldApart() throws Exception {
        Ended ended = run("check");
        assertEquals(2, ended.exit());
        assertEquals("", ended.out());
        assertTrue(ended.err().startsWith("rigside: "), ended.err());
    }

    @Test
    void withoutATerminalThereIsNoSession() throws Exception {
        Ended ended = run("run", "prefilter-disc", "--home", home.toString());
        assertEquals(2, ended.exit());
        assertEquals("", ended.out());
        assertTrue(ended.err().startsWith("rigside: this needs a terminal"), ended.err());
        assertFalse(Files.exists(home.resolve("sessions")));
    }
}
