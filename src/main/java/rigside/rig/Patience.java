package rigside.rig;

/**
 * A line under a pattern that gives up after a while: some patterns take for ever on some lines,
 * and the session must not wait.
 */
final class Patience implements CharSequence {
    /** A line of the longest length looked at some fifty times over. */
    private static final int MOST_LOOKS = 200_000;

    private final String line;
    private final int[] looks;

    Patience(String line) {
        this(line, new int[1]);
    }

    private Patience(String line, int[] looks) {
        this.line = line;
        this.looks = looks;
    }

    /** Nobody waits any longer. */
    static final class Lost extends RuntimeException {
        private static final long serialVersionUID = 1;

        Lost() {
            super("the pattern takes too long", null, false, false);
        }
    }

    @Override
    public char charAt(int at) {
        if (++looks[0] > MOST_LOOKS) {
            throw new Lost();
        }
        return line.charAt(at);
    }

    @Override
    public int length() {
        return line.length();
    }

    @Override
    public CharSequence subSequence(int from, int to) {
        return new Patience(line.substring(from, to), looks);
    }

    @Override
    public String toString() {
        return line;
    }
}
