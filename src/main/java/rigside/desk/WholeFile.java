package rigside.desk;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** A file that is written whole or not at all, and over none that is there unless that is asked. */
public final class WholeFile {
    private WholeFile() {}

    /**
     * Writes it beside its place first, so that nobody ever finds half of it.
     *
     * @param replacing whether one that is there may be replaced
     * @throws FileAlreadyExistsException if there is one and it may not
     * @throws IOException if it cannot be written; what was there is as it was
     */
    public static void write(Path file, byte[] bytes, boolean replacing) throws IOException {
        if (!replacing && Files.exists(file)) {
            throw new FileAlreadyExistsException(file.toString());
        }
        if (Files.isDirectory(file)) {
            throw new FileSystemException(file.toString(), null, "a folder of that name is there");
        }
        Path beside = file.resolveSibling("." + file.getFileName() + ".part");
        try {
            Files.write(beside, bytes);
            if (replacing) {
                Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
            } else {
                Files.move(beside, file);
            }
        } finally {
            Files.deleteIfExists(beside);
        }
    }
}
