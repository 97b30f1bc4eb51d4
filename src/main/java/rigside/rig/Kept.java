package rigside.rig;

import java.io.IOException;
import java.util.function.Consumer;

/** The raw lines of one feed, kept; a failure is told once, and once when it is over. */
final class Kept {
    private final String feed;
    private final RawSink sink;
    private boolean failing;

    Kept(String feed, RawSink sink) {
        this.feed = feed;
        this.sink = sink;
    }

    /** Keeps a line and hands over what there is to tell about that. */
    void keep(long at, String line, Consumer<? super Arrival> to) {
        try {
            sink.keep(feed, at, line);
            if (failing) {
                failing = false;
                to.accept(new Arrival.Kept(at));
            }
        } catch (IOException trouble) {
            if (!failing) {
                failing = true;
                to.accept(new Arrival.NotKept(at, Faults.words(trouble)));
            }
        }
    }
}
