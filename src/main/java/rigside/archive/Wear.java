package rigside.archive;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How often pieces had been worn before each session, counted on over sessions: a piece was worn as
 * often as its protocol says, or as often as earlier sessions left it, whichever is more.
 *
 * @param forgotten by session and piece: how many wearings its protocol leaves out
 */
record Wear(Map<Key, Integer> forgotten) {

    /** The earliest day first; by their opening on one day, for a form may be typed in later. */
    static final Comparator<Archived> IN_ORDER =
            Comparator.comparing((Archived each) -> each.day().orElse(LocalDate.MIN))
                    .thenComparing(
                            each -> each.begun().map(ZonedDateTime::toInstant).orElse(Instant.MIN));

    private record Key(Archived session, String piece) {}

    /** Of sessions in any order. */
    static Wear of(List<WithValues> sessions) {
        Map<String, Integer> worn = new HashMap<>();
        Map<Key, Integer> forgotten = new HashMap<>();
        sessions.stream()
                .sorted(Comparator.comparing(WithValues::session, IN_ORDER))
                .forEach(each -> count(each, worn, forgotten));
        return new Wear(Map.copyOf(forgotten));
    }

    private static void count(
            WithValues session, Map<String, Integer> worn, Map<Key, Integer> forgotten) {
        Map<String, Integer> stated = new HashMap<>();
        Map<String, Integer> after = new HashMap<>();
        for (Archived.Worn each : session.session().conditions()) {
            stated.merge(each.piece(), each.wornBefore(), Math::max);
            for (WithValues.Value value : session.values()) {
                if (value.condition().equals(each.id())) {
                    after.merge(each.piece(), value.wornBefore() + 1, Math::max);
                }
            }
        }
        stated.forEach(
                (piece, before) -> {
                    int missing = Math.max(0, worn.getOrDefault(piece, 0) - before);
                    if (missing > 0) {
                        forgotten.put(new Key(session.session(), piece), missing);
                    }
                    worn.merge(piece, after.getOrDefault(piece, before) + missing, Math::max);
                });
    }

    /** Wearings of a piece before a session that its protocol leaves out. */
    int forgotten(Archived session, String piece) {
        return forgotten.getOrDefault(new Key(session, piece), 0);
    }
}
