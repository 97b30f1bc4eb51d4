package rigside.bench;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import rigside.screen.Stroke;

/**
 * A key and the moment it arrived.
 *
 * @param key the key; the end of input is a key too
 * @param nanos {@code System.nanoTime} as the read of it returned
 * @param since nanoseconds since the same key was pressed just before; {@link #FIRST} when another
 *     key was, or none
 */
public record Pressed(KeyStroke key, long nanos, long since) {
    /** Not the key that was pressed just before. */
    public static final long FIRST = Long.MAX_VALUE;

    /** The press that follows this one. */
    Pressed then(KeyStroke next, long at) {
        boolean same = Stroke.of(next).equals(Stroke.of(key));
        return new Pressed(next, at, same ? at - nanos : FIRST);
    }

    /**
     * Whether no hand made this press: a switch bounced, or the key is held down and repeats.
     *
     * @param seconds how close together presses are one
     */
    public boolean isRepeat(double seconds) {
        return since < seconds * 1e9;
    }

    /** Whether no key will follow: the terminal is gone, or the program was told to end. */
    public boolean isEnd() {
        return key.getKeyType() == KeyType.EOF;
    }
}
