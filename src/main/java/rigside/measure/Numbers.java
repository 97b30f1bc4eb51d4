package rigside.measure;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as people read them: always a decimal point, never an exponent for everyday sizes. */
public final class Numbers {
    private Numbers() {}

    /** A percentage as a share, to the digit it was written to: 99.9 is 0.999. */
    public static double ofPercent(double percent) {
        return Double.isFinite(percent)
                ? BigDecimal.valueOf(percent).movePointLeft(2).doubleValue()
                : percent / 100;
    }

    /** So many significant digits of it. */
    public static double rounded(double value, int digits) {
        return new BigDecimal(value).round(new MathContext(digits)).doubleValue();
    }

    /**
     * At most six significant digits without trailing zeros; an exponent only beyond 1e-6 and 1e9.
     */
    public static String plain(double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return String.valueOf(value);
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(6)).stripTrailingZeros();
        double size = Math.abs(value);
        return size < 1e-6 || size >= 1e9 ? rounded.toString() : rounded.toPlainString();
    }
}
