package rigside.journal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigside.protocol.ProtocolReader;
import rigside.protocol.Read;
import rigside.session.Event;
import rigside.session.Evolve;
import rigside.session.Recorded;
import rigside.session.State;

class JournalReaderTest {
    private static final String WHOLE = Story.resource("/journal/whole-1/journal.jsonl");
    private static final String HELP =
            "\n    what comes before it can be read and reported; the file is left as it is";

    @TempDir Path temporary;
    private Path folder;
    private Path file;

    @BeforeEach
    void makeFolder() throws IOException {
        folder = Files.createDirectory(temporary.resolve("s"));
        file = folder.resolve("journal.jsonl");
    }

    @Test
    void aJournalOfFormatOneIsReadForEver() throws IOException {
        Files.writeString(file, WHOLE);
        Reading reading = JournalReader.read(folder);
        assertEquals(Story.recorded(), reading.events());
        assertEquals(Evolve.fold(Story.recorded()), reading.state());
        assertTrue(reading.state().course().closed());
        assertEquals(List.of(), reading.damage());
        assertEquals(reading, JournalReader.read(file));
    }

    /**
     * What was written together counts together: a line that says that more follows counts only
     * with what follows.
     */
    @ParameterizedTest
    @ValueSource(strings = {"whole-1", "whole-2"})
    void cutAtAnyByteEveryWholeWriteIsReadAndTheRestIsTorn(String name) throws IOException {
        byte[] whole =
                Story.resource("/journal/" + name + "/journal.jsonl")
                        .getBytes(StandardCharsets.UTF_8);
        Files.write(file, whole);
        try (RandomAccessFile shrinking = new RandomAccessFile(file.toFile(), "rw")) {
            for (int cut = whole.length; cut >= 0; cut--) {
                shrinking.setLength(cut);
                Reading reading = JournalReader.read(file);
                int written = written(lines(whole, cut));
                assertEquals(
                        Story.corrected().subList(0, written), reading.events(), "cut at " + cut);
                int kept = lengthOf(whole, written);
                Optional<TornLine> torn =
                        kept == cut
                                ? Optional.empty()
                                : Optional.of(
                                        new TornLine(
                                                "s/journal.jsonl", written + 1, kept, cut - kept));
                assertEquals(torn, reading.torn(), "cut at " + cut);
                assertEquals(written == 0, reading.isReadOnly(), "cut at " + cut);
            }
        }
    }

    /** How many of these lines were written whole: those of the writes that are all there. */
    private static int written(int lines) {
        int end = 0;
        List<List<Event>> batches = new ArrayList<>(Story.batches());
        batches.addAll(Story.corrections());
        for (List<Event> batch : batches) {
            if (end + batch.size() > lines) {
                return end;
            }
            end += batch.size();
        }
        return end;
    }

    @Test
    void cutInAnyLineItIsGoneOnWithAndTheTornBytesAreKept() throws Exception {
        byte[] whole = WHOLE.getBytes(StandardCharsets.UTF_8);
        for (int lines = 1; lines < Story.recorded().size(); lines++) {
            int from = lengthOf(whole, lines);
            int end = lengthOf(whole, lines + 1);
            int written = written(lines);
            goesOnCutAt(
                    whole, written, lengthOf(whole, written), from + (lines * 17) % (end - from));
        }
        int from = lengthOf(whole, 9);
        for (int cut : List.of(from, from + 1, lengthOf(whole, 10) - 1)) {
            goesOnCutAt(whole, 9, from, cut);
        }
    }

    private void goesOnCutAt(byte[] whole, int lines, int from, int cut) throws Exception {
        Path kept = folder.resolve("journal.torn");
        Files.deleteIfExists(kept);
        Files.write(file, Arrays.copyOf(whole, cut));
        try (Journal journal = Journal.open(folder)) {
            assertEquals(lines, journal.events().size(), "cut at " + cut);
            assertEquals(from < cut, journal.torn().isPresent(), "cut at " + cut);
            journal.append(Story.batches().get(1), Story.stamp(100));
        }
        Reading reading = JournalReader.read(folder);
        assertEquals(lines + 1, reading.events().size(), "cut at " + cut);
        assertFalse(reading.isReadOnly(), "cut at " + cut);
        assertEquals(from < cut, Files.exists(kept), "cut at " + cut);
        if (from < cut) {
            byte[] torn = Arrays.copyOfRange(whole, from, cut + 1);
            torn[cut - from] = '\n';
            assertArrayEquals(torn, Files.readAllBytes(kept), "cut at " + cut);
        }
    }

    @Test
    void tornLinesAreKeptOneBelowTheOther() throws Exception {
        String first = WHOLE.substring(0, WHOLE.indexOf('\n') + 1);
        for (String torn : List.of("{\"n\":2,", "{\"n\":2,\"wa")) {
            Files.writeString(file, first + torn);
            Journal.open(folder).close();
        }
        assertEquals(
                "{\"n\":2,\n{\"n\":2,\"wa\n", Files.readString(folder.resolve("journal.torn")));
        assertEquals(first, Files.readString(file));
    }

