package rigside.bench;

/** There is no terminal to draw on; the message says so to the tester. */
public final class NoTerminal extends Exception {
    private static final long serialVersionUID = 1L;

    NoTerminal(String message) {
        super(message);
    }
}
