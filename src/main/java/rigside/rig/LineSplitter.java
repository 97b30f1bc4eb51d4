package rigside.rig;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;

/**
 * Makes lines of bytes. A line ends with a line feed, a carriage return, or both; of a line longer
 * than {@value #LONGEST} bytes only the beginning is kept, so that a stream without ends of lines
 * takes no memory.
 */
final class LineSplitter {
    /** The most bytes of a line that are kept. */
    static final int LONGEST = 4096;

    private final ByteArrayOutputStream line = new ByteArrayOutputStream();
    private boolean skipping;
    private boolean tooLong;
    private boolean afterReturn;

    /**
     * A splitter at the beginning of a stream.
     *
     * @param midLine whether the stream may begin in the middle of a line, of which the rest is
     *     then left out: the end of a number would look like a number
     */
    LineSplitter(boolean midLine) {
        this.skipping = midLine;
    }

    /**
     * A line as it came.
     *
     * @param bytes each character one of its bytes (Latin 1)
     * @param whole whether it was short enough to be kept whole
     */
    record Split(String bytes, boolean whole) {
        /** As text: UTF-8 where it is, else each byte one character. */
        String text() {
            try {
                return StandardCharsets.UTF_8
                        .newDecoder()
                        .decode(ByteBuffer.wrap(bytes.getBytes(StandardCharsets.ISO_8859_1)))
                        .toString();
            } catch (CharacterCodingException other) {
                return bytes;
            }
        }
    }

    /** Takes more bytes and gives the lines they complete. */
    void take(byte[] bytes, int length, Consumer<Split> lines) {
        for (int at = 0; at < length; at++) {
            byte next = bytes[at];
            boolean ends = next == '\r' || (next == '\n' && !afterReturn);
            if (ends) {
                end(lines);
            } else if (next != '\n') {
                keep(next);
            }
            afterReturn = next == '\r';
        }
    }

    private void keep(byte next) {
        if (skipping) {
            return;
        }
        if (line.size() < LONGEST) {
            line.write(next);
        } else {
            tooLong = true;
        }
    }

    private void end(Consumer<Split> lines) {
        if (!skipping) {
            lines.accept(new Split(line.toString(StandardCharsets.ISO_8859_1), !tooLong));
        }
        skipping = false;
        tooLong = false;
        line.reset();
    }
}
