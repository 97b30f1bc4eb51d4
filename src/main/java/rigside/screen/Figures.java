package rigside.screen;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.OptionalDouble;

/** Numbers as pictures show them. */
final class Figures {
    private Figures() {}

    /** Three significant digits, zeros kept; whole numbers from 1000 on. */
    static String three(double value) {
        if (!Double.isFinite(value)) {
            return "?";
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(3));
        int whole = rounded.precision() - rounded.scale();
        return whole >= 4
                ? new BigDecimal(value)
                        .setScale(0, java.math.RoundingMode.HALF_EVEN)
                        .toPlainString()
                : rounded.setScale(Math.max(0, 3 - whole)).toPlainString();
    }

    static String three(OptionalDouble value) {
        return value.isPresent() ? three(value.getAsDouble()) : "-";
    }

    /** A time of a trial, in seconds to a tenth. */
    static String tenths(double seconds) {
        return String.format(Locale.ROOT, "%.1f", seconds);
    }

    /** Whole seconds still to go, never 0 before the end: "45", from a minute on "1:05". */
    static String left(double seconds) {
        return clock((long) Math.ceil(Math.max(0, seconds) - 1e-9));
    }

    /** A length of time in words: "45 s", "3 min", "1 min 30 s". */
    static String length(double seconds) {
        long whole = Math.round(seconds);
        String rest = whole % 60 == 0 && whole > 0 ? "" : whole % 60 + " s";
        return whole < 60 ? whole + " s" : (whole / 60 + " min " + rest).strip();
    }

    private static String clock(long whole) {
        return whole < 60
                ? String.valueOf(whole)
                : String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60);
    }
}
