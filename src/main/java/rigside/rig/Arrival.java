package rigside.rig;

/** What comes from a feed, in the order it came. */
sealed interface Arrival {
    /** When, in nanoseconds of session time. */
    long at();

    /**
     * A line.
     *
     * @param text without its end
     * @param whole whether it was short enough to be kept whole
     */
    record Line(long at, String text, boolean whole) implements Arrival {}

    /** A line that stood there before anything was followed: only a header in it matters. */
    record Before(long at, String text) implements Arrival {}

    /** It can be read from now on. */
    record Opened(long at) implements Arrival {}

    /**
     * It cannot be read now; it is tried again.
     *
     * @param why in words
     */
    record Broken(long at, String why) implements Arrival {}

    /** A recorded trace came to its end. */
    record Ended(long at) implements Arrival {}

    /**
     * Its lines are read but cannot be kept on disk.
     *
     * @param why in words
     */
    record NotKept(long at, String why) implements Arrival {}

    /** Lines are kept on disk again. */
    record Kept(long at) implements Arrival {}
}
