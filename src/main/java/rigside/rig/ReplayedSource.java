package rigside.rig;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.zip.GZIPInputStream;

/**
 * A recorded trace, given again with its timing: its first timed line comes at the beginning, each
 * later one as long after it as its time says. Lines without a time come with the line before them.
 */
final class ReplayedSource implements Source {
    private static final double NANOS = 1e9;

    private final Origin.Replayed origin;
    private final Kept kept;
    private final Optional<LineReader> times;
    private final long begin;
    private Optional<BufferedReader> lines = Optional.empty();
    private Optional<Arrival> next = Optional.empty();
    private OptionalDouble first = OptionalDouble.empty();
    private long at;
    private boolean over;

    /** A trace that begins at {@code begin}, in session time. */
    ReplayedSource(Origin.Replayed origin, long begin, Kept kept) {
        this.origin = origin;
        this.begin = begin;
        this.at = begin;
        this.kept = kept;
        TraceForm form = origin.form();
        this.times =
                form.time()
                        .map(
                                column ->
                                        new LineReader(
                                                new LineForm(
                                                        new LineForm.Columns(
                                                                form.separator(),
                                                                column,
                                                                Optional.empty()),
                                                        form.decimalComma(),
                                                        Optional.empty(),
                                                        Map.of())));
    }

    @Override
    public void drain(long now, Consumer<Arrival> to) {
        try {
            if (lines.isEmpty() && !over) {
                lines = Optional.of(open(origin.trace()));
                to.accept(new Arrival.Opened(begin));
            }
            while (!over) {
                if (next.isEmpty() && !advance()) {
                    finish(to, new Arrival.Ended(Math.max(at, begin)));
                    return;
                }
                Arrival due = next.orElseThrow();
                if (due.at() > now) {
                    return;
                }
                next = Optional.empty();
                to.accept(due);
                keep(due, to);
            }
        } catch (IOException trouble) {
            finish(to, new Arrival.Broken(now, Faults.words(trouble)));
        }
    }

    /**
     * A header of another program is kept too: without it the lines after it may mean nothing. That
     * of a recording by this program names only what is written before each line.
     */
    private void keep(Arrival due, Consumer<Arrival> to) {
        if (due instanceof Arrival.Line line) {
            kept.keep(line.at(), line.text(), to);
        } else if (due instanceof Arrival.Before before && times.isPresent()) {
            kept.keep(before.at(), before.text(), to);
        }
    }

    private static BufferedReader open(Path trace) throws IOException {
        InputStream bytes = Files.newInputStream(trace);
        String name = trace.getFileName().toString();
        // Latin 1 takes any byte; a trace is read for its numbers.
        return new BufferedReader(
                new InputStreamReader(
                        name.endsWith(".gz") ? new GZIPInputStream(bytes) : bytes,
                        StandardCharsets.ISO_8859_1));
    }

    /** Whether there is a next line, which then waits in {@code next}. */
    private boolean advance() throws IOException {
        String line = lines.orElseThrow().readLine();
        if (line == null) {
            return false;
        }
        next = Optional.of(times.isPresent() ? timed(line) : own(line));
        at = next.get().at();
        return true;
    }

    private Arrival own(String line) {
        int tab = line.indexOf('\t');
        OptionalDouble time =
                tab < 0 ? OptionalDouble.empty() : Decimal.read(line.substring(0, tab), false);
        return time.isPresent()
                ? new Arrival.Line(due(time.getAsDouble()), line.substring(tab + 1), true)
                : new Arrival.Before(at, line);
    }

    private Arrival timed(String line) {
        Parsed time = times.orElseThrow().read(line);
        if (time instanceof Parsed.Found number) {
            return new Arrival.Line(due(origin.form().unit().toSi(number.raw())), line, true);
        }
        return time instanceof Parsed.Passed
                ? new Arrival.Before(at, line)
                : new Arrival.Line(at, line, true);
    }

    private long due(double seconds) {
        if (first.isEmpty()) {
            first = OptionalDouble.of(seconds);
        }
        return Math.max(at, begin + Math.round((seconds - first.getAsDouble()) * NANOS));
    }

    private void finish(Consumer<Arrival> to, Arrival last) {
        over = true;
        close();
        to.accept(last);
    }

    @Override
    public void close() {
        over = true;
        try {
            if (lines.isPresent()) {
                lines.get().close();
            }
        } catch (IOException readAnyway) {
            return;
        }
    }
}
