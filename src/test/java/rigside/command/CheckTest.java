package rigside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.yaml.Document;

class CheckTest {
    private static final String CLEAN =
            """
            format: 1
            title: Disc
            question: Is it harder to breathe through?
            cautions: [Stop at once when dizzy]
            conditions:
              - {id: a, title: A, specimen: {piece: one, worn-before: 0}}
              - {id: b, title: B, specimen: {piece: two, worn-before: 0}}
            measures:
              - {id: breathing, title: Time, kind: timed-inhalation, compare: ratio, meaningful: 10%}
            plan: {fewest: 2, most: 2, donning-takes: 7 min, trial-takes: 1 min}
            donning:
              - {step: trials, title: Breaths, feeds: breathing, trials: 5, target: 1 inH2O,
                 rest: 1 min, shortest: 500 ms, longest: 1 min}
            """;

    private static final String SEAL =
            """
            format: 1
            title: Disc
            question: Does it leak?
            cautions: [Stop at once when dizzy]
            conditions:
              - {id: a, title: A, specimen: {piece: one, worn-before: 0}, particle-reading: seal-only}
              - {id: b, title: B, specimen: {piece: two, worn-before: 0}, particle-reading: seal-only}
            measures:
              - {id: seal, title: Fit factor, kind: fit-factor, detection-limit: 0.1 /cm3,
                 compare: ratio, meaningful: 2 times, expected-spread: 1.2 times}
            plan: {fewest: 3, most: 8, order: balanced}
            donning:
              - step: exercises
                title: Exercises
                feeds: seal
                exercises:
                  - {title: Still, for: 60 s, ambient: 0 to 10 s, mask: 20 to 60 s}
            """;

    private static String counter(String settling) {
        return """
        format: 1
        title: Bench
        feeds:
          - id: counter
            quantity: switched-concentration
            file: counter.txt
            column: 1
            unit: /cm3
            settling: SECONDS
        """
                .replace("SECONDS", settling);
    }

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir Path folder;

    @Test
    void aCleanFileIsOneLineOnStandardOutput() throws IOException {
        Path file = Files.writeString(folder.resolve("disc.yaml"), CLEAN);
        assertEquals(0, run(file));
        assertEquals(
                file + ": ok, 'Disc', 2 conditions, a round takes about 24 min",
                lines(out).lines().findFirst().orElseThrow());
        assertTrue(
                lines(out).lines().skip(1).allMatch(each -> each.startsWith("    think over: ")));
        assertEquals("", lines(err));
    }

    @Test
    void everyProblemGoesToStandardErrorWithItsPlace() throws IOException {
        Path file =
                Files.writeString(
                        folder.resolve("disc.yaml"),
                        CLEAN.replace("title: Disc", "titel: Disc")
                                .replace("trials: 5", "trials: 0"));
        assertEquals(1, run(file));
        assertEquals("", lines(out));
        assertEquals(
                file
                        + ":2:1: unknown key 'titel' in the file\n"
                        + "    did you mean 'title'?\n"
                        + file
                        + ":12:62: 'trials' is 0, too low\n"
                        + "    write a number from 1 to 50\n",
                lines(err));
    }

    @Test
    void oneBadFileAmongGoodOnesIsEnoughForExitCodeOne() throws IOException {
        Path good = Files.writeString(folder.resolve("good.yaml"), CLEAN);
        Path none = folder.resolve("none.yaml");
        assertEquals(1, run(none, good));
        assertTrue(lines(out).startsWith(good + ": ok, "), lines(out));
        assertEquals(none + ": there is no such file\n", lines(err));
    }

    @Test
    void aFolderIsSaidToBeOne() {
        assertEquals(1, run(folder));
        assertEquals(folder + ": this is a folder; name a file in it\n", lines(err));
    }

    @Test
    void aFileTooLargeIsNotReadToItsEnd() throws IOException {
        Path file = folder.resolve("large.yaml");
        Files.write(file, new byte[Document.MOST_BYTES * 4]);
        assertEquals(1, run(file));
        assertTrue(lines(err).startsWith(file + ":1:1: the file is larger than 256 KiB\n"));
    }

    @Test
    void windowsAreHeldAgainstTheCounterOfARigFile() throws IOException {
        Path file = Files.writeString(folder.resolve("seal.yaml"), SEAL);
        Path slow = Files.writeString(folder.resolve("slow.rig.yaml"), counter("6 s"));
        assertEquals(0, check("--rig", slow.toString(), file.toString()));
        assertTrue(lines(out).startsWith(slow + ": ok, 1 instrument, 'Bench'\n"), lines(out));
        assertTrue(lines(out).contains("think over: 'Exercises': the counter settles for 6"));
        out.getBuffer().setLength(0);
        Path quick = Files.writeString(folder.resolve("quick.rig.yaml"), counter("4 s"));
        assertEquals(0, check("--rig", quick.toString(), file.toString()));
        assertFalse(lines(out).contains("settles"), lines(out));
    }

    @Test
    void aRigFileWithProblemsIsToldAndTheProtocolCheckedAllTheSame() throws IOException {
        Path file = Files.writeString(folder.resolve("seal.yaml"), SEAL);
        Path bad = Files.writeString(folder.resolve("bad.rig.yaml"), counter("6 Pa"));
        assertEquals(1, check("--rig", bad.toString(), file.toString()));
        assertTrue(lines(err).startsWith(bad + ":9:15: "), lines(err));
        assertTrue(lines(out).startsWith(file + ": ok, "), lines(out));
    }

    @Test
    void noFileIsWrongUsage() {
        assertEquals(2, run());
    }

    private int run(Path... files) {
        return check(Arrays.stream(files).map(Path::toString).toArray(String[]::new));
    }

    private int check(String... words) {
        List<String> line = new ArrayList<>(List.of("check", "--home", folder.toString()));
        line.addAll(List.of(words));
        return Rigside.commandLine()
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(line.toArray(new String[0]));
    }

    private static String lines(StringWriter writer) {
        return writer.toString().replace(System.lineSeparator(), "\n");
    }
}
