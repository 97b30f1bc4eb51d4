package rigside.rig;

import java.util.OptionalDouble;
import rigside.measure.Unit;

/**
 * A line as it was read, for somebody who checks the wiring.
 *
 * @param feed the feed's id
 * @param at when it was complete, in nanoseconds of session time
 * @param text the line; may hold anything
 * @param value what it reads, in {@code unit}; empty when it is no reading
 * @param unit the unit the rig file names
 * @param side for a switched counter whose lines say it, what its tube is on; otherwise empty
 * @param why why it is no reading; empty when it is one, or is to be passed over
 */
public record Seen(
        String feed,
        long at,
        String text,
        OptionalDouble value,
        Unit unit,
        String side,
        String why) {}
