package rigside.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import rigside.journal.JournalReader;
import rigside.journal.Reading;
import rigside.session.Event;
import rigside.session.State;

/**
 * All sessions below one folder. A session may be open meanwhile; no journal is changed. What was
 * made of a journal is kept in a hidden file of the folder, and used for as long as the journal
 * stays what it was.
 *
 * @param sessions the folder of all sessions; it need not exist
 * @param version the version of the program: what another one made of the journals is made anew
 */
public record Archive(Path sessions, String version) {

    /**
     * Every session, the one begun last first. A folder that holds no readable session is listed
     * with its damage; hidden folders and plain files are passed over.
     *
     * @throws IOException if the folder itself cannot be read
     */
    public List<Archived> list(Progress progress) throws IOException {
        return all(progress).stream().map(Held::session).toList();
    }

    /**
     * The sessions chosen with the values of their donnings, the one begun last first.
     *
     * @throws IOException if the folder itself cannot be read
     */
    public List<WithValues> withValues(Predicate<Archived> chosen, Progress progress)
            throws IOException {
        List<WithValues> found = new ArrayList<>();
        for (Held each : all(progress)) {
            if (chosen.test(each.session())) {
                found.add(each.withValues());
            }
        }
        return List.copyOf(found);
    }

    /** A session that was read, wherever it lies. */
    public static Archived of(Path folder, Reading reading) {
        return FromJournal.of(folder, Optional.empty(), reading).session();
    }

    /**
     * Every session read anew, whatever was kept, which is made anew with it.
     *
     * @throws IOException if the folder itself cannot be read
     */
    public List<Archived> rebuild(Progress progress) throws IOException {
        Files.deleteIfExists(sessions.resolve(IndexFile.NAME));
        return list(progress);
    }

    private List<Held> all(Progress progress) throws IOException {
        return new Gathering(sessions, version, progress).all();
    }

    /**
     * The folder of the session that a form was begun to be typed in to, and not typed in whole:
     * begun anew, the form would be there twice.
     *
     * @param form the first event of what is to be typed in
     * @throws IOException if the folder of all sessions cannot be read
     */
    public Optional<Path> halfTyped(Event.SessionOpened form) throws IOException {
        return list(Progress.NONE).stream()
                .filter(session -> session.isResumable() && session.paper().isPresent())
                .map(Archived::folder)
                .filter(folder -> isOf(form, JournalReader.read(folder).state()))
                .findFirst();
    }

    private static boolean isOf(Event.SessionOpened form, State state) {
        return state.opening()
                .map(State.Opening::event)
                .filter(
                        begun ->
                                begun.seed() == form.seed()
                                        && begun.paper().equals(form.paper())
                                        && begun.protocolText().equals(form.protocolText()))
                .isPresent();
    }
}
