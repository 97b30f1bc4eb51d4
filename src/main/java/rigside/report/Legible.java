package rigside.report;

import java.util.List;

/** Text that cannot harm a terminal or a browser, nor mislead who reads it. */
public final class Legible {
    private Legible() {}

    /** Stands for a character that cannot be shown. */
    public static final int REPLACEMENT = 0xFFFD;

    /**
     * The text on one line, with everything replaced that a terminal obeys, that turns the
     * direction of writing round, or that nobody can see.
     */
    public static String of(String raw) {
        return line(raw).strip();
    }

    /** The same with the spaces around it, where lines are laid out already. */
    public static String line(String raw) {
        StringBuilder legible = new StringBuilder();
        raw.codePoints().map(Legible::shown).forEach(legible::appendCodePoint);
        return legible.toString();
    }

    /** The lines of a text, each with its spaces; tabs as four of them. */
    static List<String> lines(String raw) {
        return raw.lines().map(line -> line(line.replace("\t", "    ")).stripTrailing()).toList();
    }

    /** How many columns of a terminal legible text takes. */
    public static int width(String text) {
        return text.codePoints().map(Legible::width).sum();
    }

    private static int shown(int point) {
        if (point == '\t' || point == '\n' || point == '\r') {
            return ' ';
        }
        return switch (Character.getType(point)) {
            case Character.SURROGATE, Character.PRIVATE_USE, Character.UNASSIGNED -> REPLACEMENT;
            default -> isUnseen(point) ? REPLACEMENT : point;
        };
    }

    /** Whether a terminal obeys a character, it turns the direction round, or nobody sees it. */
    public static boolean isUnseen(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR ->
                    true;
            default -> false;
        };
    }

    /**
     * Marks stand on the letter before them; the blocks named are those whose characters are wide
     * (Unicode Standard Annex 11, East Asian Width; from memory).
     */
    private static int width(int point) {
        int type = Character.getType(point);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
            return 0;
        }
        boolean wide =
                within(point, 0x1100, 0x115F)
                        || within(point, 0x2E80, 0xA4CF)
                        || within(point, 0xAC00, 0xD7A3)
                        || within(point, 0xF900, 0xFAFF)
                        || within(point, 0xFE30, 0xFE6F)
                        || within(point, 0xFF00, 0xFF60)
                        || within(point, 0xFFE0, 0xFFE6)
                        || within(point, 0x1F300, 0x1FAFF)
                        || within(point, 0x20000, 0x3FFFD);
        return wide ? 2 : 1;
    }

    private static boolean within(int point, int from, int to) {
        return from <= point && point <= to;
    }
}
