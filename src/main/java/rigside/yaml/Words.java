package rigside.yaml;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Words in messages: quoting what was written, and finding the word that was meant. */
public final class Words {
    private static final int LONGEST_QUOTE = 40;
    private static final int LONGEST_GUESSED = 40;

    private Words() {}

    /**
     * The text in single quotes, cut to 40 characters, on one line and without anything a terminal
     * would obey.
     */
    public static String quoted(String text) {
        StringBuilder shown = new StringBuilder("'");
        text.codePoints()
                .limit(LONGEST_QUOTE)
                .forEach(
                        point ->
                                shown.append(
                                        point == '\n'
                                                ? " "
                                                : Characters.isSafe(point)
                                                        ? Character.toString(point)
                                                        : "?"));
        if (text.codePointCount(0, text.length()) > LONGEST_QUOTE) {
            shown.append("...");
        }
        return shown.append("'").toString();
    }

    /**
     * The known word that was probably meant: at most a third of its letters wrong, missing, extra
     * or swapped with a neighbour; capitals and underscores for hyphens are no difference.
     */
    public static Optional<String> nearest(String word, Collection<String> known) {
        if (word.length() > LONGEST_GUESSED) {
            return Optional.empty();
        }
        String asked = plain(word);
        return known.stream()
                .filter(candidate -> isNear(asked, plain(candidate)))
                .min(Comparator.comparingInt(candidate -> distance(asked, plain(candidate))));
    }

    /** "did you mean 'x'?", or else the known words, or nothing when there are none. */
    public static String suggestion(String word, Collection<String> known) {
        String all = known.isEmpty() ? "" : "known here: " + String.join(", ", known);
        return nearest(word, known).map(near -> "did you mean '" + near + "'?").orElse(all);
    }

    private static boolean isNear(String asked, String candidate) {
        int allowed = Math.max(1, candidate.length() / 3);
        return Math.abs(asked.length() - candidate.length()) <= allowed
                && distance(asked, candidate) <= allowed;
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    }

    /** Edits that turn one word into the other, a swap of neighbours being one (Damerau 1964). */
    static int distance(String from, String to) {
        int[][] edits = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                edits[i][j] = i == 0 ? j : j == 0 ? i : cheapest(edits, from, to, i, j);
            }
        }
        return edits[from.length()][to.length()];
    }

    private static int cheapest(int[][] edits, String from, String to, int i, int j) {
        boolean same = from.charAt(i - 1) == to.charAt(j - 1);
        int best =
                Math.min(
                        Math.min(edits[i - 1][j], edits[i][j - 1]) + 1,
                        edits[i - 1][j - 1] + (same ? 0 : 1));
        boolean swapped =
                i > 1
                        && j > 1
                        && from.charAt(i - 1) == to.charAt(j - 2)
                        && from.charAt(i - 2) == to.charAt(j - 1);
        return swapped ? Math.min(best, edits[i - 2][j - 2] + 1) : best;
    }
}
