package rigside.rig;

import java.util.Optional;

/**
 * One timed reading.
 *
 * @param at when its line was complete, in nanoseconds of session time
 * @param si in the SI unit of what is measured; finite
 * @param side what the tube of a switched counter was on, if the line says so
 */
public record Reading(long at, double si, Optional<Signal> side) {}
