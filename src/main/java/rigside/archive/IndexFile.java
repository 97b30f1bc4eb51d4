package rigside.archive;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * The file of the index: a first line that says which form and which version of the program it is
 * of, with the check sum of all that follows.
 *
 * @param sessions the folder of all sessions
 * @param version the version of the program
 */
record IndexFile(Path sessions, String version) {
    static final String NAME = ".index";

    private static final String FIRST_WORDS = "sessions as made from their journals, form ";
    private static final int LONGEST_FIRST_LINE = 200;

    /** Far more than a life at the bench brings. */
    private static final int LONGEST = 1 << 30;

    /** Of a program that was killed while it wrote: older than any writing takes. */
    private static final Duration LEFT_BEHIND = Duration.ofHours(1);

    /** What follows the first line; empty when there is nothing whole of this form and version. */
    Optional<ByteBuffer> read() {
        Path file = sessions.resolve(NAME);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            if (Files.size(file) > LONGEST) {
                return Optional.empty();
            }
            byte[] bytes = Files.readAllBytes(file);
            int first = firstLineEnd(bytes);
            ByteBuffer rest = ByteBuffer.wrap(bytes, first, bytes.length - first).slice();
            byte[] due = firstLine(rest);
            return Arrays.equals(due, 0, due.length, bytes, 0, first)
                    ? Optional.of(rest)
                    : Optional.empty();
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    /** The place after it. */
    private static int firstLineEnd(byte[] bytes) {
        int at = 0;
        while (at < Math.min(bytes.length, LONGEST_FIRST_LINE) && bytes[at] != '\n') {
            at++;
        }
        return Math.min(bytes.length, at + 1);
    }

    private String form() {
        return FIRST_WORDS + Index.FORM + ", version " + version + ", ";
    }

    private byte[] firstLine(ByteBuffer rest) {
        CRC32 sum = new CRC32();
        sum.update(rest.duplicate());
        String line = form() + "check sum " + Long.toHexString(sum.getValue()) + "\n";
        return line.getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Puts another index in the place of the one there is, whole or not at all, whoever else does
     * so at the same time. Where that is not possible everything stays as it is: the index only
     * saves time.
     */
    void write(byte[] rest) {
        Path made =
                sessions.resolve(
                        NAME + "-" + ProcessHandle.current().pid() + "-" + System.nanoTime());
        try {
            try (OutputStream out = Files.newOutputStream(made, StandardOpenOption.CREATE_NEW)) {
                out.write(firstLine(ByteBuffer.wrap(rest)));
                out.write(rest);
            }
            Files.move(made, sessions.resolve(NAME), StandardCopyOption.ATOMIC_MOVE);
            removeLeftBehind();
        } catch (IOException cannotBeKept) {
            remove(made);
        }
    }

    private void removeLeftBehind() throws IOException {
        FileTime old = FileTime.from(Instant.now().minus(LEFT_BEHIND));
        try (DirectoryStream<Path> made = Files.newDirectoryStream(sessions, NAME + "-*")) {
            for (Path each : made) {
                if (Files.getLastModifiedTime(each).compareTo(old) < 0) {
                    remove(each);
                }
            }
        }
    }

    private static void remove(Path made) {
        try {
            Files.deleteIfExists(made);
        } catch (IOException staysThen) {
            return;
        }
    }
}
