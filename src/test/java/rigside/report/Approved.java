package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Pages a person has looked at and found right, one text file each.
 *
 * <p>{@code mvn test -Drigside.approve=true} writes what is drawn now over them; the difference is
 * then reviewed like any other change.
 */
final class Approved {
    private Approved() {}

    private static final Path FOLDER = Path.of("src/test/resources/report");

    static void matches(String name, String drawn) {
        if (Boolean.getBoolean("rigside.approve")) {
            write(FOLDER.resolve(name), drawn);
            return;
        }
        String approved = read("/report/" + name);
        assertEquals(
                approved,
                drawn,
                () ->
                        name
                                + " is drawn differently\n--- approved\n"
                                + approved
                                + "--- drawn\n"
                                + drawn
                                + "---\nlook at both; if the drawn one is right, run the tests"
                                + " with -Drigside.approve=true\n");
    }

    private static void write(Path file, String text) {
        try {
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(String resource) {
        try (InputStream in = Approved.class.getResourceAsStream(resource)) {
            return in == null
                    ? "(none yet)\n"
                    : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