    /** Some file systems leave zeros after a power cut. */
    @Test
    void zerosAtTheEndAreATornLine() throws Exception {
        String first = WHOLE.substring(0, WHOLE.indexOf('\n') + 1);
        Files.writeString(file, first + "\0".repeat(4096));
        try (Journal journal = Journal.open(folder)) {
            assertEquals(
                    "s/journal.jsonl:2: the last line was cut off while it was written"
                            + " (4096 bytes); everything before it is kept",
                    journal.torn().orElseThrow().toString());
        }
        assertEquals(4097, Files.size(folder.resolve("journal.torn")));
    }

    /** A hole in one writing is a tear, though its last lines reached the disk. */
    @Test
    void zerosBeforeTheRestOfOneWritingAreATornLine() throws Exception {
        String[] lines = WHOLE.split("(?<=\n)", -1);
        String more = lines[2].replace("\"n\":3,", "\"n\":3,\"more\":true,");
        Files.writeString(file, lines[0] + "\0".repeat(100) + "\n" + more + lines[3]);
        Reading reading = JournalReader.read(folder);
        assertEquals(1, reading.events().size());
        assertEquals(2, reading.torn().orElseThrow().line());
    }

    /**
     * A zero that somebody put into the middle must not take all that follows out of the record.
     */
    @Test
    void zerosBeforeLaterWritingsAreDamageAndNothingIsSetAside() throws Exception {
        String[] lines = WHOLE.split("(?<=\n)", -1);
        lines[4] = "\0" + lines[4].substring(1);
        Files.writeString(file, String.join("", lines));
        Reading reading = JournalReader.read(folder);
        assertEquals(4, reading.events().size());
        assertEquals(Optional.empty(), reading.torn());
        assertEquals(
                "s/journal.jsonl:5: not a line of a journal" + HELP,
                reading.damage().get(0).toString());
        assertThrows(NotOpened.class, () -> Journal.open(folder));
        assertEquals(String.join("", lines), Files.readString(file));
    }

