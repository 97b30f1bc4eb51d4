package rigside.bench;

import com.googlecode.lanterna.TerminalSize;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The settings of the terminal this program was started from, asked and changed with stty. */
final class Stty {
    private static final TerminalSize UNKNOWN = new TerminalSize(80, 24);

    private Stty() {}

    /** Whether both ends of the program are at a terminal: its keys and its picture. */
    static boolean atTerminal() {
        try {
            Process process =
                    new ProcessBuilder("sh", "-c", "test -t 0 && test -t 1").inheritIO().start();
            return waitFor(process) == 0;
        } catch (IOException noShell) {
            return false;
        }
    }

    /** The settings as they are, in the form {@link #restore} takes; empty without a terminal. */
    static Optional<String> settings() {
        return run("stty", "-g").map(String::strip).filter(text -> !text.isEmpty());
    }

    /**
     * Every key arrives at once, unseen, and as a key: without {@code -isig} and {@code -ixon} some
     * would stop the program or the terminal instead. One call, so no half-set terminal is left.
     */
    static void raw() {
        run("stty", "-icanon", "min", "1", "time", "0", "-echo", "-isig", "-ixon");
    }

    static void restore(String settings) {
        run("stty", settings);
    }

    /**
     * Columns and rows. Lanterna's own way asks the terminal by an escape sequence and reads the
     * answer out of the keys, where the key reader would take it for presses.
     */
    static TerminalSize size() {
        return run("stty", "size").flatMap(Stty::size).orElse(UNKNOWN);
    }

    /** What {@code stty size} printed: rows, then columns; a terminal may not know and say 0. */
    static Optional<TerminalSize> size(String printed) {
        String[] parts = printed.strip().split("\\s+", -1);
        if (parts.length != 2 || !parts[0].matches("\\d{1,4}") || !parts[1].matches("\\d{1,4}")) {
            return Optional.empty();
        }
        int rows = Integer.parseInt(parts[0]);
        int columns = Integer.parseInt(parts[1]);
        return rows == 0 || columns == 0
                ? Optional.empty()
                : Optional.of(new TerminalSize(columns, rows));
    }

    /** What the command printed; empty when it failed. */
    private static Optional<String> run(String... command) {
        try {
            Process process =
                    new ProcessBuilder(List.of(command))
                            .redirectInput(ProcessBuilder.Redirect.INHERIT)
                            .redirectError(ProcessBuilder.Redirect.DISCARD)
                            .start();
            try (InputStream printed = process.getInputStream()) {
                String text = new String(printed.readAllBytes(), StandardCharsets.US_ASCII);
                return waitFor(process) == 0 ? Optional.of(text) : Optional.empty();
            }
        } catch (IOException missing) {
            throw new UncheckedIOException("stty cannot be run", missing);
        }
    }

    /** Waits although interrupted: the terminal has to be put back whatever happens. */
    private static int waitFor(Process process) {
        boolean interrupted = false;
        try {
            while (true) {
                try {
                    return process.waitFor();
                } catch (InterruptedException again) {
                    interrupted = true;
                }
            }
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
