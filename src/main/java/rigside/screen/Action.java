package rigside.screen;

/** What a key does. */
public enum Action {
    GO_ON,
    TRIGGER,
    YES,
    NO,
    /** Stop at once; everything stands still. */
    STOP,
    UNDO,
    NOTE,
    LEAVE_OUT,
    /** The exercise done last, again. */
    RETAKE,
    ABANDON,
    /** No further donnings. */
    END,
    /** Further rounds although everything has settled. */
    MORE,
    STEP_PAGE,
    TALLY_PAGE,
    ENTRIES_PAGE,
    HELP_PAGE,
    UP,
    DOWN,
    /** Void the selected entry, or strike out the selected donning. */
    VOID,
    /** Leave the program; the session can be resumed. */
    LEAVE
}
