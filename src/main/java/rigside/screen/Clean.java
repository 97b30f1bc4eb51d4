package rigside.screen;

import com.googlecode.lanterna.TerminalTextUtils;
import java.text.Normalizer;

/**
 * Text that cannot harm a terminal or shift what stands beside it. What has no honest single place
 * on the screen is replaced by a visible sign, never dropped.
 */
final class Clean {
    private Clean() {}

    /** Stands for a character that cannot be shown. */
    static final char REPLACEMENT = '\uFFFD';

    /**
     * The text with tabs and line ends as spaces and everything that is no plain character
     * replaced: control and format characters (among them those that turn the direction of writing
     * round), marks left over after composing, private and unassigned characters, and all beyond
     * the basic plane, which Lanterna tears in two.
     */
    static String text(String raw) {
        if (isPlain(raw)) {
            return raw;
        }
        StringBuilder clean = new StringBuilder();
        Normalizer.normalize(raw, Normalizer.Form.NFC)
                .codePoints()
                .forEach(each -> clean.append(shown(each)));
        return clean.toString();
    }

    /** Clean text in ASCII, as wide as before: letters without their accents, else '?'. */
    static String ascii(String text) {
        StringBuilder plain = new StringBuilder();
        text.chars()
                .forEach(
                        each ->
                                plain.append(
                                        each < 0x7F
                                                ? String.valueOf((char) each)
                                                : folded((char) each)));
        return plain.toString();
    }

    /** How many columns clean text takes. */
    static int width(String text) {
        return isPlain(text) ? text.length() : TerminalTextUtils.getColumnWidth(text);
    }

    /**
     * Whether every character is printable ASCII or one that pictures are drawn with: clean, and
     * one column each. Nearly all text is, and twenty pictures a second are looked through.
     */
    private static boolean isPlain(String text) {
        for (int at = 0; at < text.length(); at++) {
            char each = text.charAt(at);
            boolean ascii = each >= ' ' && each < 0x7F;
            boolean drawing = each >= 0x2500 && each <= 0x25FF;
            if (!ascii && !drawing && each != '\u00B7') {
                return false;
            }
        }
        return true;
    }

    private static char shown(int codePoint) {
        if (codePoint == '\t' || codePoint == '\n' || codePoint == '\r') {
            return ' ';
        }
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.NON_SPACING_MARK,
                    Character.ENCLOSING_MARK,
                    Character.COMBINING_SPACING_MARK ->
                    REPLACEMENT;
            default -> Character.isBmpCodePoint(codePoint) ? (char) codePoint : REPLACEMENT;
        };
    }

    private static String folded(char character) {
        String shown = String.valueOf(character);
        int columns = width(shown);
        StringBuilder letters = new StringBuilder();
        Normalizer.normalize(alike(shown), Normalizer.Form.NFKD)
                .chars()
                .filter(each -> each < 0x7F)
                .forEach(each -> letters.append((char) each));
        return letters.length() == columns ? letters.toString() : "?".repeat(columns);
    }

    /** Signs that have a near relation in ASCII but no decomposition to it. */
    private static String alike(String sign) {
        return switch (sign) {
            case "\u2013", "\u2014", "\u2212", "\u2010", "\u2011" -> "-";
            case "\u2018", "\u2019" -> "'";
            case "\u201C", "\u201D" -> "\"";
            case "\u00D7" -> "x";
            default -> sign;
        };
    }
}
