package rigside.protocol;

import java.util.Locale;
import rigside.measure.Dimension;
import rigside.measure.Unit;

/** The kinds of measure as a file names them (in lower case with hyphens), and their defaults. */
enum MeasureKind {
    /** It has no step of its own: its concentrations have. */
    FIT_FACTOR(Dimension.NUMBER, Unit.ONE, 0),
    /** The clock is read to a hundredth of a second, in seconds. */
    TIMED_INHALATION(Dimension.TIME, Unit.SECOND, 0.01),
    /** What a bench manometer's last digit usually is, in Pa: common practice, no source. */
    PRESSURE_TRACE(Dimension.PRESSURE, Unit.PASCAL, 1),
    /** Unit and resolution are the file's to say. */
    TYPED_NUMBER(Dimension.NUMBER, Unit.ONE, 0),
    /** Unit and resolution are the file's to say. */
    CALCULATED(Dimension.NUMBER, Unit.ONE, 0);

    final Dimension dimension;
    final Unit unit;

    /** The smallest step a value can show unless the file says it, in SI. */
    final double resolution;

    MeasureKind(Dimension dimension, Unit unit, double resolution) {
        this.dimension = dimension;
        this.unit = unit;
        this.resolution = resolution;
    }

    /** Whether its unit and its resolution are the file's to say. */
    boolean isStated() {
        return this == TYPED_NUMBER || this == CALCULATED;
    }

    /** As a file writes it. */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
