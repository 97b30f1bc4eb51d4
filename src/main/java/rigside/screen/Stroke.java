package rigside.screen;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;

/**
 * One press on the keyboard, as far as keys are told apart here: letters without regard to case.
 *
 * @param type the kind of key
 * @param character the character in lower case for {@link KeyType#Character}, else a space
 * @param ctrl whether Ctrl was held
 */
public record Stroke(KeyType type, char character, boolean ctrl) {

    /** The space bar: the trigger unless another key is configured. */
    public static final Stroke SPACE = of(' ');

    /** A plain character. */
    public static Stroke of(char character) {
        return new Stroke(KeyType.Character, Character.toLowerCase(character), false);
    }

    /** A character with Ctrl. */
    public static Stroke ctrl(char character) {
        return new Stroke(KeyType.Character, Character.toLowerCase(character), true);
    }

    /** A key that is not a character. */
    public static Stroke of(KeyType type) {
        return new Stroke(type, ' ', false);
    }

    /**
     * What was pressed. Shift makes no difference; neither does Ctrl on keys without a character.
     */
    public static Stroke of(KeyStroke pressed) {
        return pressed.getKeyType() == KeyType.Character
                ? new Stroke(
                        KeyType.Character,
                        Character.toLowerCase(pressed.getCharacter()),
                        pressed.isCtrlDown())
                : of(pressed.getKeyType());
    }

    /** Whether this press would put a character into a line of text. */
    public boolean types() {
        return type == KeyType.Character && !ctrl;
    }

    /** The key as the bottom line names it. */
    public String label() {
        if (type == KeyType.Character) {
            String name = character == ' ' ? "Space" : String.valueOf(character);
            return ctrl ? "Ctrl-" + Character.toUpperCase(character) : name;
        }
        return switch (type) {
            case Escape -> "Esc";
            case ArrowUp -> "Up";
            case ArrowDown -> "Down";
            case ArrowLeft -> "Left";
            case ArrowRight -> "Right";
            case PageUp -> "PgUp";
            case PageDown -> "PgDn";
            default -> type.toString();
        };
    }
}
