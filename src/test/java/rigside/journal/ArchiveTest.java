package rigside.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.session.Event;

class ArchiveTest {
    private static final String WHOLE = Story.resource("/journal/whole-1/journal.jsonl");

    @TempDir Path sessions;

    @Test
    void aClosedSessionIsListedWithWhatItIs() throws IOException {
        Path folder = session("a", WHOLE);
        assertEquals(
                List.of(
                        new Listed(
                                folder,
                                "Pre-filter disc on a half mask",
                                "Does the disc make breathing harder?",
                                List.of("Without the disc", "With the disc"),
                                Optional.of(Story.START),
                                Optional.of(Story.START.plusMinutes(Story.batches().size() - 1)),
                                true,
                                false,
                                Optional.empty(),
                                1,
                                List.of())),
                Archive.list(sessions));
        assertFalse(Archive.list(sessions).get(0).isResumable());
    }

    @Test
    void aSessionThatIsOpenMeanwhileIsListedAsResumable() throws Exception {
        try (Journal journal = Journal.create(sessions, "bench.yaml", Story.START)) {
            journal.append(List.of(Story.opened()), Story.stamp(0));
            Listed listed = Archive.list(sessions).get(0);
            assertEquals(journal.folder(), listed.folder());
            assertTrue(listed.isResumable());
            assertEquals(0, listed.completeRounds());
        }
    }

    @Test
    void aFormThatIsHalfTypedInIsFoundByItsProtocolItsSeedAndItsDay() throws Exception {
        Event.SessionOpened form = form(7, 20);
        try (Journal journal = Journal.create(sessions, "bench.yaml", Story.START)) {
            journal.append(List.of(form), Story.stamp(0));
            assertEquals(Optional.of(journal.folder()), Archive.halfTyped(sessions, form));
        }
        assertEquals(Optional.empty(), Archive.halfTyped(sessions, form(8, 20)));
        assertEquals(Optional.empty(), Archive.halfTyped(sessions, form(7, 21)));
    }

    private static Event.SessionOpened form(long seed, int day) {
        return new Event.SessionOpened(
                "1",
                "bench.yaml",
                Story.opened().protocolText(),
                seed,
                "typed",
                "",
                false,
                1,
                "",
                Optional.of(new Event.Paper(Optional.of(LocalDate.of(2026, 11, day)))));
    }

    @Test
    void theSessionBegunLastComesFirst() throws IOException {
        session("z-oldest", WHOLE.replace("2026-11-25", "2025-11-25"));
        session("a-newest", WHOLE.replace("2026-11-25", "2027-11-25"));
        session("m-between", WHOLE);
        assertEquals(List.of("a-newest", "m-between", "z-oldest"), names());
    }

    @Test
    void brokenFoldersAreListedWithTheirDamage() throws IOException {
        session("good", WHOLE);
        Path empty = Files.createDirectory(sessions.resolve("empty"));
        Files.setLastModifiedTime(empty, FileTime.from(Instant.EPOCH));
        session("damaged", WHOLE.replace("donning-abandoned", "donning-forgotten"));
        Files.createDirectory(sessions.resolve(".hidden"));
        Files.writeString(sessions.resolve("notes.txt"), "mine");
        List<Listed> listed = Archive.list(sessions);
        assertEquals(List.of("good", "damaged", "empty"), names());
        assertEquals("empty/journal.jsonl: there is no such file", only(listed.get(2)));
        assertTrue(only(listed.get(1)).contains("unknown event 'donning-forgotten'"));
        assertEquals("Pre-filter disc on a half mask", listed.get(1).title());
        assertFalse(listed.get(1).isResumable());
    }

    @Test
    void aFolderThatIsNotThereHoldsNoSessions() throws IOException {
        assertEquals(List.of(), Archive.list(sessions.resolve("none")));
    }

    private static String only(Listed listed) {
        assertEquals(1, listed.damage().size());
        return listed.damage().get(0).toString();
    }

    private List<String> names() throws IOException {
        return Archive.list(sessions).stream()
                .map(listed -> listed.folder().getFileName().toString())
                .toList();
    }

    private Path session(String name, String journal) throws IOException {
        Path folder = Files.createDirectory(sessions.resolve(name));
        Files.writeString(folder.resolve("journal.jsonl"), journal);
        return folder;
    }
}
