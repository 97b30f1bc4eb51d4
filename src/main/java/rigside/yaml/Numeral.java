package rigside.yaml;

import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number as this program reads it: one way to write it and no surprises. */
final class Numeral {
    /** Digits with perhaps a fraction and a power of ten, without a sign. */
    static final String UNSIGNED = "(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][-+]?[0-9]{1,3})?";

    /** The same, perhaps with a sign. */
    static final String SIGNED = "[-+]?" + UNSIGNED;

    private static final Pattern STRICT = Pattern.compile(SIGNED);
    private static final Pattern COMMA = Pattern.compile("[-+]?[0-9]+,[0-9]+");
    private static final Pattern LEADING_ZERO = Pattern.compile("[-+]?0[0-9].*");
    private static final Pattern OPEN_POINT = Pattern.compile("[-+]?(\\.[0-9]+|[0-9]+\\.)");
    private static final Pattern TYPOGRAPHIC_MINUS =
            Pattern.compile("[\u2010-\u2015\u2212][0-9].*");
    private static final Pattern WORD_AFTER =
            Pattern.compile("[-+]?[0-9][0-9.]*\\s*([^0-9.\\s].*)");
    private static final int LONGEST = 30;

    /** Beyond it no bench value lies, and whole numbers are no longer exact. */
    private static final double LARGEST = 1e15;

    private Numeral() {}

    /** The number the text is; a problem for anything else. */
    static Value<Double> read(Value<String> text) {
        return read(text, amount -> Optional.empty());
    }

    /**
     * The same.
     *
     * @param bare what to write instead of an amount with a unit; empty for the usual advice
     */
    static Value<Double> read(Value<String> text, Function<Amount, Optional<String>> bare) {
        return text.then(
                written -> {
                    if (written.length() > LONGEST || !STRICT.matcher(written).matches()) {
                        return text.wrong(
                                text.label() + " must be a number, not " + Words.quoted(written),
                                Amount.parse(written).flatMap(bare).orElseGet(() -> cure(written)));
                    }
                    double number = Double.parseDouble(written);
                    return Math.abs(number) <= LARGEST
                            ? text.map(same -> number)
                            : text.wrong(
                                    text.label() + " is " + Words.quoted(written) + ", too large",
                                    "write a number below 1000000000000000");
                });
    }

    private static String cure(String written) {
        if (COMMA.matcher(written).matches()) {
            return "write it with a point: " + written.replace(',', '.');
        }
        if (written.contains("_")) {
            return "write it without '_'";
        }
        if (LEADING_ZERO.matcher(written).matches()) {
            return "write it without the leading zero";
        }
        if (OPEN_POINT.matcher(written).matches()) {
            return "write digits on both sides of the point, such as 0.5";
        }
        if (written.contains("#")) {
            return "write a space before the '#' of a comment";
        }
        if (isTypographicMinus(written)) {
            return "write an ordinary '-'";
        }
        Matcher word = WORD_AFTER.matcher(written);
        if (word.matches()) {
            return "write the number alone, without " + Words.quoted(word.group(1));
        }
        return "write digits and at most one point, such as 12 or 0.5";
    }

    /** Whether a number begins with a dash of print instead of the sign of the keyboard. */
    static boolean isTypographicMinus(String written) {
        return TYPOGRAPHIC_MINUS.matcher(written).matches();
    }
}
