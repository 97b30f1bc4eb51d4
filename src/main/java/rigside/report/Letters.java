package rigside.report;

import java.util.ArrayList;
import java.util.List;

/**
 * How wide words are in a drawing, reckoned from above: nobody knows beforehand which of the fonts
 * asked for a machine has.
 */
final class Letters {
    private Letters() {}

    /**
     * Hundredths of the size that the characters from the space to the tilde advance by: the larger
     * of DejaVu Sans 2.37 and Liberation Sans 2.1 (as wide as Arial and Helvetica), rounded up;
     * read with {@code java.awt.Font.getStringBounds} at size 100, OpenJDK 17.
     */
    private static final int[] ADVANCE = {
        32, 41, 46, 84, 64, 96, 78, 28, 40, 40, 50, 84, 32, 37, 32, 34, 64, 64, 64, 64, 64, 64, 64,
        64, 64, 64, 34, 34, 84, 84, 84, 56, 102, 69, 69, 73, 78, 67, 62, 78, 76, 30, 50, 67, 56, 87,
        75, 79, 67, 79, 73, 67, 62, 74, 69, 99, 69, 67, 69, 40, 34, 40, 84, 56, 50, 62, 64, 55, 64,
        62, 36, 64, 64, 28, 28, 58, 28, 98, 64, 62, 64, 64, 42, 53, 40, 64, 60, 82, 60, 60, 53, 64,
        34, 64, 84
    };

    /** Of any other character; few letters are wider in those fonts. */
    private static final int OTHER = 105;

    /** Bold letters of those fonts are wider by an eighth in words, a single one by a quarter. */
    private static final double BOLD = 1.15;

    /** Share of the size that letters reach above the line they stand on, and below it. */
    static final double ASCENT = 0.8;

    static final double DESCENT = 0.22;

    /** From one line to the next, as a share of the size. */
    static final double LEADING = 1.25;

    private static final String CUT = "\u2026";

    /** How wide a line of words is at most; the text is made legible first. */
    static double width(String raw, double size, Mark.Weight weight) {
        double hundredths = Legible.of(raw).codePoints().mapToDouble(Letters::advance).sum();
        return hundredths / 100 * size * (weight == Mark.Weight.BOLD ? BOLD : 1);
    }

    private static int advance(int point) {
        int type = Character.getType(point);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
            return 0;
        }
        int at = (point == '\u00A0' ? ' ' : point) - ' ';
        return at >= 0 && at < ADVANCE.length ? ADVANCE[at] : OTHER;
    }

    /**
     * Words in lines no wider than asked; too long a word is broken, and what does not fit into so
     * many lines is cut off with a sign that it is.
     *
     * @param most lines, at least 1
     * @return at least one line, which may be empty
     */
    static List<String> lines(String raw, double size, Mark.Weight weight, double width, int most) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : Legible.of(raw).split(" +", -1)) {
            String joined = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(joined, size, weight) > width) {
                lines.add(line.toString());
                line.setLength(0);
                joined = word;
            }
            line.setLength(0);
            for (int point : joined.codePoints().toArray()) {
                String next = Character.toString(point);
                if (!line.isEmpty() && width(line + next, size, weight) > width) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                line.append(next);
            }
            if (lines.size() > most) {
                break;
            }
        }
        lines.add(line.toString());
        if (lines.size() <= most) {
            return List.copyOf(lines);
        }
        List<String> kept = new ArrayList<>(lines.subList(0, most));
        kept.set(most - 1, cut(kept.get(most - 1), size, weight, width));
        return List.copyOf(kept);
    }

    private static String cut(String line, double size, Mark.Weight weight, double width) {
        String kept = line;
        while (!kept.isEmpty() && width(kept + CUT, size, weight) > width) {
            kept = kept.substring(0, kept.offsetByCodePoints(kept.length(), -1));
        }
        return kept.strip() + CUT;
    }
}
