package rigside.bench;

import java.util.Optional;

/**
 * Notices a pull that a key held down since its begin has ended: a keyboard may begin to repeat
 * later than any time within which no pull can be over, and its first repeat is like a press. Only
 * what follows tells them apart: a hand that ends a pull and stays on the key is followed by the
 * keyboard's delay, a repeat by the next one.
 */
final class HeldTrigger {
    /** Repeats come ten to thirty times a second, a delay is no shorter than this: from memory. */
    private static final long REPEAT_NANOS = 150_000_000L;

    /** A switch has done bouncing long before. */
    private static final long STREAM_NANOS = 300_000_000L;

    private static final String WORDS =
            "the trigger repeats as if it were held down, and may have ended the pull";

    /** The press that ended a pull, while only repeats have followed it. */
    private Optional<Pressed> end = Optional.empty();

    /**
     * A press that counted.
     *
     * @param endedPull whether it ended a pull
     */
    void taken(Pressed pressed, boolean endedPull) {
        end = endedPull ? Optional.of(pressed) : Optional.empty();
    }

    /**
     * A press that was dropped, as one no hand made; in words, once, when it says the key is held.
     */
    Optional<String> repeated(Pressed pressed) {
        if (end.isEmpty()) {
            return Optional.empty();
        }
        if (pressed.since() >= REPEAT_NANOS) {
            end = Optional.empty();
            return Optional.empty();
        }
        if (pressed.nanos() - end.get().nanos() < STREAM_NANOS) {
            return Optional.empty();
        }
        end = Optional.empty();
        return Optional.of(WORDS);
    }
}
