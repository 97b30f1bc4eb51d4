package rigside.journal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import rigside.session.Recorded;
import rigside.session.State;

/**
 * What a journal holds.
 *
 * @param file the journal's file
 * @param events all events up to the first damage, in order
 * @param state what they lead to; {@link State#START} when there are none
 * @param torn the last line, if it was cut off; none of the events came from it
 * @param damage what is wrong; when there is any, the session can be looked at but not gone on with
 * @param hashed what the running hash of these events' lines comes to; empty where none carries one
 */
public record Reading(
        Path file,
        List<Recorded> events,
        State state,
        Optional<TornLine> torn,
        List<Damage> damage,
        Optional<Fingerprint> hashed) {
    public Reading {
        events = List.copyOf(events);
        damage = List.copyOf(damage);
    }

    /** Whether the session can be looked at but not gone on with. */
    public boolean isReadOnly() {
        return !damage.isEmpty();
    }

    /** The last event; empty when there is none. */
    public Optional<Recorded> last() {
        return events.isEmpty() ? Optional.empty() : Optional.of(events.get(events.size() - 1));
    }
}
