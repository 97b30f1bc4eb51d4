package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Text to read: a line above indented ones is their heading; a blank one parts. */
final class Paragraphs {
    private static final String INDENT = "  ";
    private static final String ITEM = INDENT + "- ";
    private static final Pattern UNDERLINE = Pattern.compile("-{3,}|={3,}");

    private Paragraphs() {}

    static List<Line> of(List<String> all, int columns) {
        List<Line> lines = new ArrayList<>();
        for (int at = 0; at < all.size(); at++) {
            String text = all.get(at);
            boolean heads = at + 1 < all.size() && isIndented(all.get(at + 1)) && !isIndented(text);
            lines.addAll(one(text, heads, columns));
        }
        return List.copyOf(lines);
    }

    /**
     * Text that was laid out already, with headings underlined; what is too wide is wrapped.
     *
     * @param all its lines
     */
    static List<Line> sheet(List<String> all, int columns) {
        List<Line> lines = new ArrayList<>();
        for (int at = 0; at < all.size(); at++) {
            String text = all.get(at);
            boolean heads = at + 1 < all.size() && UNDERLINE.matcher(all.get(at + 1)).matches();
            Line line = Line.of(heads ? Tone.STRONG : Tone.PLAIN, text);
            lines.addAll(
                    line.width() <= columns
                            ? List.of(line)
                            : Wrap.hanging(
                                    Line.of(text.substring(0, text.indexOf(text.strip()))),
                                    Tone.PLAIN,
                                    text.strip(),
                                    columns));
        }
        return List.copyOf(lines);
    }

    private static List<Line> one(String text, boolean heads, int columns) {
        if (text.isBlank()) {
            return List.of(Line.BLANK);
        }
        return text.startsWith(ITEM)
                ? Wrap.hanging(Line.of(ITEM), Tone.PLAIN, text.substring(ITEM.length()), columns)
                : isIndented(text)
                        ? Wrap.hanging(Line.of(INDENT), Tone.PLAIN, text.strip(), columns)
                        : Wrap.lines(heads ? Tone.STRONG : Tone.PLAIN, text, columns);
    }

    private static boolean isIndented(String text) {
        return text.startsWith(INDENT);
    }
}
