package rigside.rig;

import java.util.Optional;

/**
 * What the lines of one feed say, one after another: the same while a session goes on and when what
 * was kept of it is read again.
 */
public final class FeedLines {
    private final Feed feed;
    private final LineReader reader;

    /** Those of a feed from its first line on. */
    public FeedLines(Feed feed) {
        this.feed = feed;
        this.reader = new LineReader(feed.form());
    }

    /**
     * The reading that a line is; empty for what is none.
     *
     * @param at when it came, in nanoseconds of session time
     */
    public Optional<Reading> reading(long at, String line) {
        return judged(line) instanceof Parsed.Found found
                ? Optional.of(reading(at, found))
                : Optional.empty();
    }

    Reading reading(long at, Parsed.Found found) {
        return new Reading(at, feed.scale().si(found.raw()), found.side());
    }

    /** What a line is; a number that the instrument cannot mean is nonsense. */
    Parsed judged(String line) {
        Parsed parsed = reader.read(line);
        boolean outside =
                parsed instanceof Parsed.Found number && !feed.scale().takes(number.raw());
        return outside ? new Parsed.Nonsense("it is outside " + feed.scale().range()) : parsed;
    }

    /** A line from before the feed was followed: only a header matters. */
    void before(String line) {
        reader.read(line);
    }
}
