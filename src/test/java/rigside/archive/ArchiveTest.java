package rigside.archive;

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
import rigside.analysis.Digits;
import rigside.analysis.Standing;
import rigside.journal.Journal;
import rigside.journal.Story;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;
import rigside.session.Event;

class ArchiveTest {
    private static final String WHOLE = Story.resource("/journal/whole-1/journal.jsonl");

    @TempDir Path sessions;

    @Test
    void aClosedSessionIsListedWithWhatItIs() throws IOException {
        Path folder = session("a", WHOLE);
        Archived listed = list().get(0);
        assertEquals(folder, listed.folder());
        assertEquals(Optional.of(Story.START), listed.begun());
        assertEquals(
                Optional.of(Story.START.plusMinutes(Story.batches().size() - 1)), listed.last());
        assertTrue(listed.closed());
        assertFalse(listed.simulated());
        assertFalse(listed.isResumable());
        assertEquals(Optional.empty(), listed.paper());
        assertEquals(
                Optional.of(
                        new Archived.Followed(
                                "bench.yaml",
                                "Pre-filter disc on a half mask",
                                "Does the disc make breathing harder?",
                                // Python 3, hashlib.sha256 of the text in the journal
                                "9de518b1039ae6bcffed6d8deedace6d03da0e9468b7beb819a60cf9b056766b",
                                Protocol.Purpose.COMPARISON,
                                Plan.Design.ROUNDS)),
                listed.protocol());
        assertEquals(Optional.of("A"), listed.wearer());
        assertEquals(
                List.of("Without the disc", "With the disc"),
                listed.conditions().stream().map(Archived.Worn::title).toList());
        assertEquals(1, listed.completeRounds());
        assertEquals(List.of("too few repeats"), findings(listed));
        assertEquals(List.of(), listed.damage());
    }

    private static List<String> findings(Archived listed) {
        return listed.findings().stream().map(Archived.Finding::words).toList();
    }

    @Test
    void valuesOfAClosedSessionSayWhenAndHowOftenWorn() throws IOException {
        session("a", WHOLE);
        List<WithValues.Value> values =
                archive().contents(Progress.NONE).withValues(each -> true).get(0).values();
        assertEquals(
                List.of(
                        "breathing disc 1 12.4",
                        "breathing plain 2 abandoned",
                        "breathing plain 3 11.3"),
                values.stream().map(ArchiveTest::words).toList());
        assertEquals(Story.START.plusMinutes(3).toInstant(), values.get(0).worn());
        assertEquals(List.of(0, 0, 1), values.stream().map(WithValues.Value::wornBefore).toList());
    }

    private static String words(WithValues.Value value) {
        return String.format(
                "%s %s %d %s",
                value.measure(),
                value.condition(),
                value.donning(),
                value.standing() == Standing.ABANDONED
                        ? "abandoned"
                        : Digits.three(value.number().getAsDouble()));
    }

    @Test
    void aSessionThatIsOpenMeanwhileIsListedAsResumable() throws Exception {
        try (Journal journal = Journal.create(sessions, "bench.yaml", Story.START)) {
            journal.append(List.of(Story.opened()), Story.stamp(0));
            Archived listed = list().get(0);
            assertEquals(journal.folder(), listed.folder());
            assertTrue(listed.isResumable());
            assertEquals(0, listed.completeRounds());
            assertEquals(List.of(), listed.findings());
        }
    }

    @Test
    void aFormThatIsHalfTypedInIsFoundByItsProtocolItsSeedAndItsDay() throws Exception {
        Event.SessionOpened form = form(7, 20);
        try (Journal journal = Journal.create(sessions, "bench.yaml", Story.START)) {
            journal.append(List.of(form), Story.stamp(0));
            assertEquals(Optional.of(journal.folder()), archive().halfTyped(form));
        }
        assertEquals(Optional.empty(), archive().halfTyped(form(8, 20)));
        assertEquals(Optional.empty(), archive().halfTyped(form(7, 21)));
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
        List<Archived> listed = list();
        assertEquals(List.of("good", "damaged", "empty"), names());
        assertEquals("empty/journal.jsonl: there is no such file", only(listed.get(2)));
        assertTrue(only(listed.get(1)).contains("unknown event 'donning-forgotten'"));
        assertEquals("Pre-filter disc on a half mask", listed.get(1).title());
        assertFalse(listed.get(1).isResumable());
    }

    @Test
    void aFolderThatIsNotThereHoldsNoSessions() throws IOException {
        assertEquals(List.of(), new Archive(sessions.resolve("none"), "1").list(Progress.NONE));
    }

    private static String only(Archived listed) {
        assertEquals(1, listed.damage().size());
        return listed.damage().get(0).toString();
    }

    private Archive archive() {
        return new Archive(sessions, "1");
    }

    private List<Archived> list() throws IOException {
        return archive().list(Progress.NONE);
    }

    private List<String> names() throws IOException {
        return list().stream().map(listed -> listed.folder().getFileName().toString()).toList();
    }

    private Path session(String name, String journal) throws IOException {
        Path folder = Files.createDirectory(sessions.resolve(name));
        Files.writeString(folder.resolve("journal.jsonl"), journal);
        return folder;
    }
}
