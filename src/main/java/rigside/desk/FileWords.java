package rigside.desk;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Why a file cannot be read or written, in words, and what to do. */
public final class FileWords {
    private FileWords() {}

    /** Why it cannot be read. */
    public static String of(Path file, IOException fault) {
        if (fault instanceof NoSuchFileException) {
            return "there is no such file";
        }
        if (fault instanceof AccessDeniedException) {
            return "the file may not be read; ask its owner";
        }
        if (fault instanceof CharacterCodingException) {
            return "not UTF-8 text; save it as UTF-8";
        }
        return Files.isDirectory(file)
                ? "this is a folder; name a file in it"
                : "the file cannot be read: " + reason(fault);
    }

    /** Why something cannot be written where it was meant to be. */
    static String notWritten(IOException fault) {
        return fault instanceof AccessDeniedException denied
                ? "nothing may be written to '" + denied.getFile() + "'"
                : reason(fault);
    }

    /** What the system says, without the path that the sentence has already. */
    private static String reason(IOException fault) {
        return fault instanceof FileSystemException system && system.getReason() != null
                ? system.getReason()
                : fault.getMessage();
    }
}
