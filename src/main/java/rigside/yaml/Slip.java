package rigside.yaml;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is wrong with one line by itself, where the library only sees that the lines around it make
 * no sense.
 *
 * @param column from 0
 * @param what what is wrong
 * @param help what to do
 */
record Slip(int column, String what, String help) {
    private static final Pattern TYPOGRAPHIC_DASH =
            Pattern.compile("( *)([\u2010-\u2015\u2212\u2022])\\s.*");

    private static final Pattern DASH_WITHOUT_SPACE =
            Pattern.compile("( *)-([a-z][a-z0-9-]*):(?: .*)?");

    private static final Pattern COLON_WITHOUT_SPACE =
            Pattern.compile("( *(?:- +)?)([a-z][a-z0-9-]*):(\\S.*)");

    /** The first of the lines that has one. */
    static Optional<Placed> first(String[] lines, List<Integer> rows) {
        return rows.stream()
                .filter(row -> row >= 0 && row < lines.length)
                .flatMap(row -> of(lines[row]).map(slip -> new Placed(row, slip)).stream())
                .findFirst();
    }

    /**
     * A slip in its line.
     *
     * @param row from 0
     */
    record Placed(int row, Slip slip) {}

    static Optional<Slip> of(String line) {
        return oddSpace(line)
                .or(() -> dash(line))
                .or(() -> dashWithoutSpace(line))
                .or(() -> colonWithoutSpace(line));
    }

    /** A space that looks like one and is none to the language, where the language needs one. */
    private static Optional<Slip> oddSpace(String line) {
        int colon = line.indexOf(':');
        for (int i = 0; i < line.length(); i++) {
            char letter = line.charAt(i);
            boolean odd = letter != ' ' && Character.isSpaceChar(letter);
            if (odd && (line.substring(0, i).isBlank() || i == colon + 1)) {
                return Optional.of(
                        new Slip(
                                i,
                                "the space here is not an ordinary one but "
                                        + Characters.name(letter),
                                "delete it and type a space"));
            }
        }
        return Optional.empty();
    }

    private static Optional<Slip> dash(String line) {
        Matcher dash = TYPOGRAPHIC_DASH.matcher(line);
        return dash.matches()
                ? Optional.of(
                        new Slip(
                                dash.end(1),
                                "an item begins with '-', not with " + Words.quoted(dash.group(2)),
                                "write an ordinary '-' and a space"))
                : Optional.empty();
    }

    private static Optional<Slip> dashWithoutSpace(String line) {
        Matcher dash = DASH_WITHOUT_SPACE.matcher(line);
        return dash.matches()
                ? Optional.of(
                        new Slip(
                                dash.end(1),
                                "the '-' of this item has no space after it",
                                "write '- " + dash.group(2) + ": ...'"))
                : Optional.empty();
    }

    private static Optional<Slip> colonWithoutSpace(String line) {
        Matcher colon = COLON_WITHOUT_SPACE.matcher(line);
        return colon.matches()
                ? Optional.of(
                        new Slip(
                                colon.end(1),
                                "the key "
                                        + Words.quoted(colon.group(2))
                                        + " has no space after its colon",
                                "write '" + colon.group(2) + ": ' and then its value"))
                : Optional.empty();
    }
}
