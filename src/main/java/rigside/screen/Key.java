package rigside.screen;

import java.util.List;

/**
 * A key that is live now.
 *
 * @param label the key as the bottom line names it
 * @param help what it does, in a word or two; empty when the next key says it for both
 * @param action what it does
 * @param strokes every press that means it; at least one
 */
public record Key(String label, String help, Action action, List<Stroke> strokes) {
    public Key {
        strokes = List.copyOf(strokes);
    }

    static Key of(Stroke stroke, String help, Action action) {
        return new Key(stroke.label(), help, action, List.of(stroke));
    }

    boolean matches(Stroke pressed) {
        return strokes.contains(pressed);
    }
}
