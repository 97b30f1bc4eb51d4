package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Text broken into lines between words, by columns. */
final class Wrap {
    /** Spaces between words, but no line begins with the per cent sign of a number. */
    private static final Pattern BETWEEN = Pattern.compile(" +(?!%)");

    private Wrap() {}

    /** The text in lines of at most {@code columns}; line ends in it are kept. */
    static List<Line> lines(Tone tone, String text, int columns) {
        List<Line> lines = new ArrayList<>();
        for (String paragraph : text.strip().split("\\R", -1)) {
            for (String line : paragraph(Clean.text(paragraph), Math.max(columns, 2))) {
                lines.add(Line.of(tone, line));
            }
        }
        return text.isBlank() ? List.of() : List.copyOf(lines);
    }

    static List<Line> lines(String text, int columns) {
        return lines(Tone.PLAIN, text, columns);
    }

    /** The same with {@code first} before the first line and as many spaces before the others. */
    static List<Line> hanging(Line first, Tone tone, String text, int columns) {
        int margin = first.width();
        List<Line> wrapped = lines(tone, text, columns - margin);
        List<Line> lines = new ArrayList<>();
        for (int at = 0; at < wrapped.size(); at++) {
            lines.add(at == 0 ? first.plus(wrapped.get(0)) : wrapped.get(at).indented(margin));
        }
        return wrapped.isEmpty() ? List.of(first) : List.copyOf(lines);
    }

    private static List<String> paragraph(String text, int columns) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : BETWEEN.split(text.strip(), -1)) {
            int width = Clean.width(word);
            if (!line.isEmpty() && Clean.width(line.toString()) + 1 + width > columns) {
                lines.add(line.toString());
                line.setLength(0);
            }
            // The width of what is left is kept, not reckoned anew: a word may be as long as a
            // file.
            int from = 0;
            while (width > columns) {
                String part = head(word, from, columns);
                lines.add(part);
                from += part.length();
                width -= Clean.width(part);
            }
            line.append(line.isEmpty() ? "" : " ").append(word, from, word.length());
        }
        lines.add(line.toString());
        return lines;
    }

    /** The longest beginning that takes at most {@code columns}. */
    static String head(String text, int columns) {
        return head(text, 0, columns);
    }

    private static String head(String text, int from, int columns) {
        int end = from;
        int used = 0;
        while (end < text.length()) {
            used += Clean.width(text.substring(end, end + 1));
            if (used > columns) {
                break;
            }
            end++;
        }
        return text.substring(from, end);
    }
}
