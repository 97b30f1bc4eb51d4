package rigside.desk;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * The folder of the tester's own protocols, as far as the program writes into it: new files only,
 * never over one that is there.
 *
 * @param folder need not exist yet
 */
record OwnFolder(Path folder) {
    /** As many files of one name are tried. */
    private static final int MOST = 1000;

    /**
     * Copies a protocol that comes with the program, and the rig file beside it, under its own name
     * or the first free one such as {@code NAME-2.yaml}.
     *
     * @return where the copy lies
     * @throws IOException if it cannot be written; the message is for the tester
     */
    Path copy(ProtocolFile shipped) throws IOException {
        String bare = ProtocolFile.bare(shipped.name());
        for (int number = 1; number <= MOST; number++) {
            String name = bare + (number == 1 ? "" : "-" + number) + ".yaml";
            if (Files.exists(folder.resolve(name))
                    || Files.exists(folder.resolve(ProtocolFile.rigName(name)))) {
                continue;
            }
            Path copy = write(name, shipped.text());
            if (!shipped.rigText().isEmpty()) {
                write(ProtocolFile.rigName(name), shipped.rigText());
            }
            return copy;
        }
        throw new IOException("'" + folder + "' holds too many files called " + bare);
    }

    /**
     * Writes a new file.
     *
     * @throws FileAlreadyExistsException if there is one of that name
     * @throws IOException if it cannot be written; nothing of it is left then
     */
    Path write(String name, String text) throws IOException {
        Files.createDirectories(folder);
        Path file = folder.resolve(name);
        try (OutputStream out =
                Files.newOutputStream(
                        file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            fill(file, out, text);
        }
        return file;
    }

    private static void fill(Path file, OutputStream out, String text) throws IOException {
        try {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException full) {
            Files.deleteIfExists(file);
            throw full;
        }
    }
}
