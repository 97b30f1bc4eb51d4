package rigside.rig;

import rigside.measure.Quantity;
import rigside.measure.Unit;

/**
 * From the number an instrument writes to the SI unit.
 *
 * @param unit the unit of the scaled number
 * @param factor what the number is multiplied by first
 * @param offset what is then added, in {@code unit}
 * @param from the lowest value the instrument can mean, in {@code unit}
 * @param to the highest
 */
record Scale(Unit unit, double factor, double offset, double from, double to) {

    /** The number in {@code unit}. */
    double scaled(double raw) {
        return raw * factor + offset;
    }

    /** Whether the instrument can mean this; not for NaN. */
    boolean takes(double raw) {
        double scaled = scaled(raw);
        return scaled >= from && scaled <= to;
    }

    double si(double raw) {
        return unit.toSi(scaled(raw));
    }

    /** The range in words. */
    String range() {
        return new Quantity(from, unit) + " to " + new Quantity(to, unit);
    }
}
