package rigside.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import rigside.session.Recorded;

/** A session written once, as it was after so many events: each time in a folder of its own. */
public final class Cut {
    private final Path home;
    private final List<String> lines;

    private Cut(Path home, List<String> lines) {
        this.home = home;
        this.lines = List.copyOf(lines);
    }

    /**
     * Writes a whole session.
     *
     * @param home an empty folder, or none yet
     */
    public static Cut of(Path home, List<Recorded> events) throws Exception {
        Files.createDirectories(home);
        try (Journal journal = Journal.create(home, "small.yaml", events.get(0).wall())) {
            for (Recorded each : events) {
                journal.append(List.of(each.event()), new Stamp(each.wall(), each.at()));
            }
            return new Cut(home, Files.readAllLines(journal.folder().resolve(JournalReader.FILE)));
        }
    }

    /** The session's folder after its first {@code count} events. */
    public Path after(int count) throws IOException {
        Path folder = Files.createDirectories(home.resolve("cut-" + count).resolve("session"));
        Files.write(folder.resolve(JournalReader.FILE), lines.subList(0, count));
        return folder;
    }
}
