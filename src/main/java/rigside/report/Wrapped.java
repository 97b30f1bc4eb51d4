package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Text in lines of a width; words longer than a line are broken. */
public final class Wrapped {
    /**
     * Spaces between words, but no line ends between a box to tick, or a number, and what it is of.
     */
    private static final Pattern BETWEEN = Pattern.compile("(?<!\\[_\\]) +(?!%)");

    private Wrapped() {}

    /** Lines of the text made legible; none for an empty one. */
    public static List<String> of(String raw, int width) {
        String text = Legible.of(raw);
        if (!text.contains("  ") && Legible.width(text) <= width) {
            return text.isEmpty() ? List.of() : List.of(text);
        }
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : BETWEEN.split(text, -1)) {
            if (Legible.width(line.toString()) + 1 + Legible.width(word) > width
                    && line.length() > 0) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 || word.isEmpty() ? "" : " ");
            for (int point : word.codePoints().toArray()) {
                String next = Character.toString(point);
                if (Legible.width(line + next) > width && line.length() > 0) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                line.append(next);
            }
        }
        if (line.length() > 0) {
            lines.add(line.toString());
        }
        return List.copyOf(lines);
    }

    /** How wide a line has to be for no word of the text to be broken. */
    static int longestWord(String raw) {
        return BETWEEN.splitAsStream(Legible.of(raw)).mapToInt(Legible::width).max().orElse(0);
    }

    /** The same with a mark before the first line and as much room before the others. */
    static List<String> hanging(String mark, String raw, int width) {
        List<String> lines = of(raw, width - mark.length());
        List<String> hung = new ArrayList<>();
        for (String line : lines) {
            hung.add((hung.isEmpty() ? mark : " ".repeat(mark.length())) + line);
        }
        return List.copyOf(hung);
    }
}
