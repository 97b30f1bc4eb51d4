package rigside.bench;

import java.util.Locale;
import java.util.Optional;

/**
 * Compares the wall clock with the steady one. While the computer sleeps the steady clock may stand
 * still, and a wall clock that is set leaps; either shows as the two drifting apart at once.
 */
final class ClockWatch {
    /** Slewing by a time service is far slower; reading the two clocks takes far less. */
    private static final double LEAST_SECONDS = 0.5;

    private long steady;
    private long wall;

    /**
     * @param steadyNanos the steady clock now
     * @param wallMillis the wall clock now
     */
    ClockWatch(long steadyNanos, long wallMillis) {
        this.steady = steadyNanos;
        this.wall = wallMillis;
    }

    /** What has happened to the clocks since they were read last, in words; mostly nothing. */
    Optional<String> read(long steadyNanos, long wallMillis) {
        double apart = (wallMillis - wall) / 1e3 - (steadyNanos - steady) / 1e9;
        steady = steadyNanos;
        wall = wallMillis;
        return Math.abs(apart) < LEAST_SECONDS
                ? Optional.empty()
                : Optional.of(
                        String.format(
                                Locale.ROOT,
                                "the computer's clock jumped %s by %.1f s: %s",
                                apart > 0 ? "ahead" : "back",
                                Math.abs(apart),
                                apart > 0 ? "it slept, or its clock was set" : "it was set"));
    }
}
