package rigside.screen;

import java.util.Locale;
import java.util.OptionalDouble;
import rigside.analysis.Digits;

/** Numbers as pictures show them. */
final class Figures {
    private Figures() {}

    /** See {@link Digits#three}; "?" for what is no number. */
    static String three(double value) {
        return Double.isFinite(value) ? Digits.three(value) : "?";
    }

    /** The same of a value that may only be known as a lower bound: "at least 260 000". */
    static String value(OptionalDouble value, boolean atLeast) {
        return value.isPresent() && atLeast
                ? "at least " + Digits.threeAtLeast(value.getAsDouble())
                : three(value);
    }

    static String three(OptionalDouble value) {
        return value.isPresent() ? three(value.getAsDouble()) : "-";
    }

    /** A time of a trial, in seconds to a tenth. */
    static String tenths(double seconds) {
        return Digits.tenths(seconds);
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
