package rigside.measure;

import java.util.ArrayList;
import java.util.List;

/**
 * The powers of SI base units a dimension is made of: a pressure is kg m^-1 s^-2. Source: The
 * International System of Units (SI Brochure), 9th edition, 2019, section 2.3.3.
 *
 * @param kilogram the power of the kilogram
 * @param metre the power of the metre
 * @param second the power of the second
 * @param kelvin the power of the kelvin
 */
public record Powers(int kilogram, int metre, int second, int kelvin) {
    public Powers times(Powers other) {
        return new Powers(
                kilogram + other.kilogram,
                metre + other.metre,
                second + other.second,
                kelvin + other.kelvin);
    }

    public Powers over(Powers other) {
        return new Powers(
                kilogram - other.kilogram,
                metre - other.metre,
                second - other.second,
                kelvin - other.kelvin);
    }

    /** In base units, {@code kg m^-1 s^-2}; {@code 1} for a plain number. */
    @Override
    public String toString() {
        List<String> units = new ArrayList<>();
        add(units, "kg", kilogram);
        add(units, "m", metre);
        add(units, "s", second);
        add(units, "K", kelvin);
        return units.isEmpty() ? "1" : String.join(" ", units);
    }

    private static void add(List<String> units, String symbol, int power) {
        if (power != 0) {
            units.add(power == 1 ? symbol : symbol + "^" + power);
        }
    }
}
