package rigside.journal;

import java.time.Duration;
import java.time.ZonedDateTime;
import rigside.session.Recorded;

/** How session time goes on after a break, in which no monotonic clock ran. */
public final class SessionClock {
    /** A wall clock that moved further than this was set, not waited for. */
    private static final Duration LONGEST_BREAK = Duration.ofDays(3_650);

    private SessionClock() {}

    /**
     * The session time, in nanoseconds, at which a session goes on: the last one recorded and the
     * time the wall clock says has passed since. A wall clock that was set back adds nothing, so
     * session time never runs backwards.
     *
     * @param last the last event of the journal
     * @param now the wall clock now
     */
    public static long resumedAt(Recorded last, ZonedDateTime now) {
        Duration since = Duration.between(last.wall(), now);
        if (since.isNegative()) {
            return last.at();
        }
        Duration passed = since.compareTo(LONGEST_BREAK) > 0 ? LONGEST_BREAK : since;
        return Math.addExact(last.at(), passed.toNanos());
    }
}
