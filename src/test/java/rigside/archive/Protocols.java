package rigside.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import rigside.protocol.Protocol;
import rigside.protocol.ProtocolReader;
import rigside.protocol.Read;

/** The demonstration's protocol, and others that differ from it in a word or two. */
final class Protocols {
    private Protocols() {}

    static Protocol demo() {
        return with("", "");
    }

    /** With every place of some words given others. */
    static Protocol with(String words, String others) {
        return read(Path.of("demo", "prefilter-disc.yaml"), words, others);
    }

    /** One that comes with the program, in which nothing is worn. */
    static Protocol check() {
        return read(Path.of("protocols", "instrument-check.yaml"), "", "");
    }

    private static Protocol read(Path file, String words, String others) {
        try {
            String text = Files.readString(file);
            return ((Read.Good)
                            ProtocolReader.read(
                                    "disc.yaml",
                                    words.isEmpty() ? text : text.replace(words, others)))
                    .protocol();
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }
}
