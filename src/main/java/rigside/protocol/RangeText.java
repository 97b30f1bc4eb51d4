package rigside.protocol;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rigside.measure.Dimension;
import rigside.measure.Quantity;
import rigside.yaml.Value;
import rigside.yaml.Words;

/**
 * Two quantities with {@code to} between them; the first may leave its unit to the second: {@code
 * 15 to 55 s}.
 *
 * @param from the first, in the file's unit
 * @param to the second, in the file's unit
 */
record RangeText(Quantity from, Quantity to) {
    private static final Pattern TWO = Pattern.compile("(.+?)\\s+to\\s+(.+)");
    private static final Pattern SEVERAL = Pattern.compile(".+\\sto\\s.+\\sto\\s.+");
    private static final Pattern BARE_NUMBER = Pattern.compile("[-+0-9.,_eE]+");

    /** Whether a text is meant as a range. */
    static boolean isRange(String text) {
        return TWO.matcher(text).matches();
    }

    /** A range of one dimension; the order of its ends is left to the caller. */
    static Value<RangeText> read(Value<String> text, Dimension dimension, String example) {
        return text.then(
                written -> {
                    if (SEVERAL.matcher(written).matches()) {
                        return text.wrong(
                                text.label()
                                        + " must be two values with 'to' between them, not "
                                        + Words.quoted(written),
                                "write for example '"
                                        + example
                                        + "'; where several may stand, as a list:"
                                        + " [0 to 10 s, 50 to 60 s]");
                    }
                    Matcher ends = TWO.matcher(written);
                    if (!ends.matches()) {
                        return text.wrong(
                                text.label() + " must be two values with 'to' between them",
                                "write for example '" + example + "'");
                    }
                    Value<Quantity> to =
                            QuantityText.quantity(text.map(same -> ends.group(2)), dimension);
                    String first = ends.group(1);
                    return to.then(
                            high ->
                                    QuantityText.quantity(
                                                    text.map(same -> withUnit(first, high)),
                                                    dimension)
                                            .map(low -> new RangeText(low, high)));
                });
    }

    private static String withUnit(String first, Quantity second) {
        return BARE_NUMBER.matcher(first).matches() ? first + " " + second.unit().symbol() : first;
    }
}
