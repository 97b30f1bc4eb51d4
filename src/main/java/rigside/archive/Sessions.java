package rigside.archive;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Choosing among sessions. */
public final class Sessions {
    private Sessions() {}

    /**
     * The sessions on the same question with the same wearer that were begun before one, the
     * earliest first: a new plan on an old question has to say how often it was asked. Invented
     * sessions are no earlier plans of a real one, nor the other way round.
     *
     * @param among all sessions, itself among them or not
     * @param session begun at some time; without a wearer's code it has no earlier ones
     */
    public static List<Archived> earlierOn(List<Archived> among, Archived session) {
        Optional<Archived.Followed> protocol = session.protocol();
        Optional<Instant> begun = session.begun().map(ZonedDateTime::toInstant);
        if (protocol.isEmpty() || begun.isEmpty() || session.wearer().isEmpty()) {
            return List.of();
        }
        return among.stream()
                .filter(each -> each.simulated() == session.simulated())
                .filter(each -> Whose.same(each, session))
                .filter(each -> each.begun().filter(at -> isBefore(at, begun.get())).isPresent())
                .filter(
                        each ->
                                each.protocol()
                                        .filter(other -> isSameQuestion(protocol.get(), other))
                                        .isPresent())
                .sorted(Comparator.comparing(each -> each.begun().orElseThrow().toInstant()))
                .toList();
    }

    private static boolean isBefore(ZonedDateTime at, Instant begun) {
        return at.toInstant().isBefore(begun);
    }

    private static boolean isSameQuestion(Archived.Followed one, Archived.Followed other) {
        return one.hash().equals(other.hash())
                || (one.title().equals(other.title()) && one.question().equals(other.question()));
    }
}
