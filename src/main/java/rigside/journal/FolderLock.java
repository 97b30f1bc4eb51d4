package rigside.journal;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * The claim of one journal on its session's folder. The system gives it up when the program ends,
 * however it ends.
 *
 * <p>On some systems closing any channel on the lock file gives up every lock this program holds on
 * it. So a second claim within the program is refused by a list, before the file is touched, and
 * nothing else ever opens it.
 */
final class FolderLock implements Closeable {
    static final String FILE = "lock";

    private static final Set<Path> HELD = new HashSet<>();

    private final Path folder;
    private final FileChannel channel;

    private FolderLock(Path folder, FileChannel channel) {
        this.folder = folder;
        this.channel = channel;
    }

    /** The claim; empty when the folder is claimed already, here or by another program. */
    static Optional<FolderLock> claim(Path folder) throws IOException {
        Path real = folder.toRealPath();
        synchronized (HELD) {
            if (HELD.contains(real)) {
                return Optional.empty();
            }
            FileChannel channel =
                    FileChannel.open(
                            real.resolve(FILE),
                            StandardOpenOption.CREATE,
                            StandardOpenOption.WRITE);
            if (!locked(channel)) {
                return Optional.empty();
            }
            HELD.add(real);
            return Optional.of(new FolderLock(real, channel));
        }
    }

    private static boolean locked(FileChannel channel) throws IOException {
        boolean locked = false;
        try {
            FileLock lock = channel.tryLock();
            locked = lock != null;
        } catch (OverlappingFileLockException heldByThisProgram) {
            locked = false;
        } finally {
            if (!locked) {
                channel.close();
            }
        }
        return locked;
    }

    @Override
    public void close() throws IOException {
        synchronized (HELD) {
            HELD.remove(folder);
            channel.close();
        }
    }
}
