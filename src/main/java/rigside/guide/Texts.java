package rigside.guide;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The texts that come with the program. */
final class Texts {
    private Texts() {}

    /**
     * A text below {@code guide}.
     *
     * @throws IllegalStateException if there is none of this name
     */
    static String read(String name) {
        try (InputStream stream = Texts.class.getResourceAsStream("/guide/" + name)) {
            if (stream == null) {
                throw new IllegalStateException("the guide has no text " + name);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