    /** Line 5 of the journal is changed; the four before it are read all the same. */
    @ParameterizedTest(name = "{2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "^.*$ | x | not a line of a journal",
                "^.*$ | `` | not a line of a journal",
                "^.*$ | [1] | not a line of a journal",
                "^(.*)$ | $1$1 | not a line of a journal",
                "\"n\":5 | \"n\":5,\"n\":5 | not a line of a journal",
                "Europe/Paris | \uFFFF | 'wall' is '2026-11-25T09:20:20.5+01:00[\uFFFF]', must be a"
                        + " date and time with its zone",
                "\"n\":5 | \"n\":6 | event 6 stands where event 5 must",
                "\"n\":5 | \"n\":4 | event 4 stands where event 5 must",
                "\"at\":240 | \"at\":100 | time runs backwards, from 180000000000 to 100000000000",
                "item-confirmed | item-conformed | unknown event 'item-conformed'",
                "\"item\":0 | \"item\":\"first\" | 'item' is 'first', must be a whole number",
                "item-confirmed.*$ | donning-started\",\"donning\":2,\"round\":1,\"turn\":2,"
                        + "\"condition\":\"plain\"} | a donning is started while another is going on",
            })
    void damageInTheMiddleIsToldAndWhatComesBeforeItIsRead(
            String find, String replacement, String words) throws IOException {
        List<String> lines = new ArrayList<>(WHOLE.lines().toList());
        String changed = lines.get(4).replaceFirst(find, replacement);
        assertFalse(changed.equals(lines.get(4)));
        lines.set(4, changed);
        Files.write(file, lines);
        Reading reading = JournalReader.read(folder);
        assertEquals(Story.recorded().subList(0, 4), reading.events());
        assertEquals(Evolve.fold(reading.events()), reading.state());
        assertEquals(
                List.of("s/journal.jsonl:5: " + words + HELP),
                reading.damage().stream().map(Damage::toString).toList());
        assertTrue(reading.isReadOnly());
    }

    /** A whole event that is wrong was not cut off, so nobody may cut it away. */
    @Test
    void aLastLineThatIsAnEventNobodyKnowsIsDamageAndNotTorn() throws IOException {
        List<String> lines = new ArrayList<>(WHOLE.lines().toList());
        lines.set(lines.size() - 1, lines.get(lines.size() - 1).replace("closed", "shut"));
        Files.write(file, lines);
        Reading reading = JournalReader.read(folder);
        assertEquals(Optional.empty(), reading.torn());
        assertEquals("unknown event 'session-shut'", reading.damage().get(0).what());
    }

    @Test
    void aLineWithoutUtf8IsDamage() throws IOException {
        byte[] bytes = WHOLE.getBytes(StandardCharsets.UTF_8);
        bytes[WHOLE.indexOf("acknowledged")] = (byte) 0xE9;
        Files.write(file, bytes);
        Reading reading = JournalReader.read(folder);
        assertEquals(1, reading.events().size());
        assertEquals("not a line of a journal", reading.damage().get(0).what());
    }

    @Test
    void lineEndsOfAnotherSystemAreRead() throws IOException {
        Files.writeString(file, WHOLE.replace("\n", "\r\n"));
        assertEquals(Story.recorded(), JournalReader.read(folder).events());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"journal\":1, | \"journal\":3,\"more\":[], | written by a newer version of this"
                        + " program (journal format '3', this one knows 2)"
                        + " | read it with that version, or a later one",
                "\"journal\":1, | `` | the first line does not say which journal format it has | ``",
                "\"journal\":1, | \"journal\":0, | unknown journal format '0' | ``",
                "\"journal\":1, | \"journal\":\"one\", | 'journal' is 'one', must be a whole number"
                        + " | ``",
            })
    void anUnknownFormatIsToldEvenInAJournalOfOneLine(
            String find, String with, String words, String help) throws IOException {
        String changed = WHOLE.replace(find, with);
        for (String text : List.of(changed, changed.substring(0, changed.indexOf('\n') + 1))) {
            Files.writeString(file, text);
            Reading reading = JournalReader.read(folder);
            assertEquals(List.of(), reading.events());
            assertEquals(State.START, reading.state());
            assertEquals(Optional.empty(), reading.torn());
            assertEquals(List.of(new Damage("s/journal.jsonl", 1, words, help)), reading.damage());
        }
    }

    /** Refused in a file since two conditions are told apart by their titles alone. */
    @Test
    void aProtocolIsReadByTheRulesOfItsDay() throws IOException {
        String twins = WHOLE.replaceAll("title: With(out)? the disc", "title: The mask");
        assertFalse(twins.equals(WHOLE));
        Files.writeString(file, twins);
        Reading reading = JournalReader.read(folder);
        assertEquals(List.of(), reading.damage());
        Event.SessionOpened opened = (Event.SessionOpened) reading.events().get(0).event();
        Read refused = ProtocolReader.read("bench.yaml", opened.protocolText());
        assertInstanceOf(Read.Bad.class, refused, "as a file it is refused now");
        assertTrue(
                ((Read.Bad) refused).problems().get(0).toString().contains("is given to more than"),
                refused.toString());
    }

    @Test
    void aProtocolThatCannotBeReadIsDamage() throws IOException {
        Files.writeString(file, WHOLE.replace("format: 1", "format: 99"));
        Reading reading = JournalReader.read(folder);
        assertTrue(
                reading.damage().get(0).what().startsWith("its protocol cannot be read:\n"),
                reading.damage().toString());
    }

    @Test
    void anEmptyFileSaysThatNothingWasRecorded() throws IOException {
        Files.writeString(file, "");
        assertEquals(
                "s/journal.jsonl: nothing was recorded\n    start a new session",
                JournalReader.read(folder).damage().get(0).toString());
    }

    @Test
    void aFileThatIsNotThereIsTold() {
        assertEquals(
                "s/journal.jsonl: there is no such file",
                JournalReader.read(folder.resolve("journal.jsonl")).damage().get(0).toString());
    }

    @Test
    void aLineOrAFileFarTooLongIsTold() throws IOException {
        String first = WHOLE.substring(0, WHOLE.indexOf('\n') + 1);
        Files.writeString(
                file, first + "\"" + "x".repeat(JournalReader.LONGEST_LINE) + "\"\n" + first);
        assertEquals("not a line of a journal", JournalReader.read(file).damage().get(0).what());
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(JournalReader.LONGEST_FILE + 1L);
        }
        assertEquals("far too long for a journal", JournalReader.read(file).damage().get(0).what());
    }

    /** Whatever is in the file, reading ends with whole events and throws nothing. */
    @Test
    void noChangeOfBytesMakesReadingFail() throws IOException {
        byte[] whole = WHOLE.getBytes(StandardCharsets.UTF_8);
        int start = lengthOf(whole, 1);
        Random random = new Random(916);
        for (int count = 0; count < 200; count++) {
            byte[] changed = whole.clone();
            int at = start + random.nextInt(whole.length - start);
            changed[at] = (byte) random.nextInt(256);
            Files.write(file, changed);
            Reading reading = JournalReader.read(file);
            List<Recorded> sound = Story.recorded().subList(0, lines(whole, at));
            assertEquals(sound, reading.events().subList(0, sound.size()));
        }
    }

    /** How many whole lines stand before a position. */
    private static int lines(byte[] bytes, int before) {
        int lines = 0;
        for (int at = 0; at < before; at++) {
            lines += bytes[at] == '\n' ? 1 : 0;
        }
        return lines;
    }

    /** Where the line after so many lines begins. */
    private static int lengthOf(byte[] bytes, int lines) {
        int at = 0;
        for (int line = 0; line < lines; at++) {
            line += bytes[at] == '\n' ? 1 : 0;
        }
        return at;
    }
}
