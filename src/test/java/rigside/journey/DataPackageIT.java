package rigside.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A session's tables, read by programs that know nothing of ours but their description. */
class DataPackageIT {
    private static final Path SCRIPTS = Path.of("src/test/resources/report");

    @TempDir Path home;

    private Path tables;

    private record Ended(int exit, String said) {}

    private Ended run(String... command) throws IOException, InterruptedException {
        Path said = Files.createTempFile(home, "said", ".txt");
        Process process =
                new ProcessBuilder(command)
                        .redirectErrorStream(true)
                        .redirectOutput(said.toFile())
                        .start();
        int exit = process.waitFor();
        return new Ended(exit, Files.readString(said, StandardCharsets.UTF_8));
    }

    private Ended rigside(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(Journey.JAVA, "-jar", Journey.JAR));
        command.addAll(List.of(arguments));
        return run(command.toArray(String[]::new));
    }

    @BeforeEach
    void exported() throws Exception {
        tables = home.resolve("tables");
        Ended ended = rigside("export", "demo/recorded-session", "--to", tables.toString());
        assertEquals(0, ended.exit(), ended.said());
    }

    @Test
    void pythonFindsItAsDescribedAndMakesItsComparisonsAgain() throws Exception {
        Needed.toRun("python3", "--version");
        Ended ended = run("python3", SCRIPTS.resolve("check-package.py") + "", tables + "");
        assertEquals(0, ended.exit(), ended.said());
        assertEquals(6, ended.said().lines().count(), ended.said());
        Files.writeString(
                tables.resolve("values.csv"),
                Files.readString(tables.resolve("values.csv")).replace("counts", "count"));
        Ended changed = run("python3", SCRIPTS.resolve("check-package.py") + "", tables + "");
        assertEquals(1, changed.exit(), changed.said());
        assertTrue(changed.said().contains("values: hash"), changed.said());
        assertTrue(changed.said().contains("not one of its words: count"), changed.said());
    }

    @Test
    void pythonFindsWhatHostileTextsLeadToAsDescribed() throws Exception {
        Needed.toRun("python3", "--version");
        String hostile = "=cmd|' /C calc'!A1, \\\"so\\\"\\n\\u0000\\u202e\\r\\n+1";
        Path session = Files.createDirectory(home.resolve("session"));
        Files.writeString(
                session.resolve("journal.jsonl"),
                Files.readString(Path.of("demo/recorded-session/journal.jsonl"))
                        .replace("\"text\":\"rehearsed\"", "\"text\":\"" + hostile + "\""));
        Ended ended = rigside("export", session.toString());
        assertEquals(0, ended.exit(), ended.said());
        Path data = session.resolve("data");
        assertTrue(Files.readString(data.resolve("facts.csv")).contains("\"'=cmd|' /C calc'!A1"));
        Ended read = run("python3", SCRIPTS.resolve("check-package.py") + "", data + "");
        assertEquals(0, read.exit(), read.said());
    }

    @Test
    void rFindsItAsDescribedAndMakesItsComparisonsAgain() throws Exception {
        Needed.toRun("Rscript", "--version");
        Ended ended = run("Rscript", SCRIPTS.resolve("check-package.R") + "", tables + "");
        assertEquals(0, ended.exit(), ended.said());
        assertEquals(6, ended.said().lines().count(), ended.said());
    }
}
