package rigside.yaml;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with the unit written after it; which units there are is not known here.
 *
 * @param number finite
 * @param unit as written, without spaces around it; empty for a bare number
 */
public record Amount(double number, String unit) {
    /** A number, as a regular expression. */
    public static final String NUMBER = Numeral.SIGNED;

    /** A number without a minus sign, as a regular expression. */
    public static final String NOT_NEGATIVE = "[+]?" + Numeral.UNSIGNED;

    private static final Pattern NUMBER_FIRST =
            Pattern.compile("([-+]?[0-9.,_]+(?:[eE][-+]?[0-9]+)?)\\s*(.*)");

    private static final Pattern CURLY_QUOTE = Pattern.compile("[\u2018-\u201f\u00ab\u00bb]");

    /** Minutes and seconds, or several amounts. */
    private static final Pattern SEVERAL = Pattern.compile(":.*|.*[\\s,]\\d.*");

    /**
     * The amount a text is, such as {@code 90 s} or {@code 10%}; a problem for anything else.
     *
     * @param example what could be written, for the message
     */
    public static Value<Amount> read(Value<String> text, String example) {
        return text.then(
                written -> {
                    Matcher parts = NUMBER_FIRST.matcher(written);
                    if (!parts.matches()) {
                        return text.wrong(
                                text.label()
                                        + " must begin with a number, not "
                                        + Words.quoted(written),
                                cure(written, example));
                    }
                    String unit = parts.group(2).strip();
                    if (!unit.isEmpty() && Character.isDigit(unit.charAt(0))) {
                        return text.wrong(
                                text.label()
                                        + " has a space in its number "
                                        + Words.quoted(written),
                                "write the digits without spaces, such as 1500");
                    }
                    if (SEVERAL.matcher(unit).matches()) {
                        return text.wrong(
                                text.label()
                                        + " must be one number with its unit, not "
                                        + Words.quoted(written),
                                "write for example '" + example + "'");
                    }
                    return Numeral.read(text.map(same -> parts.group(1)))
                            .map(number -> new Amount(number, unit));
                });
    }

    /** The amount a text is; empty for anything else. */
    static Optional<Amount> parse(String text) {
        Matcher parts = NUMBER_FIRST.matcher(text);
        return parts.matches() && parts.group(1).matches(NUMBER)
                ? Optional.of(
                        new Amount(Double.parseDouble(parts.group(1)), parts.group(2).strip()))
                : Optional.empty();
    }

    private static String cure(String written, String example) {
        if (Numeral.isTypographicMinus(written)) {
            return "write an ordinary '-'";
        }
        return CURLY_QUOTE.matcher(written).lookingAt()
                ? "write it without quotes"
                : "write for example '" + example + "'";
    }
}
