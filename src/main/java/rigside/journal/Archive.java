package rigside.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rigside.session.Event;
import rigside.session.State;

/** All sessions below one folder. */
public final class Archive {
    private Archive() {}

    /**
     * Every session, the one begun last first. A folder that holds no readable session is listed
     * with its damage; hidden folders and plain files are passed over. Nothing on disk is changed,
     * and a session may be open meanwhile.
     *
     * @param sessions the folder of all sessions; when it is not there, the list is empty
     * @throws IOException if the folder itself cannot be read
     */
    public static List<Listed> list(Path sessions) throws IOException {
        if (!Files.isDirectory(sessions)) {
            return List.of();
        }
        try (Stream<Path> below = Files.list(sessions)) {
            return below.filter(Archive::mayHoldASession).toList().parallelStream()
                    .map(folder -> Listed.of(folder, JournalReader.read(folder)))
                    .sorted(
                            Comparator.comparing(Archive::begun)
                                    .thenComparing(Listed::folder)
                                    .reversed())
                    .toList();
        }
    }

    /**
     * The folder of the session that a form was begun to be typed in to, and not typed in whole:
     * begun anew, the form would be there twice.
     *
     * @param form the first event of what is to be typed in
     * @throws IOException if the folder of all sessions cannot be read
     */
    public static Optional<Path> halfTyped(Path sessions, Event.SessionOpened form)
            throws IOException {
        return list(sessions).stream()
                .filter(listed -> listed.isResumable() && listed.paper().isPresent())
                .map(Listed::folder)
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
    private static Instant begun(Listed listed) {
        return listed.begun()
                .map(ZonedDateTime::toInstant)
                .orElseGet(() -> changed(listed.folder()));
    }

    private static Instant changed(Path folder) {
        try {
            return Files.getLastModifiedTime(folder).toInstant();
        } catch (IOException unknown) {
            return Instant.EPOCH;
        }
    }
}
