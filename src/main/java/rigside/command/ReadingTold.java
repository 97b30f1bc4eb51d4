package rigside.command;

import java.io.PrintWriter;
import java.time.Duration;
import java.time.Instant;
import rigside.archive.Progress;

/**
 * Tells how far a long reading of journals has come: nothing in the first seconds, then rarely, and
 * nothing once it is as good as done.
 */
final class ReadingTold implements Progress {
    private static final Duration QUIET = Duration.ofSeconds(2);

    /** What there is less of is soon read, and not worth a word on the busiest machine. */
    private static final int MANY = 50;

    private final PrintWriter err;
    private Instant next = Instant.now().plus(QUIET);

    ReadingTold(PrintWriter err) {
        this.err = err;
    }

    @Override
    public void reading(int read, int all) {
        Instant now = Instant.now();
        if (all - read >= MANY && now.isAfter(next)) {
            err.println("reading " + read + " of " + all + " sessions");
            err.flush();
            next = now.plus(QUIET);
        }
    }
}
