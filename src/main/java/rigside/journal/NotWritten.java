package rigside.journal;

import java.io.IOException;

/**
 * Events are not in the journal, none of them, and can be appended again. {@link #getMessage()}
 * says why in the tester's words: {@code the journal cannot be written: the disk is full}.
 */
public final class NotWritten extends IOException {
    private static final long serialVersionUID = 1;

    private final String help;

    NotWritten(String what, String help) {
        super(what);
        this.help = help;
    }

    NotWritten(String what, String help, IOException cause) {
        super(what, cause);
        this.help = help;
    }

    /** What to do before trying again. */
    public String help() {
        return help;
    }
}
