package rigside.command;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Why a file cannot be read, in words, and what to do. */
final class FileWords {
    private FileWords() {}

    static String of(Path file, IOException fault) {
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
                : "the file cannot be read: " + fault.getMessage();
    }
}
