package rigside.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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
     * What is there now. A folder that holds no readable session is there with its damage; hidden
     * folders and plain files are passed over.
     *
     * @throws IOException if the folder itself cannot be read
     */
    public Contents contents(Progress progress) throws IOException {
        return new Contents(new Gathering(sessions, version, progress).all());
    }

    /**
     * Every session there is now, the one begun last first.
     *
     * @throws IOException if the folder itself cannot be read
     */
    public List<Archived> list(Progress progress) throws IOException {
        return contents(progress).sessions();
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
