package rigside.runner;

import java.io.IOException;
import java.time.ZonedDateTime;
import java.util.List;
import rigside.journal.Journal;
import rigside.journal.NotWritten;
import rigside.journal.Stamp;
import rigside.session.Event;

/**
 * A runner's events, kept in a session's journal.
 *
 * @param journal open for appending
 */
public record JournalLedger(Journal journal) implements Ledger {
    @Override
    public void append(List<Event> events, ZonedDateTime wall, long at) throws IOException {
        try {
            journal.append(events, new Stamp(wall, at));
        } catch (NotWritten notWritten) {
            throw new IOException(notWritten.getMessage(), notWritten);
        }
    }
}
