package rigside.rig;

import java.io.Closeable;
import java.io.IOException;
import java.util.Optional;

/** An open way to an instrument. */
interface Wire extends Closeable {
    /**
     * Waits a little for bytes.
     *
     * @return how many came, 0 when none did, -1 when it has come to its end
     * @throws IOException if it broke; the message says how, in words
     */
    int read(byte[] into) throws IOException;

    /** Whether reading may have begun in the middle of a line. */
    boolean isMidLine();

    /** The first line of a file that is followed from its end. */
    default Optional<LineSplitter.Split> firstLine() {
        return Optional.empty();
    }

    /** Opens it. */
    interface Opener {
        /**
         * A new wire.
         *
         * @throws IOException if it cannot be opened; the message says why, in words
         */
        Wire open() throws IOException;
    }
}
