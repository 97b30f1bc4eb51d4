package rigside.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import rigside.measure.TimedInhalation;

/**
 * The tester's times from a signal to the trigger, try after try.
 *
 * @param taken those that count, in seconds, in whole microseconds
 */
record Reactions(List<Double> taken) {
    static final Reactions NONE = new Reactions(List.of());

    /** So many make a spread good to about a quarter (the 68 % limits of a chi-square with 9). */
    static final int WANTED = 10;

    /** Nobody reacts sooner: such a press was a guess (common practice, no source). */
    static final double FASTEST_SECONDS = 0.1;

    /** Whoever takes longer was not waiting for it (common practice, no source). */
    static final double SLOWEST_SECONDS = 1.5;

    /** The signal comes after a time that cannot be guessed. */
    private static final double SHORTEST_WAIT_SECONDS = 1.5;

    private static final double LONGEST_WAIT_SECONDS = 4.5;

    Reactions {
        taken = List.copyOf(taken);
    }

    /** What a press is worth. */
    enum Worth {
        COUNTS,
        TOO_EARLY,
        TOO_LATE
    }

    /** How long to wait before the next signal, in seconds. */
    static double pause(RandomGenerator random) {
        return SHORTEST_WAIT_SECONDS
                + (LONGEST_WAIT_SECONDS - SHORTEST_WAIT_SECONDS) * random.nextDouble();
    }

    /**
     * What a press is worth.
     *
     * @param seconds since the signal; below 0 before it
     */
    static Worth worth(double seconds) {
        if (!(seconds >= FASTEST_SECONDS)) {
            return Worth.TOO_EARLY;
        }
        return seconds > SLOWEST_SECONDS ? Worth.TOO_LATE : Worth.COUNTS;
    }

    /** With one more that counts. */
    Reactions with(double seconds) {
        List<Double> more = new ArrayList<>(taken);
        more.add(Math.rint(seconds * 1e6) / 1e6);
        return new Reactions(more);
    }

    boolean areEnough() {
        return taken.size() >= WANTED;
    }

    /** The spread of a start and a stop by this tester, in seconds; empty with too few. */
    OptionalDouble pairSpread() {
        return TimedInhalation.pairSpread(taken);
    }
}
