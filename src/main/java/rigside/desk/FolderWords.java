package rigside.desk;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Why a file cannot be written, in words. */
public final class FolderWords {
    private FolderWords() {}

    public static String of(IOException fault) {
        if (fault instanceof AccessDeniedException) {
            return "its folder may not be written to";
        }
        if (fault instanceof NoSuchFileException) {
            return "there is no such folder";
        }
        if (fault instanceof FileAlreadyExistsException) {
            return "a file stands where its folder would be";
        }
        return fault instanceof FileSystemException system && system.getReason() != null
                ? system.getReason()
                : String.valueOf(fault.getMessage());
    }
}
