package rigside.screen;

/** What a key does away from a session. */
public enum HomeAction {
    UP,
    DOWN,
    PAGE_UP,
    PAGE_DOWN,
    /** To the first line. */
    FIRST,
    /** To the last line. */
    LAST,
    /** Type words that have to be found in a session. */
    SEARCH,
    /** Leave the words searched for as they are. */
    FOUND,
    /** Take back the last character of the words. */
    ERASE,
    /** Show all sessions again. */
    SHOW_ALL,
    /** From the protocols to the sessions and back. */
    OTHER_LIST,
    /** Start a session by the selected protocol. */
    START,
    /** Take the selected session up again. */
    RESUME,
    /** Read through the selected session. */
    REVIEW,
    /** Amend or strike out what was entered wrong in the closed session that is reviewed. */
    CORRECT,
    /** Read the problems of the selected protocol's file. */
    PROBLEMS,
    /** Change what answers for the instruments. */
    RIG,
    /** Change the speed of the simulated rig. */
    SPEED,
    /** Read about the selected protocol. */
    ABOUT,
    /** Read the selected protocol as one page, step by step. */
    OUTLINE,
    /**
     * Read what to think over in the selected protocol, and what its plan can be expected to bring.
     */
    CHECK,
    /** Play a whole session by the selected protocol, invented, and read what came out. */
    REHEARSE,
    /** Copy the selected protocol into the tester's own folder. */
    COPY,
    /** Write a new protocol by answering questions. */
    DRAFT,
    HELP,
    METHOD,
    /** Write the report of the session that is read into its folder. */
    REPORT,
    FLAGS,
    /** Back to where the page was opened from. */
    BACK,
    /** Leave the program. */
    LEAVE
}
