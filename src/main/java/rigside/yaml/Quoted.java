package rigside.yaml;

import java.util.Optional;

/** Text as a file writes it, so that it is read back as it is, whatever it holds. */
public final class Quoted {
    private Quoted() {}

    /** In double quotes: nothing within them means anything to a reader of YAML. */
    public static String text(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    /** Why a text cannot stand in a file as one line; empty when it can. */
    public static Optional<String> refusal(String line) {
        if (line.isBlank()) {
            return Optional.of("nothing is written");
        }
        int length = line.codePointCount(0, line.length());
        if (length > Entry.LONGEST_LINE) {
            return Optional.of(
                    "it is " + length + " characters long, of at most " + Entry.LONGEST_LINE);
        }
        return line.codePoints()
                .filter(point -> !Characters.isSafe(point))
                .mapToObj(point -> "it holds the hidden character " + Characters.name(point))
                .findFirst();
    }
}
