package rigside.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigside.session.Event;

class RunningHashTest {
    private static final String WHOLE = Story.resource("/journal/whole-2/journal.jsonl");
    private static final String OLD = Story.resource("/journal/whole-1/journal.jsonl");

    /**
     * Python 3.11.7 standard library, over the file whole-2:
     *
     * <pre>
     * import hashlib, re
     * h = hashlib.sha256(b"").digest()
     * for line in open("journal.jsonl", "rb").read().splitlines():
     *     own = re.sub(rb',"hash":"[0-9a-f]{64}"}$', b"}", line)
     *     h = hashlib.sha256(h + own).digest()
     *     assert h.hex() in line.decode()
     * print(h.hex())
     * </pre>
     */
    private static final String LAST =
            "67bee0e4c251ef5224171f025fcf70e595f5bf685e0b4157e60387056ecf78b8";

    /** The same over whole-1, which carries none: {@code hashlib.sha256(whole_file)}. */
    private static final String OF_OLD =
            "db3808396797b99c80352bda33186f2e3450c6508c5796268dbad18c4a1e182d";

    @TempDir Path temporary;
    private Path folder;
    private Path file;

    @BeforeEach
    void makeFolder() throws IOException {
        folder = Files.createDirectory(temporary.resolve("s"));
        file = folder.resolve("journal.jsonl");
    }

    private Reading read(List<String> lines) throws IOException {
        Files.writeString(file, String.join("\n", lines) + "\n");
        return JournalReader.read(file);
    }

    private static List<String> lines() {
        return new ArrayList<>(WHOLE.lines().toList());
    }

    @Test
    void theHashesAreThoseThatAnotherProgramReckons() throws IOException {
        Reading reading = read(lines());
        assertEquals(List.of(), reading.damage());
        assertEquals(Optional.of(new Fingerprint(1, LAST)), reading.hashed());
        byte[] old = OLD.getBytes(StandardCharsets.UTF_8);
        assertEquals(OF_OLD, RunningHash.of(old, old.length).hex());
    }

    /** Whatever bit of a small journal is turned round, it is told, and nothing from it is read. */
    @Test
    void everyChangedByteIsFound() throws IOException {
        byte[] whole =
                (String.join("\n", lines().subList(0, 6)) + "\n").getBytes(StandardCharsets.UTF_8);
        for (int at = 0; at < whole.length; at++) {
            byte[] changed = whole.clone();
            changed[at] ^= (byte) (1 << (at % 8));
            Files.write(file, changed);
            Reading reading = JournalReader.read(file);
            assertTrue(
                    reading.isReadOnly() || reading.torn().isPresent(), "byte " + at + " changed");
            int before =
                    (int)
                            WHOLE.substring(0, chars(whole, at))
                                    .chars()
                                    .filter(c -> c == '\n')
                                    .count();
            assertTrue(reading.events().size() <= before, "byte " + at + " changed");
        }
    }

    private static int chars(byte[] bytes, int length) {
        return new String(bytes, 0, length, StandardCharsets.UTF_8).length();
    }

    @Test
    void aLineTakenOutOrMovedIsFoundThoughItIsNumberedAnew() throws IOException {
        List<String> out = lines();
        out.remove(9);
        for (int at = 9; at < out.size(); at++) {
            out.set(at, out.get(at).replaceFirst("\"n\":\\d+", "\"n\":" + (at + 1)));
        }
        assertEquals(10, read(out).damage().get(0).line());
        List<String> moved = lines();
        Collections.swap(moved, 4, 5);
        moved.set(4, moved.get(4).replaceFirst("\"n\":6", "\"n\":5"));
        moved.set(5, moved.get(5).replaceFirst("\"n\":5", "\"n\":6"));
        Reading reading = read(moved);
        assertEquals(
                "s/journal.jsonl:5: the line was changed, moved or put in after it was written, or"
                        + " one before it was (its hash does not fit)\n"
                        + "    what comes before it can be read and reported; the file is left as it"
                        + " is",
                reading.damage().get(0).toString());
        assertEquals(4, reading.events().size());
    }

    /** Who takes the hash off a line hides nothing: from the first one on, every line has it. */
    @ParameterizedTest
    @ValueSource(ints = {0, 7, 34})
    void aLineWithoutItsHashIsFound(int at) throws IOException {
        List<String> lines = lines();
        lines.set(at, lines.get(at).replaceFirst(",\"hash\":\"[0-9a-f]+\"", ""));
        Damage damage = read(lines).damage().get(0);
        assertEquals(at + 1, damage.line());
        assertEquals("the line carries no hash, though every line from 1 on must", damage.what());
    }

    /** What a hash cannot see. */
    @Test
    void wholeWritesMissingAtTheEndLeaveNoTrace() throws IOException {
        Reading reading = read(lines().subList(0, 20));
        assertFalse(reading.isReadOnly());
        assertEquals(Optional.empty(), reading.torn());
    }

    /** A journal begun by an older version is not rewritten; what comes later takes it all in. */
    @Test
    void anOldJournalIsReadAndWhatIsAppendedTakesInAllThatStoodThere() throws Exception {
        List<String> old = OLD.lines().toList().subList(0, 18);
        Files.writeString(file, String.join("\n", old) + "\n");
        assertEquals(Optional.empty(), JournalReader.read(file).hashed());
        try (Journal journal = Journal.open(folder)) {
            journal.append(List.of(new Event.NoteWritten("later")), Story.stamp(40));
            journal.append(List.of(new Event.NoteWritten("and later")), Story.stamp(41));
        }
        List<String> lines = Files.readAllLines(file);
        assertEquals(old, lines.subList(0, 18));
        assertEquals(19, JournalReader.read(file).hashed().orElseThrow().from());
        List<String> changed = new ArrayList<>(lines);
        changed.set(16, changed.get(16).replace("12.4", "12.5"));
        changed.set(2, changed.get(2).replace("\"A\"", "\"B\""));
        Reading reading = read(changed);
        assertEquals(19, reading.damage().get(0).line());
        assertEquals(18, reading.events().size());
    }

    @Test
    void goneOnWithAfterATornLineTheHashesGoOnFromTheLastWholeOne() throws Exception {
        Files.writeString(file, String.join("\n", lines().subList(0, 12)) + "\n{\"n\":13,\"wa");
        try (Journal journal = Journal.open(folder)) {
            assertTrue(journal.torn().isPresent());
            journal.append(List.of(new Event.NoteWritten("later")), Story.stamp(40));
        }
        Reading reading = JournalReader.read(file);
        assertEquals(13, reading.events().size());
        assertEquals(List.of(), reading.damage());
    }
}
