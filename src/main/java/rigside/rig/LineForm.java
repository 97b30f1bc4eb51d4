package rigside.rig;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * How a line of an instrument is read.
 *
 * @param shape where in the line the number stands
 * @param decimalComma whether numbers are written with a comma
 * @param passOver lines it finds are no readings and no faults either
 * @param sides for a switched counter whose lines say it, the words for what its tube is on;
 *     otherwise empty
 */
record LineForm(
        Shape shape, boolean decimalComma, Optional<Pattern> passOver, Map<String, Signal> sides) {
    LineForm {
        sides = Map.copyOf(sides);
    }

    /** Where in a line its number stands. */
    sealed interface Shape {}

    /**
     * In a column.
     *
     * @param side the column that says what the tube is on
     */
    record Columns(Separator separator, Column value, Optional<Column> side) implements Shape {}

    /** In the group {@code value} of a pattern; what the tube is on in its group {@code side}. */
    record Named(Pattern pattern) implements Shape {}

    /** Whether a header line has to be seen before any line can be read. */
    boolean needsHeader() {
        return shape instanceof Columns columns
                && (columns.value().isNamed()
                        || columns.side().filter(Column::isNamed).isPresent());
    }
}
