package rigside.screen;

import java.util.List;
import java.util.Optional;

/**
 * What a tester looks at during a self-test.
 *
 * @param title what is tested now
 * @param big what is to be read first, if anything
 * @param lines what to do, or what was found; a blank one parts
 * @param message what is said to the last press, if anything
 * @param keys every live key and what it does
 * @param style what the terminal can show, and the trigger
 */
public record SelfTestView(
        String title,
        Optional<String> big,
        List<String> lines,
        Optional<String> message,
        List<LiveKey> keys,
        View.Style style) {
    public SelfTestView {
        lines = List.copyOf(lines);
        keys = List.copyOf(keys);
    }

    /**
     * A key that is live.
     *
     * @param stroke the key
     * @param help what it does
     */
    public record LiveKey(Stroke stroke, String help) {}
}
