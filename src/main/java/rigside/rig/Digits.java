package rigside.rig;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers with as many digits as they deserve. */
final class Digits {
    private Digits() {}

    /** A finite number rounded to some significant digits. */
    static double round(double number, int digits) {
        return new BigDecimal(number).round(new MathContext(digits)).doubleValue();
    }
}
