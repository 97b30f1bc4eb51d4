package rigside.journal;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** One open file, as much of it as a journal needs; tests put a failing one in its place. */
interface Disk extends Closeable {
    /** Writes all the bytes from a position on, or throws; some may be written then. */
    void write(ByteBuffer bytes, long position) throws IOException;

    /** Returns when everything written is on the disk itself. */
    void force() throws IOException;

    /** Cuts the file off. */
    void truncate(long length) throws IOException;

    /** Opens a file that is there. */
    interface Opener {
        Disk open(Path file) throws IOException;
    }

    /** The real disk. */
    static Disk open(Path file) throws IOException {
        return new File(FileChannel.open(file, StandardOpenOption.WRITE));
    }

    /** A file of the real disk. */
    record File(FileChannel channel) implements Disk {
        @Override
        public void write(ByteBuffer bytes, long position) throws IOException {
            long at = position;
            while (bytes.hasRemaining()) {
                at += channel.write(bytes, at);
            }
        }

        @Override
        public void force() throws IOException {
            channel.force(true);
        }

        @Override
        public void truncate(long length) throws IOException {
            channel.truncate(length);
        }

        @Override
        public void close() throws IOException {
            channel.close();
        }
    }
}
