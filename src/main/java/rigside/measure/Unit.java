package rigside.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The units a protocol may name, each with its factor to SI.
 *
 * <p>Water columns are the conventional ones (1000 kg/m3, g = 9.80665 m/s2), so 1 inH2O is
 * 249.08891 Pa; source: NIST Special Publication 811 (2008), appendix B.8. The column at 4 degC
 * differs by 28 parts in a million.
 */
public enum Unit {
    PASCAL("Pa", Dimension.PRESSURE, 1),
    HECTOPASCAL("hPa", Dimension.PRESSURE, 100),
    KILOPASCAL("kPa", Dimension.PRESSURE, 1000),
    MILLIBAR("mbar", Dimension.PRESSURE, 100),
    MILLIMETRE_OF_WATER("mmH2O", Dimension.PRESSURE, 9.80665),
    CENTIMETRE_OF_WATER("cmH2O", Dimension.PRESSURE, 98.0665),
    INCH_OF_WATER("inH2O", Dimension.PRESSURE, 249.08891),
    MILLISECOND("ms", Dimension.TIME, 0.001),
    SECOND("s", Dimension.TIME, 1),
    MINUTE("min", Dimension.TIME, 60),
    HOUR("h", Dimension.TIME, 3600),
    PER_CUBIC_METRE("/m3", Dimension.CONCENTRATION, 1),
    PER_LITRE("/L", Dimension.CONCENTRATION, 1e3),
    PER_CUBIC_CENTIMETRE("/cm3", Dimension.CONCENTRATION, 1e6),
    LITRE_PER_MINUTE("L/min", Dimension.FLOW, 1 / 60_000.0),
    LITRE_PER_SECOND("L/s", Dimension.FLOW, 1e-3),
    CUBIC_METRE_PER_SECOND("m3/s", Dimension.FLOW, 1),
    CUBIC_CENTIMETRE("cm3", Dimension.VOLUME, 1e-6),
    LITRE("L", Dimension.VOLUME, 1e-3),
    CUBIC_METRE("m3", Dimension.VOLUME, 1),
    PASCAL_SECOND_PER_LITRE("Pa s/L", Dimension.RESISTANCE, 1e3),
    PASCAL_SECOND_PER_CUBIC_METRE("Pa s/m3", Dimension.RESISTANCE, 1),
    DEGREE_CELSIUS("degC", Dimension.TEMPERATURE, 1, 273.15),
    KELVIN("K", Dimension.TEMPERATURE, 1),
    MILLIMETRE("mm", Dimension.LENGTH, 1e-3),
    CENTIMETRE("cm", Dimension.LENGTH, 1e-2),
    METRE("m", Dimension.LENGTH, 1),
    GRAM("g", Dimension.MASS, 1e-3),
    KILOGRAM("kg", Dimension.MASS, 1),
    PERCENT("%", Dimension.NUMBER, 0.01),
    ONE("", Dimension.NUMBER, 1);

    private final String symbol;
    private final Dimension dimension;
    private final double factor;
    private final double offset;

    Unit(String symbol, Dimension dimension, double factor) {
        this(symbol, dimension, factor, 0);
    }

    Unit(String symbol, Dimension dimension, double factor, double offset) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.factor = factor;
        this.offset = offset;
    }

    /** As written in files and shown on screens; empty for a plain number. */
    public String symbol() {
        return symbol;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** What an amount in this unit is, in words, for messages: "a pressure", "a percentage". */
    public String words() {
        return this == PERCENT ? "a percentage" : dimension.words();
    }

    /** A value of this unit in the SI unit of its dimension. */
    public double toSi(double value) {
        return value * factor + offset;
    }

    /**
     * An SI difference in this unit: two temperatures that differ by 2 K differ by 2 degC, so a
     * unit's zero does not enter.
     */
    public double differenceFromSi(double si) {
        return si / factor;
    }

    /**
     * Whether its 0 means nothing is there, so that sums and ratios of its values mean anything.
     */
    public boolean hasTrueZero() {
        return offset == 0;
    }

    /** An SI value in this unit. */
    public double fromSi(double si) {
        return (si - offset) / factor;
    }

    /** The unit written so; exact spelling, since m and M or mm and Mm must never be confused. */
    public static Optional<Unit> of(String symbol) {
        return Arrays.stream(values()).filter(unit -> unit.symbol.equals(symbol)).findFirst();
    }

    /** The symbols of one dimension, for messages that say what could have been written. */
    public static List<String> symbols(Dimension dimension) {
        return Arrays.stream(values())
                .filter(unit -> unit.dimension == dimension && !unit.symbol.isEmpty())
                .map(Unit::symbol)
                .toList();
    }
}
