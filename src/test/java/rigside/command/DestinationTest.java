package rigside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whoever writes a hyphen means standard output, and would find a file of that name. */
class DestinationTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "report demo/recorded-session --html",
                "report demo/recorded-session --markdown",
                "report demo/recorded-session --figure",
                "export demo/recorded-session --to",
                "share demo/recorded-session --to",
                "spread --measure seal --html",
                "rehearse demo/prefilter-disc.yaml --into",
                "rehearse demo/prefilter-disc.yaml --report"
            })
    void aHyphenIsNoFileToWrite(String command) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit =
                Rigside.commandLine()
                        .setOut(new PrintWriter(out, true))
                        .setErr(new PrintWriter(err, true))
                        .execute((command + " -").split(" ", -1));
        assertEquals(Exit.USAGE, exit, err.toString());
        assertEquals("", out.toString());
        String option = command.substring(command.lastIndexOf(' ') + 1);
        assertTrue(
                err.toString()
                        .startsWith(
                                "rigside: Invalid value for option '"
                                        + option
                                        + "': '-' names no file or folder; files are never written"
                                        + " to standard output\n"),
                err.toString());
        assertFalse(Files.exists(Path.of("-")));
    }
}
