package rigside.bench;

import java.util.List;
import java.util.Optional;
import rigside.session.Event;

/** What is confirmed to the tester; no value, since values may be concealed. */
final class Confirmation {
    private Confirmation() {}

    /** The words for the last event that needs any. */
    static Optional<String> of(List<Event> events) {
        return events.stream()
                .flatMap(event -> words(event).stream())
                .reduce((earlier, later) -> later);
    }

    private static Optional<String> words(Event event) {
        if (event instanceof Event.EntryCaptured captured) {
            return Optional.of("entry " + captured.entry() + " is captured");
        }
        if (event instanceof Event.EntryVoided voided) {
            return Optional.of("entry " + voided.entry() + " is struck out: " + voided.reason());
        }
        if (event instanceof Event.DonningStruck struck) {
            return Optional.of(
                    "donning " + struck.donning() + " is struck out and will be done again");
        }
        if (event instanceof Event.DonningAbandoned abandoned) {
            return Optional.of(
                    "donning " + abandoned.donning() + " is abandoned and will be done again");
        }
        if (event instanceof Event.SlotLeftOut left) {
            return Optional.of("no entry there: " + left.reason());
        }
        return event instanceof Event.NoteWritten
                ? Optional.of("the note is written")
                : Optional.empty();
    }
}
