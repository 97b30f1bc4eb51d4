package rigside.session;

import java.time.ZonedDateTime;

/**
 * An event with when it happened.
 *
 * @param number its number in the journal, from 1
 * @param wall the wall clock with its zone
 * @param at nanoseconds of session time: monotonic, from 0 at the opening, going on by the wall
 *     clock over breaks
 * @param event what happened
 */
public record Recorded(long number, ZonedDateTime wall, long at, Event event) {}
