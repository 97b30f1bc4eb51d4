package rigside.screen;

/** What a key does while a protocol is drafted. */
public enum DraftAction {
    /** Take the answer, or go on to saving. */
    TAKE,
    /** To the question before. */
    BACK,
    UP,
    DOWN,
    PAGE_UP,
    PAGE_DOWN,
    TICK,
    /** Clear what is typed. */
    CLEAR,
    /** Take the last character typed away. */
    ERASE,
    /** Ask whether to leave. */
    LEAVE,
    /** Leave with nothing written. */
    LEAVE_NOW,
    /** Go on after all. */
    STAY
}
