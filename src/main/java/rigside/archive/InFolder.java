package rigside.archive;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.journal.JournalReader;

/**
 * A folder that is, or may be, a session's.
 *
 * @param journal its journal's file as it is now; empty when there is none
 */
record InFolder(Path folder, Optional<Archived.OnDisk> journal) {

    /**
     * Every folder in one; hidden folders and plain files are passed over.
     *
     * @throws IOException if the folder cannot be read
     */
    static List<InFolder> in(Path sessions) throws IOException {
        List<InFolder> found = new ArrayList<>();
        try (DirectoryStream<Path> below = Files.newDirectoryStream(sessions)) {
            for (Path each : below) {
                if (!each.getFileName().toString().startsWith(".")) {
                    at(each).ifPresent(found::add);
                }
            }
        } catch (DirectoryIteratorException unreadable) {
            throw unreadable.getCause();
        }
        return found;
    }

    String name() {
        return folder.getFileName().toString();
    }

    private static Optional<InFolder> at(Path path) {
        Optional<Archived.OnDisk> journal = onDisk(JournalReader.fileIn(path));
        return journal.isPresent() || Files.isDirectory(path)
                ? Optional.of(new InFolder(path, journal))
                : Optional.empty();
    }

    private static Optional<Archived.OnDisk> onDisk(Path file) {
        try {
            BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
            return now.isRegularFile()
                    ? Optional.of(
                            new Archived.OnDisk(now.size(), now.lastModifiedTime().toInstant()))
                    : Optional.empty();
        } catch (IOException noneThere) {
            return Optional.empty();
        }
    }
}
