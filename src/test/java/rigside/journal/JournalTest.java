package rigside.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rigside.session.DoesNotApply;
import rigside.session.Event;
import rigside.session.Evolve;
import rigside.session.Recorded;

class JournalTest {
    private static final Event NOTE = new Event.NoteWritten("kept");

    @TempDir Path sessions;
    private final FailingDisk disk = new FailingDisk();

    @Test
    void aSessionIsReadBackAsItWasAppended() throws Exception {
        List<Recorded> returned = new ArrayList<>();
        Path folder;
        try (Journal journal = create()) {
            folder = journal.folder();
            List<List<Event>> batches = new ArrayList<>(Story.batches());
            batches.addAll(Story.corrections());
            for (int batch = 0; batch < batches.size(); batch++) {
                returned.addAll(journal.append(batches.get(batch), Story.stamp(batch)));
                assertEquals(Evolve.fold(returned), journal.state());
            }
            assertEquals(returned, journal.events());
        }
        assertEquals(Story.corrected(), returned);
        Reading reading = JournalReader.read(folder);
        assertEquals(returned, reading.events());
        assertEquals(Evolve.fold(returned), reading.state());
        assertEquals(List.of(), reading.damage());
        assertEquals(Optional.empty(), reading.torn());
        if (Boolean.getBoolean("rigside.approve")) {
            Files.copy(
                    file(folder),
                    Path.of("src/test/resources/journal/whole-2/journal.jsonl"),
                    StandardCopyOption.REPLACE_EXISTING);
        }
        assertEquals(
                Story.resource("/journal/whole-2/journal.jsonl"), Files.readString(file(folder)));
    }

    @Test
    void aReopenedJournalGoesOnWhereItWasLeft() throws Exception {
        Path folder = opened();
        Journal journal = Journal.open(folder);
        assertEquals(1, journal.events().size());
        List<Recorded> added = journal.append(List.of(NOTE), Story.stamp(1));
        journal.close();
        assertEquals(2, added.get(0).number());
        assertEquals(journal.events(), JournalReader.read(folder).events());
        assertEquals(journal.state(), JournalReader.read(folder).state());
    }

    @Test
    void nothingIsReportedAsRecordedBeforeTheDiskHasIt() throws Exception {
        try (Journal journal = create()) {
            journal.append(List.of(Story.opened()), Story.stamp(0));
            disk.asked.clear();
            journal.append(List.of(NOTE, NOTE), Story.stamp(1));
            int length = lineOf(2, true).length() + lineOf(3, false).length();
            assertEquals(List.of("write " + length, "force"), disk.asked);
        }
    }

    private static String lineOf(long number, boolean more) {
        Stamp stamp = Story.stamp(1);
        return RunningHash.START.putOn(
                        EventWriter.write(
                                new Recorded(number, stamp.wall(), stamp.at(), NOTE), more))
                + "\n";
    }

    @ParameterizedTest
    @EnumSource(names = "NONE", mode = EnumSource.Mode.EXCLUDE)
    void whateverFailsNothingCountsAndTryingAgainWorks(FailingDisk.Fault fault) throws Exception {
        Path folder = opened();
        try (Journal journal = Journal.open(folder, disk)) {
            String before = Files.readString(file(folder));
            disk.fault = fault;
            for (int times = 0; times < 3; times++) {
                assertThrows(
                        NotWritten.class,
                        () -> journal.append(List.of(NOTE, NOTE), Story.stamp(1)));
                assertEquals(1, journal.events().size());
                if (fault != FailingDisk.Fault.WRITE_AND_TRUNCATE) {
                    assertEquals(before, Files.readString(file(folder)));
                }
            }
            disk.fault = FailingDisk.Fault.NONE;
            journal.append(List.of(NOTE), Story.stamp(2));
            journal.append(List.of(NOTE), Story.stamp(3));
            Reading reading = JournalReader.read(folder);
            assertEquals(journal.events(), reading.events());
            assertEquals(3, reading.events().size());
            assertFalse(reading.isReadOnly());
        }
    }

    /** The machine dies after half of a write that could not be taken back. */
    @Test
    void whatHalfOfAWriteLeftIsSetAsideWhenTheSessionIsOpenedAgain() throws Exception {
        Path folder = opened();
        try (Journal journal = Journal.open(folder, disk)) {
            disk.fault = FailingDisk.Fault.WRITE_AND_TRUNCATE;
            assertThrows(NotWritten.class, () -> journal.append(List.of(NOTE), Story.stamp(1)));
        }
        try (Journal journal = Journal.open(folder)) {
            assertTrue(journal.torn().isPresent());
            assertEquals(1, journal.events().size());
        }
    }

