package rigside.analysis;

import java.math.BigDecimal;

/** A spread as a protocol's {@code expected-spread} takes it: 5.2 %, 1.8 times, 12 Pa. */
public final class SpreadWords {
    /** From here on a factor says more than a percentage. */
    private static final double AS_FACTOR = 1.5;

    private SpreadWords() {}

    /**
     * A size on the scale of the analysis; of a ratio the percentage p with ln(1 + p), or a factor
     * where it is large.
     *
     * @param unit the symbol of the measure's unit; empty for a plain number
     */
    public static String of(boolean ratio, String unit, double size) {
        if (!ratio) {
            return (typed(Digits.two(size)) + " " + unit).strip();
        }
        return Math.exp(size) < AS_FACTOR ? percentage(size) : factor(size);
    }

    static boolean isFactor(double size) {
        return Math.exp(size) >= AS_FACTOR;
    }

    static String percentage(double size) {
        return typed(Digits.two(100 * Math.expm1(size))) + " %";
    }

    static String factor(double size) {
        return typed(Digits.three(Math.exp(size))) + " times";
    }

    /** As a file takes a number: digits without a space between them, and no exponent. */
    private static String typed(String digits) {
        String bare = digits.replaceAll("[\\s\\p{Z}]", "");
        return bare.indexOf('E') < 0 ? bare : new BigDecimal(bare).toPlainString();
    }
}
