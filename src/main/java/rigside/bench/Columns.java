package rigside.bench;

/** How wide what is printed may be. */
public final class Columns {
    private static final int USUAL = 80;

    private Columns() {}

    /** As many as the terminal has; 80 where what is printed goes somewhere else. */
    public static int now() {
        return Stty.atTerminal() ? Stty.size().getColumns() : USUAL;
    }
}
