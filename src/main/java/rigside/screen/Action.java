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
    /** Away with what is typed. */
    CLEAR,
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
    METHOD_PAGE,
    FLAGS_PAGE,
    ENTRIES_PAGE,
    HELP_PAGE,
    UP,
    DOWN,
    PAGE_UP,
    PAGE_DOWN,
    /** To the first line. */
    FIRST,
    /** To the last line. */
    LAST,
    /** Cues heard or not. */
    SOUND,
    LOUDER,
    SOFTER,
    /** Void the selected entry, or strike out the selected donning. */
    VOID,
    /** Amend the selected entry. */
    AMEND,
    /** Leave the program; the session can be resumed. */
    LEAVE
}
