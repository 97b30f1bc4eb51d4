package rigside.bench;

import java.util.Optional;
import rigside.screen.View;
import rigside.session.Event;

/**
 * How the bench looks and sounds.
 *
 * @param style what the terminal can show, and the trigger
 * @param sound how loud cues are at first; keys change it
 * @param speak the command that speaks cues, if any
 * @param bounceSeconds from 0 to {@link #MOST_BOUNCE_SECONDS}: presses of one key closer together
 *     than this are one press
 * @param selfTest what the last self-test found, if there was one
 * @param version of the program, for the journal
 */
public record Settings(
        View.Style style,
        Loudness sound,
        Optional<String> speak,
        double bounceSeconds,
        Optional<Event.SelfTested> selfTest,
        String version) {
    /** Hands do not press as fast; switches bounce for less, and keys held down repeat faster. */
    public static final double USUAL_BOUNCE_SECONDS = 0.15;

    /** A press of its own must not be lost: less than the shortest pull that is timed. */
    public static final double MOST_BOUNCE_SECONDS = 0.7;

    public Settings {
        if (!(bounceSeconds >= 0 && bounceSeconds <= MOST_BOUNCE_SECONDS)) {
            throw new IllegalArgumentException(
                    "bounce "
                            + bounceSeconds
                            + " s, must be from 0 to "
                            + MOST_BOUNCE_SECONDS
                            + " s");
        }
    }
}
