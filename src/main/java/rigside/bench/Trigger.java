package rigside.bench;

import com.googlecode.lanterna.input.KeyType;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rigside.screen.Stroke;

/** The trigger, as it is named on the command line: what a foot switch can be set to send. */
public final class Trigger {
    private static final Map<String, Stroke> NAMED = named();

    private Trigger() {}

    private static Map<String, Stroke> named() {
        Map<String, Stroke> named = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        named.put("space", Stroke.SPACE);
        for (KeyType type :
                new KeyType[] {
                    KeyType.Tab,
                    KeyType.PageUp,
                    KeyType.PageDown,
                    KeyType.Insert,
                    KeyType.F2,
                    KeyType.F3,
                    KeyType.F4,
                    KeyType.F5,
                    KeyType.F6,
                    KeyType.F7,
                    KeyType.F8,
                    KeyType.F9,
                    KeyType.F10,
                    KeyType.F11,
                    KeyType.F12
                }) {
            named.put(type.toString(), Stroke.of(type));
        }
        return named;
    }

    /**
     * The key a name means: one of a few by name, or a digit or sign by itself; empty for any other
     * text. Letters have other uses.
     */
    public static Optional<Stroke> parse(String name) {
        if (NAMED.containsKey(name)) {
            return Optional.of(NAMED.get(name));
        }
        boolean sign =
                name.length() == 1
                        && name.charAt(0) > ' '
                        && name.charAt(0) < 127
                        && name.charAt(0) != '?'
                        && !Character.isLetter(name.charAt(0));
        return sign ? Optional.of(Stroke.of(name.charAt(0))) : Optional.empty();
    }

    /** Why a name is no trigger, and which ones are. */
    public static String refusal(String name) {
        return "'"
                + name
                + "' cannot be the trigger; use a digit, a sign, or one of: "
                + String.join(", ", NAMED.keySet());
    }
}
