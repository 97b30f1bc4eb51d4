package rigside.journal;

/**
 * Something in a session folder that keeps it from being gone on with; what comes before it can
 * still be read.
 *
 * @param file the name of the file as the tester knows it
 * @param line the line, from 1; 0 when it is the file as a whole
 * @param what what is wrong, in one plain sentence
 * @param help what to do; may be empty
 */
public record Damage(String file, int line, String what, String help) {

    /** {@code file:line: what}, and the help on a line of its own. */
    @Override
    public String toString() {
        return joined("\n    ");
    }

    /** The same where lines are broken by somebody else: {@code file:line: what; help}. */
    public String inOneSentence() {
        return joined("; ");
    }

    private String joined(String between) {
        String place = line == 0 ? file + ": " + what : file + ":" + line + ": " + what;
        return help.isEmpty() ? place : place + between + help;
    }
}
