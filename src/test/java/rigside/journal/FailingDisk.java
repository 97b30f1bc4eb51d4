package rigside.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The real disk with a fault that can be switched on, and a log of what was asked of it. Shared by
 * all files it opens, as a disk is.
 */
final class FailingDisk implements Disk.Opener {
    /** What stops working. */
    enum Fault {
        NONE,
        OPEN,
        /** Half of the bytes are written before it fails, as on a disk that fills up. */
        WRITE,
        FORCE,
        /** Nothing works any more, not even taking back what half of a write left. */
        WRITE_AND_TRUNCATE
    }

    Fault fault = Fault.NONE;
    final List<String> asked = new ArrayList<>();

    @Override
    public Disk open(Path file) throws IOException {
        asked.add("open");
        failWhen(Fault.OPEN, "Input/output error");
        return new Faulty(Disk.open(file));
    }

    private void failWhen(Fault when, String why) throws IOException {
        if (fault == when) {
            throw new IOException(why);
        }
    }

    private final class Faulty implements Disk {
        private final Disk real;

        Faulty(Disk real) {
            this.real = real;
        }

        @Override
        public void write(ByteBuffer bytes, long position) throws IOException {
            asked.add("write " + bytes.remaining());
            if (fault == Fault.WRITE || fault == Fault.WRITE_AND_TRUNCATE) {
                real.write(bytes.slice(0, bytes.remaining() / 2), position);
                throw new IOException("No space left on device");
            }
            real.write(bytes, position);
        }

        @Override
        public void force() throws IOException {
            asked.add("force");
            failWhen(Fault.FORCE, "Input/output error");
            real.force();
        }

        @Override
        public void truncate(long length) throws IOException {
            asked.add("truncate");
            failWhen(Fault.WRITE_AND_TRUNCATE, "Input/output error");
            real.truncate(length);
        }

        @Override
        public void close() throws IOException {
            asked.add("close");
            real.close();
        }
    }
}
