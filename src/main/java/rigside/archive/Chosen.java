package rigside.archive;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import rigside.journal.JournalReader;
import rigside.journal.Reading;
import rigside.protocol.Protocol;
import rigside.session.State;

/**
 * A session chosen to be set beside others, with the protocol it went by.
 *
 * @param values the session with its values; none while it is open
 * @param protocol empty when nothing readable was recorded
 * @param seed of its order; 0 without an opening
 */
public record Chosen(WithValues values, Optional<Protocol> protocol, long seed) {

    /**
     * Read anew from its journal.
     *
     * @param place a session's folder, or a journal's file
     */
    public static Chosen read(Path place) {
        Reading reading = JournalReader.readAsGiven(place);
        Path whole = place.toAbsolutePath().normalize();
        Path folder = Files.isRegularFile(whole) ? whole.getParent() : whole;
        return new Chosen(
                FromJournal.of(folder, Optional.empty(), reading),
                reading.state().opening().map(State.Opening::protocol),
                reading.state().opening().map(each -> each.event().seed()).orElse(0L));
    }

    Archived session() {
        return values.session();
    }

    /** The folder's name, by which it is spoken of. */
    String name() {
        return Names.of(session());
    }
}
