package rigside.protocol;

import rigside.measure.Quantity;

/**
 * What has to hold before a test starts, read off the particle counter.
 *
 * @param kind what is read
 * @param limit the concentration it is held against
 * @param seconds how long it is read
 * @param help what to do when it does not hold
 */
public record Gate(Kind kind, Quantity limit, double seconds, String help) {
    /** What a gate reads. */
    public enum Kind {
        /** Filtered air through the mask's sample tube: the counter must count next to nothing. */
        ZERO,
        /** The air of the room: it must hold enough particles. */
        AMBIENT
    }

    /** Equal but for the rounding of doubles is equal. */
    private static final double ROUNDING = 1e-9;

    /** Whether a concentration read opens it. */
    public boolean isMetBy(Quantity read) {
        return switch (kind) {
            case ZERO -> read.si() <= limit.si() * (1 + ROUNDING);
            case AMBIENT -> read.si() >= limit.si() * (1 - ROUNDING);
        };
    }

    /** What is needed, in words: {@code at least 1000 /cm3}. */
    public String needs() {
        return (kind == Kind.ZERO ? "at most " : "at least ") + limit;
    }
}
