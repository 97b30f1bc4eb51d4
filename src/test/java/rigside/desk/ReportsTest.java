package rigside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.archive.Archive;

/** Reports written from the review of a session, beside its journal. */
class ReportsTest {
    @TempDir Path sessions;

    private Path session;
    private Archive archive;

    @BeforeEach
    void aSessionIsThere() throws IOException {
        session = copy("2026-11-25-1246-disc");
        archive = new Archive(sessions, "test");
    }

    private Path copy(String name) throws IOException {
        Path folder = Files.createDirectories(sessions.resolve(name));
        Files.copy(Path.of("demo/recorded-session/journal.jsonl"), folder.resolve("journal.jsonl"));
        return folder;
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void bothFormsAreWrittenOverEarlierOnes() throws IOException {
        Files.writeString(session.resolve("report.md"), "old");
        assertEquals(
                "report.html and report.md are in " + session, Reports.write(session, archive));
        assertEquals(List.of("journal.jsonl", "report.html", "report.md"), names(session));
        assertTrue(Files.readString(session.resolve("report.md")).startsWith("# Simulated"));
    }

    @Test
    void whatStandsInTheWayIsSaidAndLeft() throws IOException {
        Files.createDirectories(session.resolve("report.html/mine"));
        IOException told = assertThrows(IOException.class, () -> Reports.write(session, archive));
        assertEquals("a folder of that name is there", FolderWords.of(told));
        assertEquals(List.of("journal.jsonl", "report.html"), names(session));
    }

    @Test
    void ofNothingThereIsNoReport() throws IOException {
        Path empty = Files.createDirectories(sessions.resolve("empty"));
        IOException told = assertThrows(IOException.class, () -> Reports.write(empty, archive));
        assertEquals("nothing of this session can be read", FolderWords.of(told));
    }

    /** The same session a second time is not earlier than itself. */
    @Test
    void plansOfTheSameMomentAreNoEarlierOnes() throws IOException {
        copy("2026-11-25-1246-disc-2");
        Reports.write(session, archive);
        assertTrue(
                Files.readString(session.resolve("report.md"))
                        .contains(
                                "No earlier session of this wearer on the same question is kept."));
    }
}
