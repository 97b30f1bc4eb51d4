package rigside.report;

import java.util.regex.Pattern;

/**
 * Texts for tables that spreadsheets open. A text that one would run as a formula is given an
 * apostrophe in front, which says that it is text; so is one that begins with an apostrophe, so
 * that leaving out one of them always gives the text as it was. Which beginnings are formulas:
 * OWASP, CSV Injection ({@code = + - @}, tab, carriage return, and the full-width forms); that
 * spaces may stand before them is our own caution.
 */
final class Harmless {
    /** What a cell is begun with to say that it is text. */
    static final String MARK = "'";

    private static final Pattern RUN =
            Pattern.compile(
                    "[\\s\\p{Z}]*['=+\\-@\uFF1D\uFF0B\uFF0D\uFF20].*|[\\t\\r\\n].*",
                    Pattern.DOTALL);

    private static final int REPLACEMENT = 0xFFFD;

    private Harmless() {}

    /** A text that is neither run nor obeyed, whatever opens it. */
    static String text(String text) {
        String visible = visible(text);
        return RUN.matcher(visible).matches() ? MARK + visible : visible;
    }

    /** With line breaks of one kind, and nothing in it that nobody sees or a terminal obeys. */
    static String visible(String text) {
        return text.replace("\r\n", "\n")
                .replace('\r', '\n')
                .codePoints()
                .map(Harmless::shown)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static int shown(int point) {
        if (point == '\n' || point == '\t') {
            return point;
        }
        return switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR ->
                    REPLACEMENT;
            default -> point;
        };
    }
}
