package rigside.yaml;

/**
 * One thing wrong in a file, told so that a non-programmer can mend it.
 *
 * @param file the name of the file as the tester knows it
 * @param line its line, from 1
 * @param column its column, from 1
 * @param what what is wrong, one plain sentence, the offending value quoted
 * @param help what to do or write instead; may be empty
 */
public record Problem(String file, int line, int column, String what, String help) {

    /** {@code file:line:column: what}, and the help on a line of its own. */
    @Override
    public String toString() {
        String place = file + ":" + line + ":" + column + ": " + what;
        return help.isEmpty() ? place : place + "\n    " + help;
    }
}
