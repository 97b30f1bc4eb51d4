package rigside.archive;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Sessions that are there more than once: a folder copied aside, or written to be shared. Told
 * twice they would count twice.
 */
final class Copies {

    /** What went on last, and so may have been amended since, stays; then the shortest name. */
    private static final Comparator<Archived> FIRST =
            Comparator.comparing(
                            (Archived each) ->
                                    each.last().map(ZonedDateTime::toInstant).orElse(Instant.MIN))
                    .reversed()
                    .thenComparing(each -> each.name().length())
                    .thenComparing(Archived::name);

    private Copies() {}

    /** No two sessions of one protocol begin in the same moment of the same clock. */
    private record Opening(Instant begun, String hash, boolean simulated) {}

    /**
     * The folders to be passed over, so that each session is there once.
     *
     * @param sessions in any order; those that were never begun are nobody's copies
     */
    static Set<Path> among(List<Archived> sessions) {
        Set<Opening> known = new HashSet<>();
        Set<Path> copies = new HashSet<>();
        for (Archived each : sessions.stream().sorted(FIRST).toList()) {
            if (each.begun().isPresent()
                    && each.protocol().isPresent()
                    && !known.add(opening(each))) {
                copies.add(each.folder());
            }
        }
        return copies;
    }

    private static Opening opening(Archived session) {
        return new Opening(
                session.begun().orElseThrow().toInstant(),
                session.protocol().orElseThrow().hash(),
                session.simulated());
    }
}
