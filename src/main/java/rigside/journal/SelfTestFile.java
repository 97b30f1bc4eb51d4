package rigside.journal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.ZonedDateTime;
import java.util.Optional;
import rigside.session.Event;
import rigside.session.Recorded;

/** What the last self-test found, kept between sessions as the line that a journal would have. */
public final class SelfTestFile {
    private static final String NAME = "self-test.json";

    private SelfTestFile() {}

    /**
     * What is kept; empty when there is nothing, or nothing that can be read: it is made anew in
     * two minutes.
     *
     * @param home the folder below which everything is kept
     */
    public static Optional<Event.SelfTested> read(Path home) {
        try {
            String text = Files.readString(home.resolve(NAME), StandardCharsets.UTF_8);
            Optional<ObjectNode> line = Json.read(text.strip());
            return line.map(EventReader::read)
                    .map(Recorded::event)
                    .filter(Event.SelfTested.class::isInstance)
                    .map(Event.SelfTested.class::cast);
        } catch (IOException | Unreadable lost) {
            return Optional.empty();
        }
    }

    /**
     * Keeps what was found in place of what was kept.
     *
     * @return where it is kept
     * @throws IOException if it cannot be written; then what was kept still is
     */
    public static Path write(Path home, Event.SelfTested found, ZonedDateTime wall)
            throws IOException {
        Files.createDirectories(home);
        Path file = home.resolve(NAME);
        Path next = home.resolve(NAME + ".new");
        Files.writeString(next, EventWriter.write(new Recorded(1, wall, 0, found), false) + "\n");
        return Files.move(next, file, StandardCopyOption.REPLACE_EXISTING);
    }
}
