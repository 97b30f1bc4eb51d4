package rigside.screen;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.OptionalDouble;

/** Numbers as pictures show them. */
final class Figures {
    private Figures() {}

    /** From here on digits that nobody measured are zeros, in groups of three. */
    private static final int GROUPED = 10_000;

    private static final MathContext THREE = new MathContext(3);

    /** Never above what it was: for a number that something is at least. */
    private static final MathContext THREE_AT_LEAST = new MathContext(3, RoundingMode.DOWN);

    /** A break here would tear the number apart. */
    private static final char GROUP = '\u00A0';

    /**
     * Three significant digits, zeros kept; whole numbers from 1000 on, from 10 000 on rounded to
     * three digits.
     */
    static String three(double value) {
        return three(value, THREE);
    }

    /** The same of a value that may only be known as a lower bound: "at least 260 000". */
    static String value(OptionalDouble value, boolean atLeast) {
        return value.isPresent() && atLeast
                ? "at least " + three(value.getAsDouble(), THREE_AT_LEAST)
                : three(value);
    }

    private static String three(double value, MathContext digits) {
        if (!Double.isFinite(value)) {
            return "?";
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(digits);
        int whole = rounded.precision() - rounded.scale();
        if (Math.abs(value) >= GROUPED) {
            return String.format(Locale.ROOT, "%,d", rounded.toBigInteger()).replace(',', GROUP);
        }
        return whole >= 4
                ? new BigDecimal(value).setScale(0, digits.getRoundingMode()).toPlainString()
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
