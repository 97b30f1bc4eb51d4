package rigside.rig;

import java.util.Optional;
import rigside.measure.Unit;

/**
 * How a recorded trace says when its lines came.
 *
 * @param time the column that holds the time, on any scale; empty for a trace recorded by this
 *     program, which writes the seconds before each line
 * @param separator what stands between the columns
 * @param decimalComma whether times are written with a comma
 * @param unit the unit of the time
 */
record TraceForm(Optional<Column> time, Separator separator, boolean decimalComma, Unit unit) {}
