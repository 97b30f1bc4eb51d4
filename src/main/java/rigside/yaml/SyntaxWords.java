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
    /** A line that is a key and its value without the colon between them. */
    private static final Pattern WITHOUT_COLON = Pattern.compile("( *)([a-z][a-z0-9-]*) +([^:]+)");

    /** A line that begins an item with a word and no key. */
    private static final Pattern WITHOUT_KEY = Pattern.compile("( *- +)([a-z][a-z0-9-]*)");

    /** A key with its value on the same line. */
    private static final Pattern COMPLETE =
            Pattern.compile("( *(?:- +)*)([a-z][a-z0-9-]*): +[^|>\\s].*");

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
                        && (slipped((MarkedYAMLException) fault, problems)
                                || endedQuote(mark.get().getLine(), problems)
                                || (isMisplacedKey(fault)
                                        && (lineBefore(mark.get().getLine(), problems)
                                                || indentedFurther(mark.get().getLine(), problems)))
                                || withinLine(fault, mark.get(), problems));
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

    /** A slip on the line the library complains of, where that began, or on the line before. */
    private boolean slipped(MarkedYAMLException fault, Problems problems) {
        String told = String.valueOf(fault.getMessage());
        if (!isMisplacedKey(fault) && !told.contains("could not find expected ':'")) {
            return false;
        }
        int line = fault.getProblemMark().getLine();
        int begun = fault.getContextMark() == null ? line : fault.getContextMark().getLine();
        List<Integer> rows =
                isMisplacedKey(fault) ? List.of(line, rowBefore(line)) : List.of(begun, line);
        Optional<Slip.Placed> found = Slip.first(lines, rows);
        found.ifPresent(
                at ->
                        note(
                                at.row(),
                                at.slip().column(),
                                at.slip().what(),
                                at.slip().help(),
                                problems));
        return found.isPresent();
    }

    /** A key further in than the one above it, which is complete. */
    private boolean indentedFurther(int line, Problems problems) {
        int row = rowBefore(line);
        if (row < 0 || line >= lines.length) {
            return false;
        }
        Matcher above = COMPLETE.matcher(words(row));
        boolean further = above.matches() && indent(line) > above.end(1);
        if (further) {
            note(
                    line,
                    indent(line),
                    "this line is indented further than "
                            + Words.quoted(above.group(2))
                            + " above it, which has its value already",
                    "begin both in the same column",
                    problems);
        }
        return further;
    }

    /** What stands behind other words of its line, where the usual words would mislead. */
    private boolean withinLine(RuntimeException fault, Mark mark, Problems problems) {
        String told = String.valueOf(fault.getMessage());
        boolean within = mark.getLine() < lines.length && mark.getColumn() > indent(mark.getLine());
        if (within && told.contains("TAB")) {
            note(
                    mark.getLine(),
                    mark.getColumn(),
                    "a tab stands here",
                    "write a space instead",
                    problems);
            return true;
        }
        if (within && told.contains("expected <block end>")) {
            note(
                    mark.getLine(),
                    mark.getColumn(),
                    "something follows a value that has ended",
                    "delete it, or put the whole value in quotes",
                    problems);
            return true;
        }
        return false;
    }

    private int rowBefore(int line) {
        int row = Math.min(line, lines.length) - 1;
        while (row >= 0 && words(row).isBlank()) {
            row--;
        }
        return row;
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
                                    : text.getScalarStyle()
                                                    == DumperOptions.ScalarStyle.SINGLE_QUOTED
                                            ? "put a text that holds an apostrophe in double quotes"
                                            : "delete what follows, or put the whole text in single"
                                                    + " quotes",
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
        int row = rowBefore(line);
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
        Saying saying = Saying.of(told);
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
