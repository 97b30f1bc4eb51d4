package rigside.yaml;

/** Which characters may stand in a file: none that a terminal obeys or a reader cannot see. */
final class Characters {
    private static final int SOFT_HYPHEN = 0xAD;
    private static final int ZERO_WIDTH_NON_JOINER = 0x200C;
    private static final int ZERO_WIDTH_JOINER = 0x200D;

    private Characters() {}

    /**
     * Whether a character may be shown: no control characters (tabs and line ends are control
     * characters too), no half of a pair, no character that reorders or hides text.
     */
    static boolean isSafe(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR ->
                    false;
            case Character.FORMAT ->
                    point == SOFT_HYPHEN
                            || point == ZERO_WIDTH_NON_JOINER
                            || point == ZERO_WIDTH_JOINER;
            default -> (point & 0xFFFE) != 0xFFFE;
        };
    }

    /**
     * Whether a character may stand in the text of a file, where tabs and line ends are at home.
     */
    static boolean isSafeInFile(int point) {
        return point == '\n' || point == '\r' || point == '\t' || isSafe(point);
    }

    /** Notes every unsafe character of a file at its place; true when there was none. */
    static boolean check(String text, Problems problems) {
        int before = problems.count();
        int line = 1;
        int column = 1;
        for (int i = 0;
                i < text.length() && !problems.isFull();
                i += Character.charCount(text.codePointAt(i))) {
            int point = text.codePointAt(i);
            if (!isSafeInFile(point)) {
                problems.note(line, column, "hidden character " + name(point), "delete it");
            }
            boolean pair = point == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
            if (point == '\n' || (point == '\r' && !pair)) {
                line++;
                column = 1;
            } else {
                column++;
            }
        }
        return problems.count() == before;
    }

    /** The character's number as Unicode writes it: {@code U+001B}. */
    static String name(int point) {
        return String.format("U+%04X", point);
    }
}
