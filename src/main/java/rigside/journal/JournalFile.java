package rigside.journal;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * The bytes of a journal, growing by all or nothing. After a failure the file is opened anew, since
 * a channel is gone for good once its disk was pulled out or its thread interrupted.
 */
final class JournalFile implements Closeable {
    /** Where a torn line is kept, beside the journal. */
    static final String TORN_FILE = "journal.torn";

    private final Path file;
    private final Disk.Opener opener;
    private long length;
    private boolean dirty;
    private Disk disk;

    /**
     * A file that exists.
     *
     * @param length how much of it is trusted
     */
    JournalFile(Path file, long length, Disk.Opener opener) {
        this.file = file;
        this.length = length;
        this.opener = opener;
    }

    long length() {
        return length;
    }

    /** Returns when the bytes are on the disk itself; when it throws, none of them count. */
    void append(byte[] bytes) throws IOException {
        try {
            if (disk == null) {
                disk = opener.open(file);
            }
            if (dirty) {
                disk.truncate(length);
            }
            dirty = true;
            disk.write(ByteBuffer.wrap(bytes), length);
            disk.force();
            dirty = false;
            length += bytes.length;
        } catch (IOException trouble) {
            takeBack(trouble);
            throw trouble;
        }
    }

    /** If this fails too, the next append begins with it. */
    private void takeBack(IOException trouble) {
        if (disk == null) {
            return;
        }
        try {
            disk.truncate(length);
            disk.force();
            dirty = false;
        } catch (IOException again) {
            trouble.addSuppressed(again);
        }
        try {
            close();
        } catch (IOException again) {
            trouble.addSuppressed(again);
        }
    }

    /** Moves what was cut off into a file of its own, with every byte of it. */
    static void setAside(Path file, TornLine torn) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            in.skipNBytes(torn.offset());
            keep(file.resolveSibling(TORN_FILE), in.readNBytes(Math.toIntExact(torn.length())));
        }
        try (FileChannel journal = FileChannel.open(file, StandardOpenOption.WRITE)) {
            journal.truncate(torn.offset());
            journal.force(true);
        }
    }

    /** Each torn line on a line of its own. */
    private static void keep(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel =
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            boolean whole = bytes[bytes.length - 1] == '\n';
            ByteBuffer kept = ByteBuffer.allocate(bytes.length + (whole ? 0 : 1)).put(bytes);
            if (!whole) {
                kept.put((byte) '\n');
            }
            new Disk.File(channel).write(kept.flip(), channel.size());
            channel.force(true);
        }
    }

    @Override
    public void close() throws IOException {
        Disk open = disk;
        disk = null;
        if (open != null) {
            open.close();
        }
    }
}
