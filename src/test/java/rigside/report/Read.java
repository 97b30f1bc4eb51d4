package rigside.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import rigside.protocol.Protocol;
import rigside.protocol.ProtocolReader;

/** Protocols to write down. */
final class Read {
    private Read() {}

    static Protocol shipped(String resource) {
        return of(text(resource));
    }

    static String text(String resource) {
        try (InputStream in = Read.class.getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Protocol of(String text) {
        return ((rigside.protocol.Read.Good) ProtocolReader.read("file.yaml", text)).protocol();
    }
}
