package rigside.rig;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Numbers as instruments write them. */
final class Decimal {
    /** Leading zeros and a missing digit beside the point are common; words and hex are not. */
    private static final Pattern WRITTEN =
            Pattern.compile(
                    "[-+]?(?:[0-9]{1,30}\\.?[0-9]{0,30}|\\.[0-9]{1,30})(?:[eE][-+]?[0-9]{1,3})?");

    private Decimal() {}

    /** The finite number a text is; empty for anything else. */
    static OptionalDouble read(String text, boolean comma) {
        if (comma && text.indexOf('.') >= 0) {
            return OptionalDouble.empty();
        }
        String written = comma ? text.replace(',', '.') : text;
        if (!WRITTEN.matcher(written).matches()) {
            return OptionalDouble.empty();
        }
        double number = Double.parseDouble(written);
        return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
    }
}
