package rigside.journal;

import java.time.ZonedDateTime;
import java.util.Objects;

/**
 * When something happened.
 *
 * @param wall the wall clock with its zone
 * @param at nanoseconds of session time, from 0 at the opening
 */
public record Stamp(ZonedDateTime wall, long at) {
    public Stamp {
        Objects.requireNonNull(wall, "wall");
        if (at < 0) {
            throw new IllegalArgumentException("session time " + at + ", must be 0 or more");
        }
    }
}
