package rigside.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever happens to the sessions or to the index, a list is what the journals alone would give.
 */
class IndexTest {
    private static final String JOURNAL = "journal.jsonl";
    private static final int ALL = 50;

    /** One of each protocol, an open one and a damaged one among them. */
    private static final int SESSIONS = 7;

    private static final FileTime YESTERDAY = FileTime.from(Instant.parse("2026-01-05T08:00:00Z"));

    @TempDir static Path made;

    private static List<Path> folders;

    @TempDir Path sessions;

    @BeforeAll
    static void makeSessions() throws Exception {
        folders = ManySessions.write(made, ALL, 6, 20261128);
    }

    @BeforeEach
    void copySessions() throws IOException {
        copy(folders.subList(0, SESSIONS));
    }

    private void copy(List<Path> all) throws IOException {
        for (Path each : all) {
            copy(each, here(each));
        }
    }

    private Path here(Path folder) {
        return sessions.resolve(folder.getFileName());
    }

    /** The journal of a closed session. */
    private Path closed() {
        return here(folders.get(0)).resolve(JOURNAL);
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        Files.copy(from.resolve(JOURNAL), to.resolve(JOURNAL));
        Files.setLastModifiedTime(to.resolve(JOURNAL), YESTERDAY);
    }

    private Archive archive() {
        return new Archive(sessions, "1");
    }

    private List<WithValues> all() throws IOException {
        return archive().contents(Progress.NONE).withValues(each -> true);
    }

    /** What the journals alone give: of the same sessions in a folder without an index. */
    private List<WithValues> fresh() throws IOException {
        Path index = index();
        Path aside = sessions.resolve("..").resolve("aside").normalize();
        boolean there = Files.exists(index);
        if (there) {
            Files.move(index, aside);
        }
        try {
            return all();
        } finally {
            Files.deleteIfExists(index);
            if (there) {
                Files.move(aside, index);
            }
        }
    }

    private Path index() {
        return sessions.resolve(IndexFile.NAME);
    }

    private int readAnew() throws IOException {
        AtomicInteger read = new AtomicInteger();
        archive().list((done, all) -> read.incrementAndGet());
        return read.get();
    }

    private void seesWhatIsThere(int readAnew) throws IOException {
        List<WithValues> fresh = fresh();
        AtomicInteger read = new AtomicInteger();
        List<WithValues> seen =
                archive().contents((done, all) -> read.incrementAndGet()).withValues(each -> true);
        assertEquals(fresh, seen);
        assertEquals(readAnew, read.get(), "journals read");
        assertEquals(fresh, all(), "from the index alone");
    }

    @Test
    void whatIsKeptIsWhatTheJournalsSay() throws IOException {
        copy(folders.subList(SESSIONS, ALL));
        List<WithValues> first = all();
        assertEquals(ALL, first.size());
        assertTrue(first.stream().anyMatch(each -> !each.values().isEmpty()));
        assertTrue(first.stream().anyMatch(each -> !each.session().damage().isEmpty()));
        assertTrue(first.stream().anyMatch(each -> each.session().isResumable()));
        seesWhatIsThere(0);
    }

    @Test
    void aNewSessionIsReadAndNoOther() throws IOException {
        all();
        copy(folders.get(0), sessions.resolve("another"));
        seesWhatIsThere(1);
    }

    @Test
    void aSessionGoneOnWithAndClosedIsReadAnew() throws IOException {
        Path journal = closed();
        List<String> lines = Files.readAllLines(journal);
        write(journal, lines.subList(0, lines.size() - 1));
        assertTrue(archive().list(Progress.NONE).stream().filter(Archived::closed).count() > 0);
        write(journal, lines);
        seesWhatIsThere(1);
    }

    private static void write(Path journal, List<String> lines) throws IOException {
        Files.write(journal, lines);
        long past = YESTERDAY.toMillis() + lines.size();
        Files.setLastModifiedTime(journal, FileTime.fromMillis(past));
    }

    @Test
    void aSessionDamagedIsReadAnew() throws IOException {
        all();
        Path journal = closed();
        List<String> lines = new ArrayList<>(Files.readAllLines(journal));
        lines.set(lines.size() / 2, "no event");
        write(journal, lines);
        seesWhatIsThere(1);
    }

    /** As long as before, within the same tick of a coarse clock. */
    @Test
    void whatChangesWhileItIsNewIsNotMissed() throws IOException {
        Path journal = closed();
        FileTime now = FileTime.from(Instant.now());
        Files.setLastModifiedTime(journal, now);
        List<WithValues> before = all();
        String text = Files.readString(journal);
        Files.writeString(journal, text.replace("demonstration", "demonstratiom"));
        Files.setLastModifiedTime(journal, now);
        assertEquals(text.length(), Files.readString(journal).length());
        assertNotEquals(before, all());
        assertEquals(fresh(), all());
    }

    @Test
    void whatWasChangedInTheFutureIsNotTrusted() throws IOException {
        Path journal = closed();
        Files.setLastModifiedTime(journal, FileTime.from(Instant.now().plusSeconds(3600)));
        all();
        assertEquals(1, readAnew());
        assertEquals(1, readAnew());
    }

