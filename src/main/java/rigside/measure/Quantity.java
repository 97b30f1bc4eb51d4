package rigside.measure;

/**
 * A finite number with its unit.
 *
 * @param value the number in {@code unit}
 * @param unit the unit as written or typed
 */
public record Quantity(double value, Unit unit) {
    public Quantity {
        if (!(Math.abs(value) <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("value " + value + ", must be a finite number");
        }
    }

    /** The value in the SI unit of its dimension (Pa, s, 1/m3, m3/s, m3, K, m, kg, 1). */
    public double si() {
        return unit.toSi(value);
    }

    /**
     * The same quantity in another unit.
     *
     * @throws IllegalArgumentException if the dimensions differ
     */
    public Quantity in(Unit other) {
        if (other.dimension() != unit.dimension()) {
            throw new IllegalArgumentException(
                    "unit " + other.symbol() + ", must measure " + unit.dimension().words());
        }
        return other == unit ? this : new Quantity(other.fromSi(si()), other);
    }

    /** The number and its unit, in at most six significant digits: {@code 12.4 s}. */
    @Override
    public String toString() {
        return (Numbers.plain(value) + " " + unit.symbol()).strip();
    }
}
