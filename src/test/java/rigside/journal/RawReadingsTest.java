package rigside.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RawReadingsTest {
    @TempDir Path folder;

    @Test
    void linesStandWithTheirSessionTimeInAFileOfTheirFeed() throws IOException {
        try (RawReadings raw = RawReadings.in(folder)) {
            raw.keep("gauge", 1_500_000_000L, "12.5");
            raw.keep("counter", 2_000_001_999L, "A;7");
            raw.keep("gauge", 3_600_000_000_000L, "tab\tin it");
            assertEquals(
                    "seconds\tline\n1.500000\t12.5\n3600.000000\ttab\tin it\n",
                    Files.readString(RawReadings.file(folder, "gauge")),
                    "there before the session is closed");
        }
        assertEquals(
                "seconds\tline\n2.000001\tA;7\n",
                Files.readString(folder.resolve("raw-counter.tsv")));
    }

    @Test
    void everyByteIsKeptAsItCame() throws IOException {
        byte[] junk = new byte[256];
        for (int at = 0; at < junk.length; at++) {
            junk[at] = (byte) at;
        }
        String line = new String(junk, StandardCharsets.ISO_8859_1);
        try (RawReadings raw = RawReadings.in(folder)) {
            raw.keep("gauge", 0, line);
        }
        byte[] kept = Files.readAllBytes(RawReadings.file(folder, "gauge"));
        assertEquals(
                "seconds\tline\n0.000000\t" + line + "\n",
                new String(kept, StandardCharsets.ISO_8859_1));
    }

    @Test
    void aResumedSessionGoesOnBehindWhatACrashLeft() throws IOException {
        Path file = RawReadings.file(folder, "gauge");
        Files.writeString(file, "seconds\tline\n1.000000\t12");
        try (RawReadings raw = RawReadings.in(folder)) {
            raw.keep("gauge", 9_000_000_000L, "13");
        }
        assertEquals("seconds\tline\n1.000000\t12\n9.000000\t13\n", Files.readString(file));
    }

    @Test
    void aClosedSessionsFilesAreCompressedAndNothingElseIs() throws IOException {
        Files.writeString(folder.resolve("journal.jsonl"), "{}\n");
        RawReadings raw = RawReadings.in(folder);
        raw.keep("gauge", 0, "12.5");
        raw.compress();
        assertFalse(Files.exists(RawReadings.file(folder, "gauge")));
        try (GZIPInputStream in =
                new GZIPInputStream(Files.newInputStream(folder.resolve("raw-gauge.tsv.gz")))) {
            assertEquals(
                    "seconds\tline\n0.000000\t12.5\n",
                    new String(in.readAllBytes(), StandardCharsets.US_ASCII));
        }
        assertEquals("{}\n", Files.readString(folder.resolve("journal.jsonl")));
        raw.keep("gauge", 1, "too late");
        assertFalse(Files.exists(RawReadings.file(folder, "gauge")));
    }

    @Test
    void aFileThatCannotBeWrittenIsSaidInWordsAndTriedAgain() throws IOException {
        Path file = RawReadings.file(folder, "gauge");
        Files.createDirectory(file);
        try (RawReadings raw = RawReadings.in(folder)) {
            IOException trouble = assertThrows(IOException.class, () -> raw.keep("gauge", 0, "1"));
            assertFalse(trouble.getMessage().isBlank());
            Files.delete(file);
            raw.keep("gauge", 0, "2");
        }
        assertEquals("seconds\tline\n0.000000\t2\n", Files.readString(file));
    }

    @Test
    void whatWasAppendedByAnotherHandIsNotCutOff() throws IOException {
        Path file = RawReadings.file(folder, "gauge");
        Files.writeString(file, "seconds\tline\n1.000000\t12\n", StandardOpenOption.CREATE);
        try (RawReadings raw = RawReadings.in(folder)) {
            raw.keep("gauge", 2_000_000_000L, "13");
        }
        assertEquals(4 - 1, Files.readAllLines(file).size());
    }
}
