package rigside.rig;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.LockSupport;

/**
 * A file that another program appends to, followed from its end. A file that became shorter is read
 * from its beginning, and so is a new one that took its name, after the last line of the old one.
 *
 * <p>It is asked for news every 10 ms: a line is stamped that much late at most.
 */
final class FileWire implements Wire {
    private static final long ASK_NANOS = 10_000_000L;

    /** How many times it is asked for news between two looks whether the name has a new file. */
    private static final int ASKS_A_LOOK = 25;

    private final Path file;
    private final Optional<LineSplitter.Split> firstLine;
    private final boolean midLine;
    private FileChannel channel;
    private Object key;
    private long position;
    private int asks;

    private FileWire(Path file, FileChannel channel, Object key, boolean fromBegin)
            throws IOException {
        this.file = file;
        this.channel = channel;
        this.key = key;
        this.position = fromBegin ? 0 : channel.size();
        this.midLine = position > 0 && !endsLine(channel, position);
        this.firstLine = fromBegin ? Optional.empty() : first(channel);
    }

    /**
     * Opens a file at its end; one that was not there before at its beginning, since all of it was
     * written meanwhile.
     */
    static Wire.Opener follow(Path file) {
        AtomicBoolean awaited = new AtomicBoolean();
        return () -> {
            try {
                Wire wire = open(file, awaited.get());
                awaited.set(false);
                return wire;
            } catch (NoSuchFileException none) {
                awaited.set(true);
                throw new IOException("there is no such file", none);
            }
        };
    }

    private static Wire open(Path file, boolean fromBegin) throws IOException {
        BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
        if (!attributes.isRegularFile()) {
            throw new IOException(
                    attributes.isDirectory()
                            ? "it is a folder"
                            : "it is no plain file; write 'pipe:' for a pipe");
        }
        return new FileWire(
                file,
                FileChannel.open(file, StandardOpenOption.READ),
                attributes.fileKey(),
                fromBegin);
    }

    private static boolean endsLine(FileChannel channel, long size) throws IOException {
        ByteBuffer last = ByteBuffer.allocate(1);
        channel.read(last, size - 1);
        return last.get(0) == '\n' || last.get(0) == '\r';
    }

    private static Optional<LineSplitter.Split> first(FileChannel channel) throws IOException {
        ByteBuffer begin = ByteBuffer.allocate(LineSplitter.LONGEST);
        channel.read(begin, 0);
        List<LineSplitter.Split> lines = new ArrayList<>();
        new LineSplitter(false).take(begin.array(), begin.position(), lines::add);
        return lines.stream().findFirst().filter(line -> !line.bytes().isBlank());
    }

    @Override
    public int read(byte[] into) throws IOException {
        int count = more(into);
        if (count > 0) {
            return count;
        }
        if (++asks % ASKS_A_LOOK == 0 && isReplaced()) {
            int last = more(into);
            if (last > 0) {
                asks--;
                return last;
            }
            takeNew();
            return 0;
        }
        LockSupport.parkNanos(ASK_NANOS);
        return 0;
    }

    private int more(byte[] into) throws IOException {
        if (channel.size() < position) {
            position = 0;
        }
        int count = channel.read(ByteBuffer.wrap(into), position);
        position += Math.max(0, count);
        return Math.max(0, count);
    }

    /** A name without a file is not replaced yet: the old one may still grow. */
    private boolean isReplaced() {
        try {
            Object now = Files.readAttributes(file, BasicFileAttributes.class).fileKey();
            return !Objects.equals(now, key);
        } catch (IOException goneForNow) {
            return false;
        }
    }

    private void takeNew() throws IOException {
        FileChannel next = FileChannel.open(file, StandardOpenOption.READ);
        Object nextKey = Files.readAttributes(file, BasicFileAttributes.class).fileKey();
        channel.close();
        channel = next;
        key = nextKey;
        position = 0;
    }

    @Override
    public boolean isMidLine() {
        return midLine;
    }

    @Override
    public Optional<LineSplitter.Split> firstLine() {
        return firstLine;
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
