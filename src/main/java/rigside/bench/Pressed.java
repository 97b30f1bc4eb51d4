package rigside.bench;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;

/**
 * A key and the moment it arrived.
 *
 * @param key the key; the end of input is a key too
 * @param nanos {@code System.nanoTime} as the read of it returned
 */
public record Pressed(KeyStroke key, long nanos) {

    /** Whether no key will follow: the terminal is gone, or the program was told to end. */
    public boolean isEnd() {
        return key.getKeyType() == KeyType.EOF;
    }
}
