package rigside.rig;

import java.util.Optional;

/** What a line turned out to be. */
sealed interface Parsed {
    /**
     * A number, not yet scaled.
     *
     * @param side what the tube of a switched counter is on, if the line says so
     */
    record Found(double raw, Optional<Signal> side) implements Parsed {}

    /** No reading and no fault: blank, a header, or to be passed over. */
    record Passed() implements Parsed {}

    /**
     * Not what the rig file says lines are.
     *
     * @param why in words, without the line
     */
    record Nonsense(String why) implements Parsed {}
}
