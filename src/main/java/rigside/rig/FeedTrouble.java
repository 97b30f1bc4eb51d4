package rigside.rig;

/**
 * A feed fails, or is back.
 *
 * @param feed its id
 * @param kind what it is
 * @param at since when, in nanoseconds of session time
 * @param words for the tester, beginning with the feed's id
 */
public record FeedTrouble(String feed, Kind kind, long at, String words) {
    /** What can be wrong with a feed. */
    public enum Kind {
        /** It cannot be opened, or it broke; it is tried again. */
        BROKEN,
        /** No line came for too long. */
        SILENT,
        /** Readings come at less than half the expected rate. */
        STUTTERING,
        /** A line is not what lines are declared to be, or its value cannot be. */
        NONSENSE,
        /** A recorded trace came to its end. */
        ENDED,
        /** Its lines are read but cannot be kept on disk. */
        NOT_KEPT,
        /** The tube of a switched counter is not where it is wanted. */
        WRONG_SIDE,
        /** All is well again. */
        BACK
    }

    /** Whether this says that trouble is over. */
    public boolean isOver() {
        return kind == Kind.BACK;
    }
}
