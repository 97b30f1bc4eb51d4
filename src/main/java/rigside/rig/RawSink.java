package rigside.rig;

import java.io.IOException;

/** Where the lines of feeds are kept as they came. Called by the thread of each feed. */
public interface RawSink {
    /** Keeps nothing. */
    RawSink NONE = (feed, at, line) -> {};

    /**
     * Keeps a line.
     *
     * @param feed the feed's id
     * @param at when it was complete, in nanoseconds of session time
     * @param line without its end, each character one of its bytes (Latin 1)
     * @throws IOException if it cannot be kept; the message says why, in words
     */
    void keep(String feed, long at, String line) throws IOException;
}