    @Test
    void aFullDiskIsToldInTheTestersWords() throws Exception {
        try (Journal journal = create()) {
            journal.append(List.of(Story.opened()), Story.stamp(0));
            disk.fault = FailingDisk.Fault.WRITE;
            NotWritten told =
                    assertThrows(
                            NotWritten.class, () -> journal.append(List.of(NOTE), Story.stamp(1)));
            assertEquals("the journal cannot be written: the disk is full", told.getMessage());
            assertEquals("mend that, then try again; nothing is lost so far", told.help());
        }
    }

    @Test
    void anInterruptedThreadFailsTheAppendAndTryingAgainWorks() throws Exception {
        Path folder = opened();
        try (Journal journal = Journal.open(folder)) {
            Thread.currentThread().interrupt();
            assertThrows(NotWritten.class, () -> journal.append(List.of(NOTE), Story.stamp(1)));
            assertTrue(Thread.interrupted());
            journal.append(List.of(NOTE), Story.stamp(1));
            assertEquals(journal.events(), JournalReader.read(folder).events());
        }
    }

    @Test
    void anEventThatCannotFollowIsNeverWritten() throws Exception {
        Path folder = opened();
        try (Journal journal = Journal.open(folder)) {
            String before = Files.readString(file(folder));
            Event wrong = new Event.DonningStarted(1, 1, 1, "no such condition");
            assertThrows(
                    DoesNotApply.class, () -> journal.append(List.of(NOTE, wrong), Story.stamp(1)));
            assertThrows(
                    DoesNotApply.class,
                    () -> journal.append(List.of(Story.opened()), Story.stamp(1)));
            assertEquals(1, journal.events().size());
            assertEquals(before, Files.readString(file(folder)));
        }
    }

    @Test
    void timeNeverRunsBackwards() throws Exception {
        Path folder = opened();
        try (Journal journal = Journal.open(folder)) {
            journal.append(List.of(NOTE), Story.stamp(2));
            journal.append(List.of(NOTE), new Stamp(Story.START, Story.stamp(2).at()));
            assertThrows(
                    IllegalArgumentException.class,
                    () -> journal.append(List.of(NOTE), Story.stamp(1)));
        }
    }

    @Test
    void aTextTooLongForALineIsRefusedAndNotWritten() throws Exception {
        Path folder = opened();
        try (Journal journal = Journal.open(folder)) {
            Event huge = new Event.NoteWritten("x".repeat(JournalReader.LONGEST_LINE));
            assertThrows(NotWritten.class, () -> journal.append(List.of(huge), Story.stamp(1)));
            journal.append(List.of(NOTE), Story.stamp(1));
            assertEquals(2, JournalReader.read(folder).events().size());
        }
    }

    @Test
    void aClosedJournalTakesNothingMore() throws Exception {
        Journal journal = Journal.open(opened());
        journal.close();
        journal.close();
        assertThrows(
                IllegalStateException.class, () -> journal.append(List.of(NOTE), Story.stamp(1)));
    }

    @Test
    void aSessionOpenHereCannotBeOpenedASecondTime() throws Exception {
        Path folder = opened();
        try (Journal journal = Journal.open(folder)) {
            Path otherWay = folder.resolve("..").resolve(folder.getFileName());
            NotOpened told = assertThrows(NotOpened.class, () -> Journal.open(otherWay));
            assertEquals("this session is open in another program", told.getMessage());
            assertEquals("close it there, then try again", told.help());
            assertEquals(1, JournalReader.read(folder).events().size());
            assertEquals(journal.folder(), folder);
        }
        Journal.open(folder).close();
    }

    /**
     * Also after a second claim within this program was refused: on POSIX systems that must not
     * have given up the first.
     */
    @Test
    void aSessionOpenHereCannotBeOpenedInAnotherProgram() throws Exception {
        Path folder = opened();
        try (Journal journal = Journal.open(folder)) {
            assertThrows(NotOpened.class, () -> Journal.open(journal.folder()));
            assertEquals("this session is open in another program", openedElsewhere(folder));
        }
        assertEquals("opened", openedElsewhere(folder));
    }

    /** It says the number of each event as soon as it is told that the event is recorded. */
    @Test
    void aProgramKilledWhileItWritesHasLostNothingItWasToldIsRecorded() throws Exception {
        Path folder = opened();
        Process other = start(WritesForEver.class, folder);
        long told = 0;
        try (BufferedReader says = other.inputReader(StandardCharsets.UTF_8)) {
            while (told < 50) {
                told = Long.parseLong(says.readLine());
            }
            other.toHandle().destroyForcibly();
            for (String line = says.readLine(); line != null; line = says.readLine()) {
                told = Math.max(told, Long.parseLong(line));
            }
            assertTrue(other.waitFor(30, TimeUnit.SECONDS));
        } finally {
            other.destroyForcibly();
        }
        try (Journal journal = Journal.open(folder)) {
            assertTrue(journal.events().size() >= told, told + " " + journal.events().size());
            journal.append(List.of(NOTE), Story.stamp(2));
        }
        assertFalse(JournalReader.read(folder).isReadOnly());
    }

