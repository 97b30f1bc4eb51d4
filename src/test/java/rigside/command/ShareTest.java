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
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShareTest {
    private static final String DEMONSTRATION = "demo/recorded-session";

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

    private Path to() {
        return home.resolve("copy");
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void aCopyIsAJournalAndWhatWasLeftOut() throws IOException {
        assertEquals(Exit.DONE, run("share", DEMONSTRATION, "--to", to().toString()), err);
        assertEquals(List.of("journal.jsonl", "left-out.txt"), names(to()));
        assertTrue(out.startsWith("Written to " + to() + ": journal.jsonl and left-out.txt"), out);
        assertTrue(out.endsWith(Files.readString(to().resolve("left-out.txt"))), out);
        assertTrue(out.contains("  10 free answers in forms and to observations\n"), out);
        assertFalse(Files.readString(to().resolve("journal.jsonl")).contains("\"rehearsed\""));
    }

    @Test
    void withTheVitalCapacityKeptItsAnalysisIsTheSessionsToTheLetter() {
        run("share", DEMONSTRATION, "--to", to().toString(), "--keep", "vital-capacity");
        assertEquals(Exit.DONE, run("analyse", to().toString()));
        String copy = out;
        run("analyse", DEMONSTRATION);
        assertEquals(out, copy);
    }

    @Test
    void withoutItAllButFlowAndResistanceIs() {
        run("share", DEMONSTRATION, "--to", to().toString());
        assertEquals(Exit.DONE, run("analyse", to().toString()));
        List<String> copy = out.lines().toList();
        run("analyse", DEMONSTRATION);
        List<String> missing = new ArrayList<>(out.lines().toList());
        missing.removeAll(copy);
        assertEquals(2, missing.size(), missing::toString);
        assertTrue(missing.stream().allMatch(each -> each.contains("resistance")));
    }

    @Test
    void aCopyCanBeExportedAndSharedAgain() {
        run("share", DEMONSTRATION, "--to", to().toString(), "--wearer-code", "W1");
        assertEquals(Exit.DONE, run("export", to().toString()), err);
        Path second = home.resolve("second");
        assertEquals(Exit.DONE, run("share", to().toString(), "--to", second.toString()), err);
        assertTrue(out.contains("  1 wearer code\n"), out);
        assertFalse(out.contains("free answer"), out);
    }

    @Test
    void anOpenOrDamagedSessionIsNotShared() throws IOException {
        List<String> lines = Files.readAllLines(Path.of(DEMONSTRATION, "journal.jsonl"));
        Path open = Files.createDirectory(home.resolve("open"));
        Files.write(open.resolve("journal.jsonl"), lines.subList(0, 100));
        assertEquals(Exit.PROBLEMS, run("share", open.toString(), "--to", to().toString()));
        assertEquals(
                "this session is open; what it conceals would be in the copy\n    close it first,"
                        + " with 'rigside resume'\n",
                err);
        lines.set(50, "{}");
        Files.write(open.resolve("journal.jsonl"), lines);
        assertEquals(Exit.PROBLEMS, run("share", open.toString(), "--to", to().toString()));
        assertTrue(err.contains("a damaged session is not shared"), err);
        assertFalse(Files.exists(to()));
    }

    @Test
    void whatCannotBeMeantIsSaid() throws IOException {
        assertEquals(
                Exit.USAGE,
                run("share", DEMONSTRATION, "--to", to().toString(), "--keep", "weight"));
        assertTrue(err.contains("answered were comfort, mask-size,"), err);
        assertEquals(
                Exit.USAGE,
                run("share", DEMONSTRATION, "--to", to().toString(), "--wearer-code", "a b\n"));
        assertTrue(err.contains("must be one word"), err);
        assertEquals(Exit.USAGE, run("share", DEMONSTRATION));
        Files.createDirectory(to());
        Files.writeString(to().resolve("mine.txt"), "mine");
        assertEquals(Exit.PROBLEMS, run("share", DEMONSTRATION, "--to", to().toString()));
        assertTrue(err.contains("holds something already"), err);
        assertEquals(List.of("mine.txt"), names(to()));
    }

    @Test
    void whereTheVerdictHangsOnAnAnswerAboutTheWearerItIsNotLeftOutSilently() throws IOException {
        Path protocol =
                Files.writeString(
                        home.resolve("bearded.yaml"),
                        Files.readString(Path.of("demo/prefilter-disc.yaml"))
                                .replace(
                                        "conditions:\n",
                                        "  - id: practised\n    ask: Worn before?\n    about:"
                                                + " wearer\n    choices: [often, never]\n\n"
                                                + "conditions:\n")
                                .replace(
                                        "    feeds: breathing\n",
                                        "    feeds: breathing\n    only-if: {answer: practised, is:"
                                                + " often}\n"));
        Path sessions = home.resolve("in");
        assertEquals(
                Exit.DONE,
                run("rehearse", protocol.toString(), "--seed", "5", "--into", sessions.toString()),
                () -> err);
        Path session = sessions.resolve(names(sessions).get(0));
        assertEquals(Exit.PROBLEMS, run("share", session.toString(), "--to", to().toString()));
        assertTrue(
                err.startsWith(
                        "without what is left out the copy would say something else: breathing"),
                err);
        assertFalse(Files.exists(to()));
        assertEquals(
                Exit.DONE,
                run("share", session.toString(), "--to", to().toString(), "--keep", "practised"),
                () -> err);
    }
}
