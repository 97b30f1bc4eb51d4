package rigside.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.measure.Unit;

class ReplayedSourceTest {
    private static final long SECOND = 1_000_000_000L;
    private static final TraceForm OWN =
            new TraceForm(Optional.empty(), Separator.COMMA, false, Unit.SECOND);

    private final List<String> got = new ArrayList<>();

    @TempDir Path folder;

    @Test
    void linesComeWithTheirTimingFromTheBeginOn() throws IOException {
        Path trace = trace("seconds\tline\n40.000000\ta\n40.250000\tb\n43.000000\tc\n");
        ReplayedSource source = replayed(trace, OWN, 7 * SECOND);
        drain(source, 7 * SECOND);
        assertEquals(List.of("7.0 opened", "7.0 before seconds\tline", "7.0 a"), got);
        drain(source, 7 * SECOND + SECOND / 5);
        assertEquals(3, got.size());
        drain(source, 9 * SECOND);
        assertEquals("7.25 b", got.get(3));
        drain(source, 60 * SECOND);
        assertEquals(List.of("10.0 c", "10.0 ended"), got.subList(4, 6));
        drain(source, 90 * SECOND);
        assertEquals(6, got.size());
    }

    @Test
    void aTraceOfAnotherProgramSaysItsTimeInAColumn() throws IOException {
        Path trace = trace("ms;p\n100,5;1\n600,5;2\nrubbish\n500,5;3\n");
        TraceForm form =
                new TraceForm(
                        Optional.of(Column.of("ms")), Separator.SEMICOLON, true, Unit.MILLISECOND);
        drain(replayed(trace, form, 0), SECOND);
        assertEquals(
                List.of(
                        "0.0 opened",
                        "0.0 before ms;p",
                        "0.0 100,5;1",
                        "0.5 600,5;2",
                        "0.5 rubbish",
                        "0.5 500,5;3",
                        "0.5 ended"),
                got,
                "a time that runs backwards waits for nothing");
    }

    @Test
    void aCompressedRecordingIsRead() throws IOException {
        Path trace = folder.resolve("gauge.tsv.gz");
        try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(trace))) {
            out.write("0\t1\n".getBytes(StandardCharsets.US_ASCII));
        }
        drain(replayed(trace, OWN, 0), SECOND);
        assertEquals(List.of("0.0 opened", "0.0 1", "0.0 ended"), got);
    }

    @Test
    void aTraceThatIsNotThereIsSaidOnce() {
        ReplayedSource source = replayed(folder.resolve("none"), OWN, 0);
        drain(source, SECOND);
        drain(source, 2 * SECOND);
        assertEquals(List.of("1.0 broken it is not there"), got);
    }

    /** Or nobody could read the raw lines of the session again. */
    @Test
    void theHeaderOfAnotherProgramIsKeptAndThatOfOurOwnIsNot() throws IOException {
        List<String> lines = new ArrayList<>();
        Kept kept = new Kept("t", (feed, at, line) -> lines.add(line));
        TraceForm form =
                new TraceForm(
                        Optional.of(Column.of("ms")), Separator.SEMICOLON, true, Unit.MILLISECOND);
        drain(
                new ReplayedSource(
                        new Origin.Replayed(trace("ms;p\n100,5;1\n600,5;2\n"), form), 0, kept),
                SECOND);
        assertEquals(List.of("ms;p", "100,5;1", "600,5;2"), lines);
        lines.clear();
        drain(
                new ReplayedSource(
                        new Origin.Replayed(trace("seconds\tline\n4.000000\ta\n"), OWN), 0, kept),
                SECOND);
        assertEquals(List.of("a"), lines);
    }

    private Path trace(String text) throws IOException {
        return Files.writeString(folder.resolve("trace"), text);
    }

    private static ReplayedSource replayed(Path trace, TraceForm form, long begin) {
        return new ReplayedSource(
                new Origin.Replayed(trace, form), begin, new Kept("t", RawSink.NONE));
    }

    private void drain(ReplayedSource source, long now) {
        source.drain(now, arrival -> got.add(words(arrival)));
    }

    private static String words(Arrival arrival) {
        String at = arrival.at() / 1e9 + " ";
        if (arrival instanceof Arrival.Line line) {
            assertTrue(line.whole());
            return at + line.text();
        }
        if (arrival instanceof Arrival.Before before) {
            return at + "before " + before.text();
        }
        if (arrival instanceof Arrival.Broken broken) {
            return at + "broken " + broken.why();
        }
        return at + (arrival instanceof Arrival.Ended ? "ended" : "opened");
    }
}
