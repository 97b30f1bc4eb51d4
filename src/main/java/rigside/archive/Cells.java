package rigside.archive;

import java.nio.ByteBuffer;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads the cells of one piece of the index one after another, as {@link IndexPieces} wrote them.
 * What is not what it should be is mostly noticed, with an {@link IllegalArgumentException}, a
 * {@link java.nio.BufferUnderflowException} or a {@link java.time.DateTimeException}; that nothing
 * changed since it was written is what the check sum of the whole is for.
 */
final class Cells {
    private final ByteBuffer left;

    Cells(ByteBuffer bytes) {
        this.left = bytes;
    }

    /** Reads one thing from the next cells. */
    interface Of<T> {
        T read(Cells cells);
    }

    /** Every text there is, halves of surrogate pairs included, which have no UTF-8. */
    String text() {
        char[] text = new char[length(Character.BYTES)];
        for (int at = 0; at < text.length; at++) {
            text[at] = left.getChar();
        }
        return new String(text);
    }

    boolean flag() {
        return left.get() != 0;
    }

    int count() {
        return left.getInt();
    }

    long size() {
        return left.getLong();
    }

    double number() {
        return left.getDouble();
    }

    OptionalDouble numberIfAny() {
        return flag() ? OptionalDouble.of(number()) : OptionalDouble.empty();
    }

    <E extends Enum<E>> E word(Class<E> kind) {
        return Enum.valueOf(kind, text());
    }

    Instant instant() {
        return Instant.ofEpochSecond(size(), count());
    }

    ZonedDateTime zoned() {
        return ZonedDateTime.ofInstant(instant(), ZoneId.of(text()));
    }

    <T> Optional<T> ifAny(Of<T> what) {
        return flag() ? Optional.of(what.read(this)) : Optional.empty();
    }

    <T> List<T> list(Of<T> what) {
        int length = length(0);
        List<T> all = new ArrayList<>();
        while (all.size() < length) {
            all.add(what.read(this));
        }
        return all;
    }

    /** Of what follows; nothing longer than what is left is begun. */
    private int length(int bytesEach) {
        int length = count();
        if (length < 0 || (long) length * bytesEach > left.remaining()) {
            throw new IllegalArgumentException("more than there is");
        }
        return length;
    }
}
