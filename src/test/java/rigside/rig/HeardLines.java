package rigside.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;

/** A listener of a test, and what it heard. */
final class HeardLines implements AutoCloseable {
    private final ArrivalQueue queue = new ArrivalQueue();
    private final List<Arrival> heard = new ArrayList<>();
    private final AtomicLong clock = new AtomicLong();
    private final Listener listener;

    HeardLines(Wire.Opener opener) {
        this(opener, RawSink.NONE);
    }

    HeardLines(Wire.Opener opener, RawSink sink) {
        listener =
                new Listener("test", opener, clock::incrementAndGet, new Kept("test", sink), queue);
        listener.start();
    }

    /** Waits until an arrival of a kind has come some times. */
    HeardLines hears(Class<? extends Arrival> kind, int times) {
        Patiently.until(() -> count(kind) >= times, () -> heard.toString());
        return this;
    }

    /** Waits until these are the lines that came. */
    HeardLines hears(String... lines) {
        List<String> wanted = List.of(lines);
        Patiently.until(
                () -> {
                    heard.addAll(queue.drain());
                    return lines().equals(wanted);
                },
                () -> wanted + " but " + heard);
        return this;
    }

    private long count(Class<? extends Arrival> kind) {
        heard.addAll(queue.drain());
        return heard.stream().filter(kind::isInstance).count();
    }

    List<String> lines() {
        return heard.stream()
                .filter(Arrival.Line.class::isInstance)
                .map(each -> ((Arrival.Line) each).text())
                .toList();
    }

    List<Arrival> all() {
        heard.addAll(queue.drain());
        return List.copyOf(heard);
    }

    @Override
    public void close() {
        listener.close();
    }
}
