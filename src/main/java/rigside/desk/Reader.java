package rigside.desk;

import java.io.IOException;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Function;
import rigside.archive.Archive;
import rigside.archive.Archived;

/** Keeps the sessions of the home page as they are on disk, read beside the drawing. */
final class Reader {
    /** What is read within it is never drawn as being read. */
    private static final Duration PATIENCE = Duration.ofMillis(250);

    private final Archive archive;
    private Optional<Listing> listing = Optional.empty();

    /** Whether they have to be read once more after this. */
    private boolean again;

    /** Finds the session that is to be selected once they are read. */
    private Function<SessionList, Optional<Archived>> wish = Reader::none;

    Reader(Archive archive) {
        this.archive = archive;
    }

    private static Optional<Archived> none(SessionList read) {
        return Optional.empty();
    }

    boolean isReading() {
        return listing.isPresent();
    }

    /** Reads them, beside whatever else has to be done meanwhile. */
    void read() {
        again = listing.isPresent();
        if (listing.isEmpty()) {
            begin();
        }
    }

    /**
     * With what is read by now, waiting a little for it.
     *
     * @param selected finds the session that is then to be selected, if any is
     */
    Desk look(Desk desk, Function<SessionList, Optional<Archived>> selected) {
        wish = selected;
        return look(desk, PATIENCE);
    }

    private void begin() {
        listing = Optional.of(Listing.begin(archive, Aside.THREADS));
    }

    /** Selects nothing any more by itself: the tester is about to. */
    void leaveSelection() {
        wish = Reader::none;
    }

    /** With what is read by now, or how far that is. */
    Desk look(Desk desk) {
        return look(desk, Duration.ZERO);
    }

    private Desk look(Desk desk, Duration patience) {
        if (listing.isEmpty()) {
            return desk;
        }
        Optional<Listing.Outcome> outcome = listing.get().within(patience);
        if (outcome.isEmpty()) {
            return desk.with(desk.sessions().reading(listing.get().progress()));
        }
        listing = Optional.empty();
        if (again) {
            again = false;
            begin();
        }
        Optional<IOException> trouble = outcome.get().trouble();
        return trouble.isPresent()
                ? desk.with(desk.sessions().reading("")).saying(words(trouble.get()))
                : selected(desk.with(desk.sessions().with(outcome.get().sessions())));
    }

    private Desk selected(Desk read) {
        Optional<Archived> session = wish.apply(read.sessions());
        if (!isReading()) {
            leaveSelection();
        }
        return read.on(session);
    }

    private String words(IOException trouble) {
        return "'" + archive.sessions() + "' cannot be read: " + trouble.getMessage();
    }
}
