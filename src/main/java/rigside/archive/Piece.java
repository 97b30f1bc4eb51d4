package rigside.archive;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;

/**
 * One piece of the index: its length in four bytes, and its cells.
 *
 * @param all the bytes of all pieces
 * @param from where its cells begin
 * @param length of its cells
 */
record Piece(ByteBuffer all, int from, int length) {
    /**
     * The first piece.
     *
     * @throws IllegalArgumentException if there is no whole one
     */
    static Piece first(ByteBuffer all) {
        return at(all, 0);
    }

    /**
     * The piece after this one.
     *
     * @throws IllegalArgumentException if there is no whole one
     */
    Piece next() {
        return at(all, from + length);
    }

    boolean isLast() {
        return from + length == all.limit();
    }

    private static Piece at(ByteBuffer all, int before) {
        int from = before + Integer.BYTES;
        int length = from <= all.limit() ? all.getInt(before) : -1;
        if (length < 0 || length > all.limit() - from) {
            throw new IllegalArgumentException("a piece without its end");
        }
        return new Piece(all, from, length);
    }

    Cells cells() {
        return new Cells(all.slice(from, length));
    }

    void writeTo(ByteArrayOutputStream out) {
        byte[] piece = new byte[Integer.BYTES + length];
        all.get(from - Integer.BYTES, piece);
        out.writeBytes(piece);
    }
}
