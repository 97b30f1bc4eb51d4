package rigside.analysis;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

/** Numbers within sentences. */
final class Figures {

    private Figures() {}

    /** Three significant digits, zeros kept: 1.20, 0.909, 153; whole numbers above. */
    static String three(double value) {
        if (value == 0 || !Double.isFinite(value)) {
            return value == 0 ? "0" : String.valueOf(value);
        }
        BigDecimal rounded =
                new BigDecimal(value).round(new MathContext(3, RoundingMode.HALF_EVEN));
        if (Math.abs(value) >= 1e9 || Math.abs(value) < 1e-4) {
            return rounded.toString();
        }
        int whole = rounded.precision() - rounded.scale();
        return rounded.setScale(Math.max(0, 3 - whole), RoundingMode.UNNECESSARY).toPlainString();
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

    /** A confidence: 95 %, 99.5 %. */
    static String confidence(double share) {
        return BigDecimal.valueOf(100 * share)
                        .round(new MathContext(6))
                        .stripTrailingZeros()
                        .toPlainString()
                + " %";
    }

    /** 1 round, 2 rounds. */
    static String count(int number, String one, String more) {
        return number + " " + (number == 1 ? one : more);
    }

    /** "3", "3 and 5", "3, 5 and 6". */
    static String list(List<?> items) {
        int last = items.size() - 1;
        if (last <= 0) {
            return items.isEmpty() ? "" : items.get(0).toString();
        }
        return String.join(", ", items.subList(0, last).stream().map(Object::toString).toList())
                + " and "
                + items.get(last);
    }

    /** The first letter large. */
    static String sentence(String text) {
        return text.isEmpty()
                ? text
                : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
