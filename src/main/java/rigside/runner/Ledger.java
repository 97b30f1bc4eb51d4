package rigside.runner;

import java.io.IOException;
import java.time.ZonedDateTime;
import java.util.List;
import rigside.session.Event;

/** Where events go before anything is confirmed. */
public interface Ledger {
    /**
     * Keeps the events, on disk when it returns.
     *
     * @param wall the wall clock, with its zone
     * @param at nanoseconds of session time
     * @throws IOException if they could not be kept; then none of them is
     */
    void append(List<Event> events, ZonedDateTime wall, long at) throws IOException;
}
