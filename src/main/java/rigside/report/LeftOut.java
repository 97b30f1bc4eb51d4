package rigside.report;

/** What is left out of a copy of a session that is made to be shared. */
public enum LeftOut {
    WEARER_CODE("wearer code", "wearer codes"),
    WEARER("answer about the wearer", "answers about the wearer"),
    UNKNOWN_SUBJECT(
            "fact of which the protocol does not say what it is about",
            "facts of which the protocol does not say what they are about"),
    FREE_WORDS(
            "free answer in a form or to an observation",
            "free answers in forms and to observations"),
    NOTE("written note", "written notes"),
    REASON("typed reason", "typed reasons"),
    RIG(
            "text about instruments, with their devices",
            "texts about instruments, with their devices"),
    PLACE("folder or path", "folders and paths"),
    TROUBLE("word of an instrument's trouble", "words of instruments' troubles"),
    SELF_TEST("terminal's name, and cues heard", "terminals' names, and cues heard");

    private final String one;
    private final String many;

    LeftOut(String one, String many) {
        this.one = one;
        this.many = many;
    }

    /** So many of it, in words. */
    public String words(int count) {
        return count + " " + (count == 1 ? one : many);
    }
}
