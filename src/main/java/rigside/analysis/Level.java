package rigside.analysis;

/** How a value stands to the level a protocol requires. */
public enum Level {
    /** No level is required. */
    NONE,
    REACHED,
    MISSED,
    /** Missing values, or the counter's detection limit, leave it open. */
    OPEN
}
