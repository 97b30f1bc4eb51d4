package rigside.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import rigside.session.Recorded;

/** Events written as a journal of their own, as it would have been written when they happened. */
public final class Rewritten {
    private Rewritten() {}

    /**
     * The bytes of the journal's file.
     *
     * @param events at least one, in order
     * @throws NotOpened if there is no room to write it
     * @throws NotWritten likewise
     * @throws IOException likewise
     * @throws rigside.session.DoesNotApply if they do not follow each other
     */
    public static byte[] bytes(List<Recorded> events) throws IOException, NotOpened, NotWritten {
        Path room = Files.createTempDirectory("rigside-");
        try (Journal journal =
                Journal.create(
                        room,
                        "copy",
                        events.get(0).wall(),
                        file -> new Unsynced(Disk.open(file)))) {
            for (Recorded each : events) {
                journal.append(List.of(each.event()), new Stamp(each.wall(), each.at()));
            }
            return Files.readAllBytes(journal.folder().resolve(JournalReader.FILE));
        } finally {
            remove(room);
        }
    }

    /** A file that is read again at once and then thrown away need not outlive a power cut. */
    private record Unsynced(Disk disk) implements Disk {
        @Override
        public void write(ByteBuffer bytes, long position) throws IOException {
            disk.write(bytes, position);
        }

        @Override
        public void force() {}

        @Override
        public void truncate(long length) throws IOException {
            disk.truncate(length);
        }

        @Override
        public void close() throws IOException {
            disk.close();
        }
    }

    private static void remove(Path room) throws IOException {
        try (Stream<Path> all = Files.walk(room)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(each);
            }
        }
    }
}
