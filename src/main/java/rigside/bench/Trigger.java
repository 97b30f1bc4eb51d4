package rigside.bench;

import com.googlecode.lanterna.input.KeyType;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rigside.screen.Stroke;

/** The trigger, as it is named on the command line: what a foot switch can be set to send. */
public final class Trigger {
    private static final Map<String, Stroke> NAMED = named();

    /** Letters that no key of a session is named by. */
    private static final String FREE_LETTERS = "bcghijkpxz";

    private Trigger() {}

    private static Map<String, Stroke> named() {
        Map<String, Stroke> named = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        named.put("space", Stroke.SPACE);
        named.put("Enter", Stroke.of(KeyType.Enter));
        named.put("Left", Stroke.of(KeyType.ArrowLeft));
        named.put("Right", Stroke.of(KeyType.ArrowRight));
        for (KeyType type :
                new KeyType[] {
                    KeyType.Tab,
                    KeyType.PageUp,
                    KeyType.PageDown,
                    KeyType.Insert,
                    KeyType.Delete,
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
     * The key a name means: one of a few by name, or a digit, a sign or a letter without another
     * use by itself; empty for any other text.
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
                        && (!Character.isLetter(name.charAt(0)) || isFree(name.charAt(0)));
        return sign ? Optional.of(Stroke.of(name.charAt(0))) : Optional.empty();
    }

    private static boolean isFree(char letter) {
        return FREE_LETTERS.indexOf(Character.toLowerCase(letter)) >= 0;
    }

    /** Why a name is no trigger, and which ones are. */
    public static String refusal(String name) {
        return "'"
                + name
                + "' cannot be the trigger; use a digit, a sign, one of the letters "
                + FREE_LETTERS
                + ", or one of: "
                + String.join(", ", NAMED.keySet());
    }
}
