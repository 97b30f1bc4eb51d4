package rigside.bench;

import com.googlecode.lanterna.input.InputProvider;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

/** A keyboard: the virtual terminal's own cannot wait for a key and be drawn on at once. */
final class Presses implements InputProvider {
    private final BlockingQueue<KeyStroke> pressed = new LinkedBlockingQueue<>();
    private volatile RuntimeException failure;

    Presses press(KeyStroke key) {
        pressed.add(key);
        return this;
    }

    /** The keyboard breaks at the next key. */
    Presses failing(RuntimeException how) {
        failure = how;
        return press(KeyType.Unknown);
    }

    Presses press(KeyType type) {
        return press(new KeyStroke(type));
    }

    Presses type(String text) {
        text.chars().forEach(each -> press(new KeyStroke((char) each, false, false)));
        return this;
    }

    @Override
    public KeyStroke pollInput() {
        return pressed.poll();
    }

    @Override
    public KeyStroke readInput() throws IOException {
        try {
            KeyStroke key = pressed.take();
            if (failure != null) {
                throw failure;
            }
            return key;
        } catch (InterruptedException ended) {
            throw new IOException(ended);
        }
    }
}
