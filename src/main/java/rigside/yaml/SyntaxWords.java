package rigside.yaml;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.events.ScalarEvent;

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

    /** A line that is a key and its value without the colon between them. */
    private static final Pattern WITHOUT_COLON = Pattern.compile("( *)([a-z][a-z0-9-]*) +([^:]+)");

    /** A line that begins an item with a word and no key. */
    private static final Pattern WITHOUT_KEY = Pattern.compile("( *- +)([a-z][a-z0-9-]*)");

    private final String[] lines;
    private final Optional<ScalarEvent> before;

    /**
     * @param before the last text that was read
     */
    SyntaxWords(String text, Optional<ScalarEvent> before) {
        this.lines = text.split("\r\n|\r|\n", -1);
        this.before = before;
    }

    /** Notes the one complaint where the mistake most likely is. */
    void note(RuntimeException fault, Problems problems) {
        Optional<Mark> mark =
                fault instanceof MarkedYAMLException marked
                        ? Optional.ofNullable(marked.getProblemMark())
                        : Optional.empty();
        boolean told =
                mark.isPresent()
                        && (endedQuote(mark.get().getLine(), problems)
                                || (isMisplacedKey(fault)
                                        && lineBefore(mark.get().getLine(), problems)));
        if (!told) {
            saying(fault, problems);
        }
    }

    /** Whether a key stands where none can, which a word before it without its colon does too. */
    private static boolean isMisplacedKey(RuntimeException fault) {
        String told = String.valueOf(fault.getMessage());
        return told.contains("mapping values are not allowed")
                || told.contains("expected <block end>");
    }

    /** A text in quotes that ended on this line, so that what follows it makes no sense. */
    private boolean endedQuote(int line, Problems problems) {
        Optional<ScalarEvent> ended =
                before.filter(text -> isQuoted(text) && text.getEndMark().getLine() == line);
        ended.ifPresent(
                text -> {
                    boolean several = text.getStartMark().getLine() < line;
                    note(
                            text.getStartMark().getLine(),
                            text.getStartMark().getColumn(),
                            several
                                    ? "a quote is opened here and closed only on line " + (line + 1)
                                    : "the text in quotes that begins here ends within the line",
                            several
                                    ? "close it where its text ends"
                                    : "put a text that holds an apostrophe in double quotes",
                            problems);
                });
        return ended.isPresent();
    }

    private static boolean isQuoted(ScalarEvent text) {
        return text.getScalarStyle() == DumperOptions.ScalarStyle.SINGLE_QUOTED
                || text.getScalarStyle() == DumperOptions.ScalarStyle.DOUBLE_QUOTED;
    }

    /** The line of words before this one, when it lacks its colon or its key. */
    private boolean lineBefore(int line, Problems problems) {
        int row = line - 1;
        while (row >= 0 && words(row).isBlank()) {
            row--;
        }
        if (row < 0 || line >= lines.length) {
            return false;
        }
        Matcher key = WITHOUT_KEY.matcher(words(row));
        Matcher colon = WITHOUT_COLON.matcher(words(row));
        if (key.matches() && key.end(1) == indent(line)) {
            note(
                    row,
                    key.end(1),
                    "this item begins with the word " + Words.quoted(key.group(2)) + " and no key",
                    "write its key before it, as in '- step: trials'",
                    problems);
            return true;
        }
        if (colon.matches() && colon.end(1) == indent(line)) {
            note(
                    row,
                    colon.end(1),
                    "the key " + Words.quoted(colon.group(2)) + " has no colon",
                    "write '" + colon.group(2) + ": ' and then its value",
                    problems);
            return true;
        }
        return false;
    }

    /** A line without its comment and the spaces at its end. */
    private String words(int row) {
        return lines[row].replaceFirst("(^| )#.*", "").stripTrailing();
    }

    private int indent(int row) {
        return lines[row].length() - lines[row].stripLeading().length();
    }

    private void saying(RuntimeException fault, Problems problems) {
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
                saying.what(),
                saying.help(),
                problems);
    }

    /** The library's marks may lie a step behind the end of a text; the problem never does. */
    private void note(int line, int column, String what, String help, Problems problems) {
        int row = Math.min(line, lines.length - 1);
        int width = lines[row].codePointCount(0, lines[row].length());
        problems.note(row + 1, Math.min(column, width) + 1, what, help);
    }
}
