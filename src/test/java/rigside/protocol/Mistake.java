package rigside.protocol;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One row of {@code mistakes.txt}; the file's header explains the marks.
 *
 * @param name what the person did
 * @param replaced text of the base file
 * @param by what stands there instead
 * @param at text of the line the problem is placed on
 * @param what what is wrong
 * @param help what to do
 */
record Mistake(String name, String replaced, String by, String at, String what, String help) {
    static List<Mistake> all() {
        List<Mistake> all = new ArrayList<>();
        String[] blocks = Shipped.text("rigside/protocol/mistakes.txt").split("(?m)^= ");
        for (String block : Arrays.asList(blocks).subList(1, blocks.length)) {
            all.add(
                    new Mistake(
                            block.lines().findFirst().orElseThrow(),
                            part(block, "- "),
                            part(block, "+ "),
                            part(block, "@ "),
                            part(block, "> "),
                            part(block, "? ")));
        }
        return all;
    }

    /** The base file with this mistake made in it. */
    String file() {
        String base = Shipped.text("rigside/protocol/base.yaml");
        int start = base.indexOf(replaced);
        if (start < 0) {
            throw new IllegalStateException(name + ": the base file has no '" + replaced + "'");
        }
        return base.substring(0, start) + by + base.substring(start + replaced.length());
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
