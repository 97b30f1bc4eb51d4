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
        return joined(file, "\n    ");
    }

    /**
     * The same to be given away, where lines are broken by somebody else: {@code file:line: what;
     * help}, the file without its folders, which may tell who the tester is.
     */
    public String inOneSentence() {
        return joined(file.substring(file.replace('\\', '/').lastIndexOf('/') + 1), "; ");
    }

    private String joined(String name, String between) {
        String place = line == 0 ? name + ": " + what : name + ":" + line + ": " + what;
        return help.isEmpty() ? place : place + between + help;
    }
}
