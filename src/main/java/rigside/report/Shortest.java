package rigside.report;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers for machines: the fewest digits that read back as the same number. */
final class Shortest {
    /** Fewer are often enough, and 17 always are (IEEE 754 double precision). */
    private static final int FEWEST = 15;

    private static final int MOST = 17;

    /** Beyond these powers of ten numbers are written with an exponent. */
    private static final int LONGEST = 21;

    private Shortest() {}

    /**
     * With a point, without separators: {@code 12.4}, {@code 0.001}, {@code 1.5E+30}.
     *
     * @param number finite
     */
    static String of(double number) {
        BigDecimal exact = new BigDecimal(number);
        for (int digits = FEWEST; digits < MOST; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits));
            if (rounded.doubleValue() == number) {
                return written(rounded);
            }
        }
        return written(exact.round(new MathContext(MOST)));
    }

    private static String written(BigDecimal number) {
        if (number.signum() == 0) {
            return "0";
        }
        BigDecimal bare = number.stripTrailingZeros();
        int magnitude = bare.precision() - bare.scale();
        return Math.abs(magnitude) <= LONGEST ? bare.toPlainString() : bare.toString();
    }
}
