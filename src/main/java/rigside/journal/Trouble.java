package rigside.journal;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.util.Locale;

/** What went wrong with a file, in the tester's words. */
final class Trouble {
    private Trouble() {}

    static String words(IOException trouble) {
        String message = String.valueOf(trouble.getMessage());
        String lower = message.toLowerCase(Locale.ROOT);
        if (lower.contains("no space left") || lower.contains("not enough space")) {
            return "the disk is full";
        }
        if (lower.contains("quota")) {
            return "the space allowed on this disk is used up";
        }
        if (lower.contains("read-only")) {
            return "the disk can only be read";
        }
        if (trouble instanceof AccessDeniedException || lower.contains("permission denied")) {
            return "this program is not allowed to";
        }
        if (trouble instanceof NoSuchFileException) {
            return "it is not there";
        }
        return "the system says '" + message + "'";
    }
}
