package rigside.protocol;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One row of {@code mistakes.txt}; the file's header explains the marks.
 *
 * @param base the file the mistake is made in
 * @param name what the person did
 * @param replaced text of the base file
 * @param by what stands there instead
 * @param at text of the line the problem is placed on
 * @param mark text that begins where the problem is placed, no text for the end of the line; empty
 *     where that is not looked at
 * @param what what is wrong
 * @param help what to do
 */
record Mistake(
        String base,
        String name,
        String replaced,
        String by,
        String at,
        Optional<String> mark,
        String what,
        String help) {
    static List<Mistake> all() {
        return all("rigside/protocol/base.yaml", "rigside/protocol/mistakes.txt");
    }

    /** With groups, steps that depend on an answer and calculated measures. */
    static List<Mistake> ofGroups() {
        return all("session/groups.yaml", "rigside/protocol/group-mistakes.txt");
    }

    private static List<Mistake> all(String base, String table) {
        List<Mistake> all = new ArrayList<>();
        String[] blocks = Shipped.text(table).split("(?m)^= ");
        for (String block : Arrays.asList(blocks).subList(1, blocks.length)) {
            all.add(
                    new Mistake(
                            base,
                            block.lines().findFirst().orElseThrow(),
                            part(block, "- "),
                            part(block, "+ "),
                            part(block, "@ "),
                            block.contains("\n^")
                                    ? Optional.of(part(block, "^ "))
                                    : Optional.empty(),
                            part(block, "> "),
                            part(block, "? ")));
        }
        return all;
    }

    /** The base file with this mistake made in it. */
    String file() {
        String text = Shipped.text(base);
        int start = text.indexOf(replaced);
        if (start < 0) {
            throw new IllegalStateException(name + ": the base file has no '" + replaced + "'");
        }
        return text.substring(0, start) + by + text.substring(start + replaced.length());
    }

    /** The line the problem must be placed on. */
    int line() {
        String file = file();
        int start = file.indexOf(at);
        if (start < 0) {
            throw new IllegalStateException(name + ": the mistaken file has no '" + at + "'");
        }
        return (int) file.substring(0, start).chars().filter(c -> c == '\n').count() + 1;
    }

    /** Whether a column, from 1, of the line is where the problem must be placed. */
    boolean isAt(int column) {
        String line = file().lines().skip(line() - 1L).findFirst().orElse("");
        String rest = line.substring(line.offsetByCodePoints(0, column - 1));
        return mark.isEmpty()
                || (mark.get().isEmpty() ? rest.isEmpty() : rest.startsWith(mark.get()));
    }

    private static String part(String block, String mark) {
        return block.lines()
                .filter(line -> line.startsWith(mark) || line.equals(mark.strip()))
                .findFirst()
                .map(line -> line.length() < 2 ? "" : line.substring(2))
                .map(Mistake::unescaped)
                .orElse("");
    }

    private static String unescaped(String text) {
        return text.replace("\\u001b", "\u001b")
                .replace("\\u00a0", "\u00a0")
                .replace("\\u202e", "\u202e")
                .translateEscapes();
    }

    @Override
    public String toString() {
        return name;
    }
}
