package rigside.journal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.text.Normalizer;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** The folder of one session: how it is named, made and made to last. */
final class SessionFolder {
    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmm", Locale.ROOT);
    private static final int LONGEST_SLUG = 40;
    private static final int MOST_IN_A_MINUTE = 999;

    private SessionFolder() {}

    /**
     * Makes a new folder below {@code sessions}, named after the minute and the protocol: {@code
     * 2026-11-25-0916-disc}, then {@code 2026-11-25-0916-disc-2}.
     */
    static Path create(Path sessions, ZonedDateTime wall, String protocolName) throws IOException {
        Files.createDirectories(sessions);
        String name = MINUTE.format(wall) + "-" + slug(protocolName);
        for (int count = 1; count <= MOST_IN_A_MINUTE; count++) {
            Path folder = sessions.resolve(count == 1 ? name : name + "-" + count);
            if (isMade(folder)) {
                return folder;
            }
        }
        throw new FileAlreadyExistsException(sessions.resolve(name).toString());
    }

    private static boolean isMade(Path folder) throws IOException {
        try {
            Files.createDirectory(folder);
            return true;
        } catch (FileAlreadyExistsException taken) {
            return false;
        }
    }

    /** Takes back a folder in which nothing was recorded. */
    static void remove(Path folder) {
        try {
            Files.deleteIfExists(folder.resolve(JournalReader.FILE));
            Files.deleteIfExists(folder.resolve(FolderLock.FILE));
            Files.deleteIfExists(folder);
        } catch (IOException staysThen) {
            return;
        }
    }

    /** A file's name without folder and ending, in small letters, digits and hyphens. */
    static String slug(String protocolName) {
        String file = protocolName.substring(protocolName.replace('\\', '/').lastIndexOf('/') + 1);
        String name = file.replaceFirst("(?<=.)\\.[A-Za-z0-9]{1,5}$", "");
        String plain =
                Normalizer.normalize(name, Normalizer.Form.NFKD)
                        .replaceAll("\\p{M}+", "")
                        .toLowerCase(Locale.ROOT)
                        .replaceAll("[^a-z0-9]+", "-");
        String cut = plain.length() > LONGEST_SLUG ? plain.substring(0, LONGEST_SLUG) : plain;
        String slug = cut.replaceAll("^-+|-+$", "");
        return slug.isEmpty() ? "session" : slug;
    }

    /**
     * Makes the names in a folder last through a power cut. Where the system cannot, nothing
     * happens: it has other ways, or none.
     */
    static void force(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notPossibleHere) {
            return;
        }
    }
}
