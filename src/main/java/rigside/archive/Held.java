package rigside.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import rigside.journal.JournalReader;
import rigside.journal.Reading;

/**
 * A session at hand.
 *
 * @param pieces its pieces in the index; empty where it has no journal
 * @param isKept whether the index may go by it from now on
 */
record Held(Archived session, Optional<Index.Pieces> pieces, boolean isKept) {
    /** No file system tells times apart that are further from each other than this. */
    private static final Duration COARSEST_CLOCK = Duration.ofSeconds(2);

    /** As the index has it. */
    static Held of(Index.Kept kept) {
        return new Held(kept.session(), Optional.of(kept.pieces()), true);
    }

    /**
     * As the journal tells it now.
     *
     * @param now the time, before it is read
     */
    static Held read(InFolder found, Instant now) {
        Reading reading = JournalReader.read(found.folder());
        WithValues session = FromJournal.of(found.folder(), found.journal(), reading);
        Optional<Index.Pieces> pieces = found.journal().map(each -> Index.Pieces.of(session));
        return new Held(session.session(), pieces, mayBeKept(session.session(), now));
    }

    /**
     * What changes within the clock's tick in which it was read shows no change. What is wrong with
     * a file as a whole may be mended without changing it.
     */
    private static boolean mayBeKept(Archived session, Instant now) {
        return session.journal()
                        .filter(file -> file.changed().plus(COARSEST_CLOCK).isBefore(now))
                        .isPresent()
                && session.damage().stream().allMatch(each -> each.line() > 0);
    }

    WithValues withValues() {
        return new WithValues(session, pieces.map(Index.Pieces::readValues).orElse(List.of()));
    }

    /** When it was begun; a folder without a first event goes by its own time. */
    Instant begun() {
        return session.begun()
                .map(ZonedDateTime::toInstant)
                .orElseGet(() -> changed(session.folder()));
    }

    private static Instant changed(Path folder) {
        try {
            return Files.getLastModifiedTime(folder).toInstant();
        } catch (IOException unknown) {
            return Instant.EPOCH;
        }
    }
}
