package rigside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.journal.JournalReader;
import rigside.journal.RawReadings;
import rigside.journal.Reading;
import rigside.report.Gauged;
import rigside.report.PressureTraces;

/** The raw lines beside a journal, read again. */
class RawPressureTest {
    @TempDir Path sessions;

    private static PressureTraces read(Path folder) {
        Reading reading = JournalReader.read(folder);
        return RawPressure.of(folder, reading.state(), reading.events());
    }

    @Test
    void packedLinesSayTheSameAsPlainOnesAndLostOnesNothing() throws Exception {
        Path folder = Gauged.of(Path.of("demo", "prefilter-disc.yaml"), 7).keep(sessions);
        PressureTraces plain = read(folder);
        assertFalse(plain.traces().isEmpty());
        try (RawReadings raw = RawReadings.in(folder)) {
            raw.compress();
        }
        assertFalse(Files.exists(RawReadings.file(folder, "gauge")));
        assertEquals(plain, read(folder));
        Files.delete(folder.resolve("raw-gauge.tsv.gz"));
        assertEquals(PressureTraces.NONE, read(folder));
    }
}
