package rigside.rig;

import java.util.List;
import java.util.Optional;

/**
 * The instruments a rig file declares.
 *
 * @param title what they are, in words
 * @param feeds at least one; no two give the same signal
 */
public record Instruments(String title, List<Feed> feeds) {
    public Instruments {
        feeds = List.copyOf(feeds);
    }

    /** The feed that gives a signal, if there is one. */
    public Optional<Feed> feed(Signal signal) {
        return feeds.stream().filter(feed -> feed.sampled().gives(signal)).findFirst();
    }

    /** Whether any reading is of another time than the session's. */
    public boolean isReplayed() {
        return feeds.stream().anyMatch(Feed::isReplayed);
    }
}
