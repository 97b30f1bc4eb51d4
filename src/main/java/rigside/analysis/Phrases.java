package rigside.analysis;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

/** Pieces of sentences: counts, lists, confidences. */
final class Phrases {

    private Phrases() {}

    /**
     * Numbers with the decimal places that give the first of them three digits, so that they can be
     * added and compared; each by itself where that one is no everyday size.
     */
    static List<String> alike(double first, double... more) {
        boolean everyday = Math.abs(first) >= 1e-6 && Math.abs(first) < 1e6;
        int places = everyday ? Math.max(0, 2 - (int) Math.floor(Math.log10(Math.abs(first)))) : -1;
        return DoubleStream.concat(DoubleStream.of(first), DoubleStream.of(more))
                .mapToObj(each -> everyday ? places(each, places) : Digits.three(each))
                .toList();
    }

    private static String places(double value, int places) {
        return Double.isFinite(value)
                ? new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN).toPlainString()
                : String.valueOf(value);
    }

    /** A confidence: 95 %, 99.5 %. */
    static String confidence(double share) {
        return BigDecimal.valueOf(100 * share)
                        .round(new MathContext(6))
                        .stripTrailingZeros()
                        .toPlainString()
                + " %";
    }

    /** A chance of error as a percentage of three digits at most. */
    static String error(double share) {
        return BigDecimal.valueOf(100 * share)
                        .round(new MathContext(3))
                        .stripTrailingZeros()
                        .toPlainString()
                + " %";
    }

    /** 1 round, 2 rounds. */
    static String count(int number, String one, String more) {
        return number + " " + (number == 1 ? one : more);
    }

    /** "both rounds", "all 3 rounds". */
    static String all(int number, String more) {
        return (number == 2 ? "both " : "all " + number + " ") + more;
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