    @Test
    void aSessionDeletedIsGone() throws IOException {
        all();
        long size = Files.size(index());
        Path folder = here(folders.get(3));
        Files.delete(folder.resolve(JOURNAL));
        Files.delete(folder);
        assertEquals(SESSIONS - 1, all().size());
        assertTrue(Files.size(index()) < size, "dropped from the index too");
        seesWhatIsThere(0);
    }

    @Test
    void aFolderRenamedIsFoundByItsNewName() throws IOException {
        all();
        Path folder = here(folders.get(3));
        Files.move(folder, sessions.resolve("renamed"));
        assertTrue(all().stream().anyMatch(each -> each.session().folder().endsWith("renamed")));
        seesWhatIsThere(0);
    }

    @Test
    void twoFoldersThatChangeNamesAreNotMixedUp() throws IOException {
        all();
        Path one = here(folders.get(4));
        Path two = here(folders.get(5));
        Files.move(one, sessions.resolve("between"));
        Files.move(two, one);
        Files.move(sessions.resolve("between"), two);
        List<WithValues> fresh = fresh();
        assertEquals(fresh, all());
    }

    @Test
    void anIndexCutAnywhereIsMadeAnew() throws IOException {
        all();
        byte[] whole = Files.readAllBytes(index());
        for (int length : new int[] {0, 1, 30, 80, whole.length / 2, whole.length - 1}) {
            Files.write(index(), Arrays.copyOf(whole, length));
            seesWhatIsThere(SESSIONS);
        }
    }

    @Test
    void anIndexWithAnyByteChangedIsMadeAnew() throws IOException {
        all();
        byte[] whole = Files.readAllBytes(index());
        int step = whole.length / 12;
        for (int at = 0; at < whole.length; at += step) {
            byte[] changed = whole.clone();
            changed[at] ^= 4;
            Files.write(index(), changed);
            assertEquals(SESSIONS, readAnew(), "changed at " + at);
        }
    }

    @Test
    void anIndexOfAnotherVersionIsMadeAnew() throws IOException {
        new Archive(sessions, "2").list(Progress.NONE);
        assertEquals(SESSIONS, readAnew());
        assertEquals(0, readAnew());
    }

    @Test
    void aForeignFileInItsPlaceIsTakenForNoIndex() throws IOException {
        Files.writeString(index(), "{\"made\": \"by another program\"}\n");
        assertEquals(SESSIONS, readAnew());
        assertEquals(0, readAnew());
    }

    @Test
    void aFolderInItsPlaceCostsTimeOnly() throws IOException {
        Files.createDirectory(index());
        assertEquals(SESSIONS, readAnew());
        assertEquals(SESSIONS, readAnew());
        assertEquals(List.of(), leftovers());
    }

    @Test
    void whereNothingCanBeWrittenItIsListedAllTheSame() throws IOException {
        List<WithValues> fresh = fresh();
        assertTrue(sessions.toFile().setWritable(false));
        try {
            assertEquals(fresh, all());
        } finally {
            assertTrue(sessions.toFile().setWritable(true));
        }
    }

    @Test
    void twoProgramsAtOnceDoNotHurtEachOther() throws IOException {
        List<WithValues> fresh = fresh();
        List<CompletableFuture<List<WithValues>>> both =
                IntStream.range(0, 4)
                        .mapToObj(each -> CompletableFuture.supplyAsync(this::gathered))
                        .toList();
        both.forEach(each -> assertEquals(fresh, each.join()));
        assertEquals(List.of(), leftovers());
        seesWhatIsThere(0);
    }

    private List<WithValues> gathered() {
        try {
            return all();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    @Test
    void whatAKilledProgramLeftBehindIsRemovedInTime() throws IOException {
        Path old = Files.writeString(sessions.resolve(".index-1-1"), "half");
        Files.setLastModifiedTime(old, YESTERDAY);
        Path young = Files.writeString(sessions.resolve(".index-2-2"), "half");
        all();
        assertFalse(Files.exists(old));
        assertTrue(Files.exists(young), "another program may be writing it");
    }

    private List<Path> leftovers() throws IOException {
        try (Stream<Path> all = Files.list(sessions)) {
            return all.filter(each -> each.getFileName().toString().startsWith(".index-")).toList();
        }
    }

    @Test
    void journalsStayAsTheyAre() throws IOException {
        all();
        all();
        for (Path each : folders.subList(0, SESSIONS)) {
            Path here = here(each).resolve(JOURNAL);
            assertEquals(-1, Files.mismatch(each.resolve(JOURNAL), here));
            assertEquals(YESTERDAY.toMillis(), Files.getLastModifiedTime(here).toMillis());
        }
    }

    @Test
    void rebuildingReadsAll() throws IOException {
        List<Archived> before = archive().list(Progress.NONE);
        AtomicInteger read = new AtomicInteger();
        assertEquals(before, archive().rebuild((done, all) -> read.incrementAndGet()));
        assertEquals(SESSIONS, read.get());
    }

    @Test
    void ofAnOpenSessionTheIndexHoldsNoValue() throws IOException {
        for (WithValues each : all()) {
            if (!each.session().closed()) {
                assertEquals(List.of(), each.values());
                assertEquals(List.of(), each.session().findings());
            }
        }
    }
}
