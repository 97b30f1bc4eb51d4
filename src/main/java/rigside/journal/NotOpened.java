package rigside.journal;

/**
 * A session's journal cannot be created or opened for writing: it is open elsewhere, damaged, or
 * the folder cannot be written. {@link #getMessage()} says so in the tester's words.
 */
public final class NotOpened extends Exception {
    private static final long serialVersionUID = 1;

    private final String help;

    public NotOpened(String what, String help) {
        super(what);
        this.help = help;
    }

    /**
     * A failure behind it.
     *
     * @param what what is so, in the tester's words
     * @param help what to do
     */
    public NotOpened(String what, String help, Exception cause) {
        super(what, cause);
        this.help = help;
    }

    /** What to do. */
    public String help() {
        return help;
    }
}