    private static String openedElsewhere(Path folder) throws IOException, InterruptedException {
        Process other = start(OpensASession.class, folder);
        String said = new String(other.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(other.waitFor(30, TimeUnit.SECONDS));
        return said.strip();
    }

    private static Process start(Class<?> program, Path folder) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty(
                                "surefire.test.class.path", System.getProperty("java.class.path")),
                        program.getName(),
                        folder.toString())
                .redirectErrorStream(true)
                .start();
    }

    /** A program to be killed; ends by itself when nobody does. */
    static final class WritesForEver {
        private WritesForEver() {}

        public static void main(String[] folder) throws NotOpened, NotWritten {
            try (Journal journal = Journal.open(Path.of(folder[0]))) {
                for (int count = 0; count < 100_000; count++) {
                    List<Recorded> added = journal.append(List.of(NOTE), Story.stamp(1));
                    System.out.println(added.get(0).number());
                }
            }
        }
    }

    /** The other program. */
    static final class OpensASession {
        private OpensASession() {}

        public static void main(String[] folder) {
            try (Journal journal = Journal.open(Path.of(folder[0]))) {
                System.out.println(journal.events().isEmpty() ? "empty" : "opened");
            } catch (NotOpened told) {
                System.out.println(told.getMessage());
            }
        }
    }

    @Test
    void sessionsOfOneMinuteGetFoldersOfTheirOwn() throws Exception {
        List<String> names = new ArrayList<>();
        for (int count = 0; count < 3; count++) {
            names.add(opened().getFileName().toString());
        }
        assertEquals(
                List.of(
                        "2026-11-25-0916-bench",
                        "2026-11-25-0916-bench-2",
                        "2026-11-25-0916-bench-3"),
                names);
    }

    @ParameterizedTest
    @CsvSource({
        "disc.yaml, disc",
        "protocols/Seal and breathing.yml, seal-and-breathing",
        "C:\\bench\\Größe 2.5 m.yaml, gro-e-2-5-m",
        ".yaml, yaml",
        "'', session",
        "口罩.yaml, session",
        "v1.2, v1",
        "../../etc, etc",
        "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa-bbb, aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa"
    })
    void aFolderIsNamedInPlainLetters(String protocolName, String slug) {
        assertEquals(slug, SessionFolder.slug(protocolName));
    }

    @Test
    void aSessionInWhichNothingWasRecordedLeavesNoFolder() throws Exception {
        disk.fault = FailingDisk.Fault.WRITE;
        try (Journal journal = create()) {
            assertThrows(
                    NotWritten.class,
                    () -> journal.append(List.of(Story.opened()), Story.stamp(0)));
        }
        try (Stream<Path> left = Files.list(sessions)) {
            assertEquals(List.of(), left.toList());
        }
    }

    @Test
    void sessionsThatCannotBeMadeAreToldInTheTestersWords() throws Exception {
        Path taken = Files.writeString(sessions.resolve("taken"), "a file");
        NotOpened told =
                assertThrows(
                        NotOpened.class, () -> Journal.create(taken, "bench.yaml", Story.START));
        assertTrue(
                told.getMessage().startsWith("no session can be started in '" + taken + "': "),
                told.getMessage());
    }

    @Test
    void aFolderWithoutAJournalIsLeftAsItIs() throws Exception {
        NotOpened told = assertThrows(NotOpened.class, () -> Journal.open(sessions));
        assertEquals("there is no session in '" + sessions + "'", told.getMessage());
        try (Stream<Path> left = Files.list(sessions)) {
            assertEquals(List.of(), left.toList());
        }
    }

    @Test
    void aDamagedSessionIsNotOpenedAndNotTouched() throws Exception {
        Path folder = opened();
        String damaged = Files.readString(file(folder)) + "{}\n";
        Files.writeString(file(folder), damaged);
        NotOpened told = assertThrows(NotOpened.class, () -> Journal.open(folder));
        assertEquals(
                "this session is damaged and cannot be gone on with\n"
                        + "2026-11-25-0916-bench/journal.jsonl:2: the line carries no hash, though every line from 1 on must\n"
                        + "    what comes before it can be read and reported;"
                        + " the file is left as it is",
                told.getMessage());
        assertEquals(damaged, Files.readString(file(folder)));
        assertThrows(NotOpened.class, () -> Journal.open(folder));
    }

    private Journal create() throws NotOpened {
        return Journal.create(sessions, "bench.yaml", Story.START, disk);
    }

    /** A session in which only the opening is recorded. */
    private Path opened() throws Exception {
        try (Journal journal = create()) {
            journal.append(List.of(Story.opened()), Story.stamp(0));
            return journal.folder();
        }
    }

    private static Path file(Path folder) {
        return folder.resolve("journal.jsonl");
    }
}
