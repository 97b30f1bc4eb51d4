package rigside.bench;

import com.googlecode.lanterna.input.InputProvider;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/**
 * A thread that does nothing but wait for keys, so that the time of a press is the time it arrived
 * and not the time the picture was next drawn.
 */
final class KeyReader {
    private static final KeyStroke END = new KeyStroke(KeyType.EOF);

    private final BlockingQueue<Pressed> queue = new LinkedBlockingQueue<>();
    private final InputProvider input;
    private final Thread thread;

    private KeyReader(InputProvider input) {
        this.input = input;
        thread = new Thread(this::read, "keys");
        thread.setDaemon(true);
    }

    /** Starts reading from {@code input}. */
    static KeyReader of(InputProvider input) {
        KeyReader reader = new KeyReader(input);
        reader.thread.start();
        return reader;
    }

    private void read() {
        Pressed last = end(System.nanoTime());
        do {
            KeyStroke key = next();
            last = last.then(key, System.nanoTime());
            queue.add(last);
        } while (!last.isEnd());
    }

    /**
     * A terminal that can no longer be read has gone away. Whatever else goes wrong while reading
     * is taken for that too: a dead reader would leave the tester at a keyboard that does nothing.
     */
    private KeyStroke next() {
        try {
            KeyStroke key = input.readInput();
            return key == null ? END : key;
        } catch (IOException | RuntimeException gone) {
            return END;
        }
    }

    /** The next key, if one arrives within {@code waitNanos}. */
    Optional<Pressed> next(long waitNanos) {
        try {
            return Optional.ofNullable(queue.poll(waitNanos, TimeUnit.NANOSECONDS));
        } catch (InterruptedException asked) {
            Thread.currentThread().interrupt();
            return Optional.of(end(System.nanoTime()));
        }
    }

    private static Pressed end(long nanos) {
        return new Pressed(END, nanos, Pressed.FIRST);
    }

    /** From now on the end of input is what is read. */
    void end() {
        queue.clear();
        queue.add(end(System.nanoTime()));
    }
}
