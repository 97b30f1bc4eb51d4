package rigside.protocol;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import rigside.yaml.Problem;

/** The protocols that come with the program, as they are in the jar. */
public final class Shipped {
    private Shipped() {}

    /** What lies in the folders, so that a new file is tested by itself. */
    public static Stream<String> names() {
        return Stream.of("protocols", "demo")
                .flatMap(
                        folder -> {
                            try (Stream<Path> files = Files.list(Path.of(folder))) {
                                return files
                                        .map(file -> folder + "/" + file.getFileName())
                                        .filter(name -> name.endsWith(".yaml"))
                                        .filter(name -> !name.endsWith(".rig.yaml"))
                                        .sorted()
                                        .toList()
                                        .stream();
                            } catch (IOException e) {
                                throw new UncheckedIOException(e);
                            }
                        });
    }

    public static String text(String name) {
        try (InputStream stream = Shipped.class.getResourceAsStream("/" + name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Protocol protocol(String name) {
        return ((Read.Good) ProtocolReader.read(name, text(name))).protocol();
    }

    public static List<Problem> problems(String text) {
        Read read = ProtocolReader.read("file.yaml", text);
        return read instanceof Read.Bad bad ? bad.problems() : List.of();
    }
}
