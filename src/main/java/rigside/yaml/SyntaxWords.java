package rigside.yaml;

import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** The YAML library's complaints in plain words, placed inside the file. */
final class SyntaxWords {
    /**
     * One complaint.
     *
     * @param part what the library's text holds
     * @param atStart whether the place to mend is where the broken part begins
     */
    private record Saying(String part, boolean atStart, String what, String help) {}

    private static final List<Saying> SAYINGS =
            List.of(
                    new Saying("TAB", false, "a tab stands at the beginning", "indent with spaces"),
                    new Saying(
                            "that cannot start any token",
                            false,
                            "a text may not begin with this character",
                            "put the text in quotes"),
                    new Saying(
                            "mapping values are not allowed",
                            false,
                            "a colon stands where none can",
                            "put a text that holds ': ' in quotes, and see whether the line is"
                                    + " indented like its neighbours"),
                    new Saying(
                            "could not find expected ':'",
                            true,
                            "this line is neither 'key: value' nor an item '- ...'",
                            "write a colon and a space after the key; a text over several lines"
                                    + " goes in quotes"),
                    new Saying(
                            "unexpected end of stream",
                            true,
                            "a quote is opened here and never closed",
                            "close it with the same quote"),
                    new Saying(
                            "unexpected document separator",
                            true,
                            "a quote is opened here and never closed",
                            "close it with the same quote"),
                    new Saying(
                            "escape",
                            false,
                            "a backslash in double quotes is followed by something unknown",
                            "write two backslashes, or use single quotes"),
                    new Saying(
                            "hexadecimal",
                            false,
                            "a backslash in double quotes is followed by something unknown",
                            "write two backslashes, or use single quotes"),
                    new Saying(
                            "expected ',' or ']'",
                            true,
                            "the list that begins here with [ is not closed properly",
                            "put commas between its items and ] at its end"),
                    new Saying(
                            "expected ',' or '}'",
                            true,
                            "the group that begins here with { is not closed properly",
                            "put commas between its keys and } at its end"),
                    new Saying(
                            "expected <block end>",
                            false,
                            "this line does not fit the lines above it",
                            "start keys of one group, and the '-' of one list, in the same column"),
                    new Saying(
                            "sequence entries are not allowed",
                            false,
                            "a list may not begin here",
                            "begin it on the next line, each item with '- '"),
                    new Saying(
                            "while scanning an a",
                            true,
                            "a text may not begin with this character",
                            "put the text in quotes"));

    private static final Saying UNKNOWN =
            new Saying(
                    "",
                    false,
                    "from here on the file cannot be understood",
                    "look for a missing quote, colon or bracket, or a wrong indentation, here or"
                            + " in the line above");

    private SyntaxWords() {}

    static void note(RuntimeException fault, String text, Problems problems) {
        String told = String.valueOf(fault.getMessage());
        Saying saying =
                SAYINGS.stream()
                        .filter(known -> told.contains(known.part()))
                        .findFirst()
                        .orElse(UNKNOWN);
        Optional<Mark> mark = Optional.empty();
        if (fault instanceof MarkedYAMLException marked) {
            Mark at = saying.atStart() ? marked.getContextMark() : null;
            mark = Optional.ofNullable(at == null ? marked.getProblemMark() : at);
        }
        note(
                mark.map(Mark::getLine).orElse(0),
                mark.map(Mark::getColumn).orElse(0),
                text,
                saying,
                problems);
    }

    /** The library's marks may lie a step behind the end of a text; the problem never does. */
    private static void note(int line, int column, String text, Saying saying, Problems problems) {
        String[] lines = text.split("\r\n|\r|\n", -1);
        int row = Math.min(line, lines.length - 1);
        int width = lines[row].codePointCount(0, lines[row].length());
        problems.note(row + 1, Math.min(column, width) + 1, saying.what(), saying.help());
    }
}
