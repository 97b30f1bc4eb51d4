package rigside.archive;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Texts as they are searched: without capitals, accents and signs that nobody can see. */
final class Folded {
    private static final Pattern UNSEEN = Pattern.compile("[\\p{M}\\p{Cf}]+");
    private static final Pattern SPACES = Pattern.compile("[\\s\\p{Z}]+");

    private Folded() {}

    /** The same for every way to write a word: Straße as STRASSE, naïve as naive. */
    static String of(String text) {
        if (isPlain(text)) {
            return text.toLowerCase(Locale.ROOT);
        }
        String seen =
                UNSEEN.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD)).replaceAll("");
        // By way of capitals, which sharp s and the two small sigmas share.
        String small = seen.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
        return SPACES.matcher(small).replaceAll(" ").strip();
    }

    /** Nearly all text is, and thousands of sessions are looked through at a key press. */
    private static boolean isPlain(String text) {
        for (int at = 0; at < text.length(); at++) {
            char each = text.charAt(at);
            if (each < ' ' || each >= 0x7F) {
                return false;
            }
        }
        return true;
    }
}
