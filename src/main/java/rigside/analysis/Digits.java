package rigside.analysis;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** A number as people read it, the same in a sentence, a table and a picture. */
public final class Digits {
    private static final int USUAL = 3;

    /** Beyond these, two numbers are one. */
    private static final int MOST = 9;

    /** From here on whole numbers are shown whole. */
    private static final int WHOLE = 1_000;

    /** From here on digits that nobody measured are zeros, in groups of three. */
    private static final int GROUPED = 10_000;

    /** A break here would tear the number apart. */
    private static final char GROUP = '\u00A0';

    private Digits() {}

    /**
     * Three significant digits, zeros kept: 1.20, 0.909, 153; whole numbers from 1000 on, rounded
     * to three digits and grouped from 10 000 on.
     *
     * @return "0" for zero, "NaN" or "Infinity" for what is no number
     */
    public static String three(double value) {
        return of(value, USUAL, RoundingMode.HALF_EVEN);
    }

    /** The same never further from zero than it was: for a number that something is at least. */
    public static String threeAtLeast(double value) {
        return of(value, USUAL, RoundingMode.DOWN);
    }

    /** A time of a trial, in seconds to a tenth. */
    public static String tenths(double seconds) {
        return String.format(Locale.ROOT, "%.1f", seconds);
    }

    /** Two significant digits: for what is known roughly. */
    static String two(double value) {
        return of(value, 2, RoundingMode.HALF_EVEN);
    }

    /**
     * Numbers with the same digits, three or as many more as it takes to tell those apart that
     * differ.
     */
    public static List<String> apart(double... values) {
        long different = alike(values, MOST).stream().distinct().count();
        List<String> texts = alike(values, USUAL);
        for (int digits = USUAL + 1;
                digits <= MOST && texts.stream().distinct().count() < different;
                digits++) {
            texts = alike(values, digits);
        }
        return texts;
    }

    /** A share as a whole percentage; never 0 or 100 where it is not exactly so. */
    static String percent(double share) {
        if (share > 0 && share < 0.01) {
            return "less than 1 %";
        }
        if (share < 1 && share > 0.99) {
            return "more than 99 %";
        }
        return Math.round(100 * share) + " %";
    }

    /** A chance found by simulation as a whole percentage: never 0 or 100, which it cannot know. */
    public static String chance(double share) {
        return percent(Math.max(1e-4, Math.min(1 - 1e-4, share)));
    }

    private static List<String> alike(double[] values, int digits) {
        return Arrays.stream(values)
                .mapToObj(value -> of(value, digits, RoundingMode.HALF_EVEN))
                .toList();
    }

    private static String of(double value, int digits, RoundingMode mode) {
        if (value == 0 || !Double.isFinite(value)) {
            return value == 0 ? "0" : String.valueOf(value);
        }
        double size = Math.abs(value);
        boolean whole = size >= WHOLE && size < GROUPED && digits >= USUAL;
        BigDecimal rounded =
                new BigDecimal(value)
                        .round(new MathContext(whole ? Math.max(4, digits) : digits, mode));
        if (size >= 1e9 || size < 1e-4) {
            return rounded.toString();
        }
        int places = Math.max(0, (whole ? Math.max(4, digits) : digits) - before(rounded));
        BigDecimal shown = rounded.setScale(places, RoundingMode.UNNECESSARY);
        return shown.abs().doubleValue() >= GROUPED
                ? String.format(Locale.ROOT, "%,." + places + "f", shown).replace(',', GROUP)
                : shown.toPlainString();
    }

    /** How many digits stand before the point; 0 or less below one. */
    private static int before(BigDecimal number) {
        return number.precision() - number.scale();
    }
}
