package rigside.decide;

import java.util.function.DoubleUnaryOperator;

/** Where a falling function takes a value. */
final class Falling {
    private Falling() {}

    /**
     * The x of at least 0 at which the function has the value, to the last digits; 0 where it is
     * lower from the start.
     *
     * @param falling from x = 0 on, towards 0
     * @param value above 0
     * @param scale a usual size of x, above 0: where to begin looking
     */
    static double root(DoubleUnaryOperator falling, double value, double scale) {
        if (!(falling.applyAsDouble(0) > value)) {
            return 0;
        }
        double low = 0;
        double high = scale;
        while (falling.applyAsDouble(high) > value) {
            low = high;
            high *= 2;
        }
        while (high - low > 1e-15 * high) {
            double middle = (low + high) / 2;
            if (middle <= low || middle >= high) {
                break;
            }
            if (falling.applyAsDouble(middle) > value) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
