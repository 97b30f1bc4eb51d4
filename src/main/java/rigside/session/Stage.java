package rigside.session;

/** The three parts of a session. */
public enum Stage {
    /** Facts and steps before the first donning. */
    BEFORE,
    DONNING,
    /** Steps after the last donning. */
    AFTER
}
