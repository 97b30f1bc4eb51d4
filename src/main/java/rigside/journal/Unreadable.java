package rigside.journal;

/** A line that does not say what happened; the message says what is wrong with it. */
final class Unreadable extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String help;

    Unreadable(String what) {
        this(what, "");
    }

    Unreadable(String what, String help) {
        super(what);
        this.help = help;
    }

    /** What to do; empty when there is nothing special to advise. */
    String help() {
        return help;
    }
}
