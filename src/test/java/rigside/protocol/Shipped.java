package rigside.protocol;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import rigside.yaml.Problem;

/** The protocols that come with the program, as they are in the jar. */
final class Shipped {
    private Shipped() {}

    static Stream<String> names() {
        return Stream.of(
                "protocols/seal-and-breathing.yaml",
                "protocols/ambient-eight-exercises.yaml",
                "protocols/breathing-only.yaml",
                "demo/prefilter-disc.yaml");
    }

    static String text(String name) {
        try (InputStream stream = Shipped.class.getResourceAsStream("/" + name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Protocol protocol(String name) {
        return ((Read.Good) ProtocolReader.read(name, text(name))).protocol();
    }

    static List<Problem> problems(String text) {
        Read read = ProtocolReader.read("file.yaml", text);
        return read instanceof Read.Bad bad ? bad.problems() : List.of();
    }
}
