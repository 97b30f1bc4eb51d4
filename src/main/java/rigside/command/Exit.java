package rigside.command;

/** The exit codes of every command. */
public final class Exit {
    /** What was asked is done. */
    public static final int DONE = 0;

    /** The input, a file or a journal, has problems; all were printed. */
    public static final int PROBLEMS = 1;

    /** The command was used wrongly. */
    public static final int USAGE = 2;

    /** A fault of the program. */
    public static final int FAULT = 3;

    private Exit() {}
}
