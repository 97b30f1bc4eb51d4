package rigside.session;

import rigside.measure.Numbers;
import rigside.measure.Quantity;
import rigside.measure.TracedInhalation;
import rigside.measure.Unit;

/**
 * How a pull was held, as roughly as may be said while times of trials are concealed: of a steady
 * pull the exact share inside the band, its rise and fall, tells how long it was.
 */
public final class Roughly {
    private Roughly() {}

    /**
     * A mean pressure to two digits.
     *
     * @param pascals the mean, as in {@link TracedInhalation#meanPa}
     * @param unit what it is said in
     */
    public static Quantity mean(double pascals, Unit unit) {
        return new Quantity(Numbers.rounded(unit.fromSi(pascals), 2), unit);
    }

    /**
     * A share inside the band to the next 10 %.
     *
     * @param share 0 to 1, as in {@link TracedInhalation#withinShare}
     * @return per cent
     */
    public static long percent(double share) {
        return 10 * Math.round(10 * share);
    }
}
