package rigside.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.List;
import rigside.session.Recorded;

/** Journals written as fast as files are, for tests that need many: nothing waits for the disk. */
public final class Unsynced {
    private Unsynced() {}

    /**
     * Writes a whole session.
     *
     * @param sessions the folder of all sessions
     * @return its folder
     */
    public static Path write(Path sessions, String protocolName, List<Recorded> events)
            throws Exception {
        try (Journal journal =
                Journal.create(sessions, protocolName, events.get(0).wall(), Unsynced::open)) {
            for (Recorded each : events) {
                journal.append(List.of(each.event()), new Stamp(each.wall(), each.at()));
            }
            return journal.folder();
        }
    }

    private static Disk open(Path file) throws IOException {
        Disk real = Disk.open(file);
        return new Disk() {
            @Override
            public void write(ByteBuffer bytes, long position) throws IOException {
                real.write(bytes, position);
            }

            @Override
            public void force() {}

            @Override
            public void truncate(long length) throws IOException {
                real.truncate(length);
            }

            @Override
            public void close() throws IOException {
                real.close();
            }
        };
    }
}
