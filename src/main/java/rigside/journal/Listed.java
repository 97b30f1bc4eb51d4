package rigside.journal;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import rigside.protocol.Condition;
import rigside.protocol.Protocol;
import rigside.session.Event;
import rigside.session.Recorded;
import rigside.session.Schedule;
import rigside.session.State;

/**
 * One session in a list.
 *
 * @param folder its folder
 * @param title the protocol's title; empty when there is no readable one
 * @param question the protocol's question; empty when there is no readable one
 * @param conditions the titles of the conditions, the reference first
 * @param begun when it was opened; empty when nothing readable was recorded
 * @param last when the last readable event happened
 * @param closed whether it is closed
 * @param simulated whether its values are invented
 * @param paper the form it was entered from, in words; empty when it was run at the bench
 * @param completeRounds how many rounds are complete
 * @param damage what is wrong with it; empty when nothing is
 */
public record Listed(
        Path folder,
        String title,
        String question,
        List<String> conditions,
        Optional<ZonedDateTime> begun,
        Optional<ZonedDateTime> last,
        boolean closed,
        boolean simulated,
        Optional<String> paper,
        int completeRounds,
        List<Damage> damage) {
    public Listed {
        conditions = List.copyOf(conditions);
        damage = List.copyOf(damage);
    }

    static Listed of(Path folder, Reading reading) {
        State state = reading.state();
        Optional<State.Opening> opening = state.opening();
        Optional<Protocol> protocol = opening.map(State.Opening::protocol);
        return new Listed(
                folder,
                protocol.map(Protocol::title).orElse(""),
                protocol.map(Protocol::question).orElse(""),
                protocol.map(Listed::titles).orElse(List.of()),
                reading.events().stream().findFirst().map(Recorded::wall),
                reading.last().map(Recorded::wall),
                state.course().closed(),
                opening.filter(each -> each.event().simulated()).isPresent(),
                opening.flatMap(each -> each.event().paper()).map(Event.Paper::words),
                protocol.isEmpty() ? 0 : Schedule.completeRounds(state).size(),
                reading.damage());
    }

    private static List<String> titles(Protocol protocol) {
        return protocol.conditions().stream().map(Condition::title).toList();
    }

    /** Whether it can be gone on with. */
    public boolean isResumable() {
        return begun.isPresent() && !closed && damage.isEmpty();
    }
}
