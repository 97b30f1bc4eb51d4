package rigside.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

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
