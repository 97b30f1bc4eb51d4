package rigside.rig;

import java.util.OptionalDouble;
import rigside.measure.Unit;

/**
 * How a feed is doing now.
 *
 * @param id its word
 * @param well whether nothing is wrong with it
 * @param value what it reads now, in {@code unit}; empty when nothing came lately
 * @param unit the unit the rig file names
 * @param perSecond readings a second over the last five seconds
 * @param count readings so far
 * @param nonsense lines so far that were no readings
 * @param dropped arrivals nobody came for in time
 */
public record FeedState(
        String id,
        boolean well,
        OptionalDouble value,
        Unit unit,
        double perSecond,
        long count,
        long nonsense,
        long dropped) {}
