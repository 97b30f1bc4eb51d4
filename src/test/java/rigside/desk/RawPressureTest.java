package rigside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.journal.JournalReader;
import rigside.journal.RawReadings;
import rigside.journal.Reading;
import rigside.report.Gauged;
import rigside.report.PressureTraces;
import rigside.session.Event;
import rigside.session.Recorded;

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

    /** As after a disk that filled up, or a copy broken off. */
    @Test
    void ofLinesCutShortThoseBeforeTheCutAreRead() throws Exception {
        Path folder = Gauged.of(Path.of("demo", "prefilter-disc.yaml"), 7).keep(sessions);
        PressureTraces whole = read(folder);
        try (RawReadings raw = RawReadings.in(folder)) {
            raw.compress();
        }
        Path packed = folder.resolve("raw-gauge.tsv.gz");
        byte[] bytes = Files.readAllBytes(packed);
        Files.write(packed, Arrays.copyOf(bytes, bytes.length / 2));
        PressureTraces half = read(folder);
        assertTrue(half.traces().size() > 2, () -> "" + half.traces().keySet());
        assertTrue(half.traces().size() < whole.traces().size());
        int first = half.traces().keySet().stream().min(Integer::compare).orElseThrow();
        assertEquals(whole.traces().get(first), half.traces().get(first));
    }

    /**
     * The gauge was read on for ten minutes after the last event, the clock was put back, and the
     * session gone on with: its time goes on from that event.
     */
    @Test
    void linesOfATimeThatCameAgainAreOfNoPull() throws Exception {
        Gauged was = Gauged.of(Path.of("demo", "prefilter-disc.yaml"), 7);
        PressureTraces expected = read(was.keep(sessions));
        int second =
                IntStream.range(0, was.events().size())
                        .filter(
                                at ->
                                        was.events().get(at).event()
                                                        instanceof Event.DonningStarted started
                                                && started.donning() == 2)
                        .findFirst()
                        .orElseThrow();
        long again = was.events().get(second).at();
        List<Recorded> events = new ArrayList<>(was.events());
        Recorded before = events.get(second - 1);
        events.add(
                second,
                new Recorded(
                        before.number(), before.wall(), again, new Event.SessionReopened("test")));
        List<rigside.rig.Reading> readings = new ArrayList<>(was.readings());
        int from = (int) readings.stream().filter(each -> each.at() < again).count();
        List<rigside.rig.Reading> stale =
                IntStream.range(0, 6000)
                        .mapToObj(
                                tenth ->
                                        new rigside.rig.Reading(
                                                again + tenth * 100_000_000L,
                                                -555,
                                                Optional.empty()))
                        .toList();
        readings.addAll(from, stale);
        assertEquals(expected, read(new Gauged(events, readings).keep(sessions)));
    }
}
