package rigside.rig;

import java.util.OptionalDouble;

/**
 * What a signal that an instrument follows reads now.
 *
 * @param si the mean of its last readings, in the SI unit; empty when nothing came lately
 */
public record Now(OptionalDouble si) {
    /** Nothing came lately. */
    public static final Now SILENT = new Now(OptionalDouble.empty());
}
