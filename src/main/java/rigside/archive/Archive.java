package rigside.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rigside.journal.JournalReader;
import rigside.journal.Reading;
import rigside.session.Event;
import rigside.session.State;

/**
 * All sessions below one folder. A session may be open meanwhile; no journal is changed.
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
        return all(progress).map(WithValues::session).toList();
    }

    /**
     * The sessions chosen with the values of their donnings, the one begun last first.
     *
     * @throws IOException if the folder itself cannot be read
     */
    public List<WithValues> withValues(Predicate<Archived> chosen, Progress progress)
            throws IOException {
        return all(progress).filter(each -> chosen.test(each.session())).toList();
    }

    /** A session that was read, wherever it lies. */
    public static Archived of(Path folder, Reading reading) {
        return FromJournal.of(folder, Optional.empty(), reading).session();
    }

    private Stream<WithValues> all(Progress progress) throws IOException {
        if (!Files.isDirectory(sessions)) {
            return Stream.of();
        }
        try (Stream<Path> below = Files.list(sessions)) {
            return below
                    .filter(Archive::mayHoldASession)
                    .map(
                            folder ->
                                    FromJournal.of(
                                            folder, Optional.empty(), JournalReader.read(folder)))
                    .sorted(Comparator.comparing(WithValues::session, LATEST_FIRST))
                    .toList()
                    .stream();
        }
    }

    private static final Comparator<Archived> LATEST_FIRST =
            Comparator.comparing(Archive::begun).thenComparing(Archived::folder).reversed();

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

    private static boolean mayHoldASession(Path path) {
        return Files.isDirectory(path) && !path.getFileName().toString().startsWith(".");
    }

    /** A folder without a first event goes by its own time. */
    private static Instant begun(Archived session) {
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
