package rigside.archive;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** One line of the index with its end, as a piece of all its bytes. */
final class Piece {
    private final byte[] bytes;
    private final int from;
    private final int end;

    private Piece(byte[] bytes, int from, int end) {
        this.bytes = bytes;
        this.from = from;
        this.end = end;
    }

    /**
     * The first line.
     *
     * @throws IllegalArgumentException if there is no whole one
     */
    static Piece first(byte[] bytes) {
        return at(bytes, 0);
    }

    /**
     * The line after this one.
     *
     * @throws IllegalArgumentException if there is no whole one
     */
    Piece next() {
        return at(bytes, end);
    }

    boolean isLast() {
        return end == bytes.length;
    }

    private static Piece at(byte[] bytes, int from) {
        int at = from;
        while (at < bytes.length && bytes[at] != '\n') {
            at++;
        }
        if (at == bytes.length) {
            throw new IllegalArgumentException("a line without its end");
        }
        return new Piece(bytes, from, at + 1);
    }

    Cells cells() throws IOException {
        return new Cells(bytes, from, end - from);
    }

    /** Without its end. */
    String text() {
        return new String(bytes, from, end - from - 1, StandardCharsets.UTF_8);
    }

    void writeTo(ByteArrayOutputStream out) {
        out.write(bytes, from, end - from);
    }
}
