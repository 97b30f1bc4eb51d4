package rigside.rig;

import java.nio.file.Path;

/** Where the lines of a feed come from. */
public sealed interface Origin {
    /** In words for messages, such as {@code serial port /dev/ttyUSB0}. */
    String words();

    /**
     * A serial port, or a pseudo terminal.
     *
     * @param port its path or name
     * @param baud bits a second
     * @param bits data bits, 5 to 8
     * @param parity the check bit
     * @param stopBits 1 or 2
     */
    record Serial(String port, int baud, int bits, Parity parity, int stopBits) implements Origin {
        @Override
        public String words() {
            return "serial port " + port;
        }
    }

    /** The check bit of a serial line. */
    enum Parity {
        NONE,
        ODD,
        EVEN
    }

    /** A file that another program appends to; what it held before is not read. */
    record Appended(Path file) implements Origin {
        @Override
        public String words() {
            return "file " + file;
        }
    }

    /** A named pipe that another program writes to. */
    record Piped(Path pipe) implements Origin {
        @Override
        public String words() {
            return "pipe " + pipe;
        }
    }

    /** A recorded trace, given again with its timing. */
    record Replayed(Path trace, TraceForm form) implements Origin {
        @Override
        public String words() {
            return "recorded trace " + trace;
        }
    }
}
