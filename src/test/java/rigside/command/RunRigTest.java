package rigside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunRigTest {
    private final StringWriter err = new StringWriter();

    @TempDir Path home;

    @Test
    void aRigFileThatIsNotThereIsSaid() {
        assertEquals(Exit.PROBLEMS, run("--rig", "none"));
        assertTrue(err.toString().contains("there is no rig file 'none'"), err.toString());
    }

    @Test
    void problemsOfARigFileAreToldAndNothingStarts() throws IOException {
        Path rig =
                Files.writeString(
                        home.resolve("a.rig.yaml"), "format: 1\ntitle: a\nfeeds: [{id: gauge}]\n");
        assertEquals(Exit.PROBLEMS, run("--rig", rig.toString()));
        assertTrue(err.toString().contains(":3:9: missing key 'quantity'"), err.toString());
    }

    @Test
    void optionsThatMakeNoSenseTogetherAreRefused() throws IOException {
        assertEquals(Exit.USAGE, run("--rig", "a", "--simulated"));
        assertTrue(err.toString().contains("exclude each other"), err.toString());
        Path rig =
                Files.writeString(
                        home.resolve("a.rig.yaml"),
                        """
                        format: 1
                        title: a
                        feeds: [{id: g, quantity: mask-pressure, file: g, column: 1, unit: Pa}]
                        """);
        assertEquals(Exit.USAGE, run("--rig", rig.toString(), "--speed", "30"));
        assertTrue(err.toString().contains("instruments run as they do"), err.toString());
    }

    private int run(String... options) {
        String[] arguments = new String[options.length + 4];
        arguments[0] = "--home";
        arguments[1] = home.toString();
        arguments[2] = "run";
        arguments[3] = "prefilter-disc";
        System.arraycopy(options, 0, arguments, 4, options.length);
        return Rigside.commandLine().setErr(new PrintWriter(err, true)).execute(arguments);
    }
}
