package rigside.rig;

import java.io.IOException;
import java.nio.channels.ClosedChannelException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;

/** Why a wire cannot be used, in words. */
final class Faults {
    private Faults() {}

    static String words(IOException trouble) {
        if (trouble instanceof AccessDeniedException) {
            return "you may not read it";
        }
        if (trouble instanceof NoSuchFileException) {
            return "it is not there";
        }
        String message = trouble.getMessage();
        return trouble instanceof ClosedChannelException || message == null || message.isBlank()
                ? "it broke"
                : message;
    }
}
