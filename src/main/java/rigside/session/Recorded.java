package rigside.session;

import java.time.ZonedDateTime;
import java.util.List;

/**
 * An event with when it happened.
 *
 * @param number its number in the journal, from 1
 * @param wall the wall clock with its zone
 * @param at nanoseconds of session time: monotonic, from 0 at the opening, going on by the wall
 *     clock over breaks
 * @param event what happened
 */
public record Recorded(long number, ZonedDateTime wall, long at, Event event) {

    /**
     * The event a session ended with: its close, whatever was put right after it; the last one of
     * an open session.
     *
     * @param journal at least one event, in order
     */
    public static Recorded end(List<Recorded> journal) {
        return journal.stream()
                .filter(each -> each.event() instanceof Event.SessionClosed)
                .findFirst()
                .orElseGet(() -> journal.get(journal.size() - 1));
    }
}
