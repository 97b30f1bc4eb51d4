package rigside.desk;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import rigside.archive.Archive;

/** The sessions being read beside the drawing. */
final class Listing {
    private final Aside<Outcome> work;
    private final AtomicReference<String> progress;

    private Listing(Aside<Outcome> work, AtomicReference<String> progress) {
        this.work = work;
        this.progress = progress;
    }

    /**
     * What came of it.
     *
     * @param sessions all of them, the latest first; none when there was trouble
     * @param trouble why they cannot be read, if so
     */
    record Outcome(List<SessionList.Line> sessions, Optional<IOException> trouble) {}

    static Listing begin(Archive archive, Executor executor) {
        AtomicReference<String> progress = new AtomicReference<>("reading the sessions ...");
        return new Listing(Aside.begin(executor, () -> outcome(archive, progress)), progress);
    }

    private static Outcome outcome(Archive archive, AtomicReference<String> progress) {
        try {
            return new Outcome(
                    SessionList.lines(
                            archive.list(
                                    (read, all) ->
                                            progress.set(
                                                    "reading "
                                                            + read
                                                            + " of "
                                                            + all
                                                            + " sessions"))),
                    Optional.empty());
        } catch (IOException unreadable) {
            return new Outcome(List.of(), Optional.of(unreadable));
        }
    }

    Optional<Outcome> found() {
        return work.found();
    }

    /** The same for who waits a little. */
    Optional<Outcome> within(Duration patience) {
        return work.within(patience);
    }

    String progress() {
        return progress.get();
    }
}
