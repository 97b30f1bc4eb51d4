package rigside.bench;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.graphics.TextGraphics;
import com.googlecode.lanterna.input.InputProvider;
import com.googlecode.lanterna.screen.Screen;
import com.googlecode.lanterna.screen.TerminalScreen;
import com.googlecode.lanterna.terminal.Terminal;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;

/**
 * The full screen and the keys, from the moment it is opened until the terminal is as it was
 * before. Drawn on and asked by one thread.
 */
public final class Console implements AutoCloseable {
    /** How long a program told to end may take to leave the session in order. */
    private static final long PATIENCE_SECONDS = 3;

    /** How often the size is asked where no signal tells of a change. */
    private static final long SIZE_EVERY_NANOS = 1_000_000_000L;

    private final Terminal terminal;
    private final TerminalScreen screen;
    private final Runnable restore;
    private final KeyReader keys;
    private final CountDownLatch closed = new CountDownLatch(1);
    private final AtomicBoolean resized = new AtomicBoolean();
    private boolean told = true;
    private long sizeAsked = System.nanoTime();

    /**
     * A full screen on a terminal.
     *
     * @param input where keys come from; asked by a thread of its own
     * @param restore puts the terminal's settings back
     */
    Console(Terminal terminal, InputProvider input, Runnable restore) throws IOException {
        this.terminal = terminal;
        this.restore = restore;
        screen = new TerminalScreen(terminal);
        screen.setCursorPosition(null);
        screen.startScreen();
        terminal.addResizeListener((changed, size) -> resized.set(true));
        keys = KeyReader.of(input);
    }

    /**
     * Takes the terminal over, until {@link #close}; a program told to end closes it too.
     *
     * @throws NoTerminal if keys or picture are not at a terminal, or it cannot place text
     */
    public static Console open() throws NoTerminal {
        if (!Stty.atTerminal()) {
            throw new NoTerminal(
                    "this needs a terminal: neither its keys nor its picture can go elsewhere");
        }
        String term = System.getenv("TERM");
        if (term == null || term.isEmpty() || term.equals("dumb")) {
            throw new NoTerminal("the terminal cannot place text; start from another terminal");
        }
        String settings =
                Stty.settings()
                        .orElseThrow(() -> new NoTerminal("the terminal's settings are unknown"));
        RawTerminal terminal = new RawTerminal();
        Thread hook = new Thread(() -> Stty.restore(settings), "restore");
        Runtime.getRuntime().addShutdownHook(hook);
        Stty.raw();
        try {
            Console console = new Console(terminal, terminal, () -> Stty.restore(settings));
            Runtime.getRuntime().addShutdownHook(new Thread(console::end, "end"));
            console.told = RawTerminal.onResize(() -> console.resized.set(true));
            Runtime.getRuntime().removeShutdownHook(hook);
            return console;
        } catch (IOException broken) {
            Stty.restore(settings);
            throw new UncheckedIOException("the terminal cannot be written", broken);
        }
    }

    /** The size as last drawn. */
    public TerminalSize size() {
        return screen.getTerminalSize();
    }

    /** Draws one picture; only what changed since the last one goes out. */
    public void draw(Consumer<TextGraphics> picture) {
        draw(
                graphics -> {
                    graphics.fill(' ');
                    picture.accept(graphics);
                },
                sizeChanged());
    }

    /**
     * Draws on the picture that is there, whose size is the same: of a large one most cells need
     * not be touched at all.
     */
    public void drawOver(Consumer<TextGraphics> change) {
        draw(change, false);
    }

    private void draw(Consumer<TextGraphics> picture, boolean shifted) {
        try {
            picture.accept(screen.newTextGraphics());
            // Cells the terminal moved about are not in the difference.
            screen.refresh(shifted ? Screen.RefreshType.COMPLETE : Screen.RefreshType.DELTA);
        } catch (IOException broken) {
            throw new UncheckedIOException("the terminal cannot be written", broken);
        }
    }

    /** Whether the size may have changed since the last picture, which then has to be drawn. */
    public boolean isStale() {
        return resized.get() || (!told && System.nanoTime() - sizeAsked > SIZE_EVERY_NANOS);
    }

    /** Every cell is asked again: a change of size shifts what the terminal shows already. */
    private boolean sizeChanged() {
        if (!isStale()) {
            return false;
        }
        resized.set(false);
        sizeAsked = System.nanoTime();
        if (terminal instanceof RawTerminal raw) {
            raw.forgetSize();
            try {
                raw.getTerminalSize();
            } catch (IOException broken) {
                throw new UncheckedIOException("the terminal cannot be asked", broken);
            }
        }
        return screen.doResizeIfNecessary() != null;
    }

    /** The next key, if one arrives within {@code waitNanos}; the end of input is a key too. */
    public Optional<Pressed> next(long waitNanos) {
        return keys.next(waitNanos);
    }

    /**
     * Asks the terminal where its cursor is: the answer comes as a key. One that cannot be asked
     * never answers.
     */
    void askCursor() {
        if (terminal instanceof RawTerminal raw) {
            try {
                raw.askCursor();
            } catch (IOException broken) {
                throw new UncheckedIOException("the terminal cannot be written", broken);
            }
        }
    }

    /** Rings the terminal's bell. */
    public void bell() {
        try {
            terminal.bell();
            terminal.flush();
        } catch (IOException broken) {
            throw new UncheckedIOException("the terminal cannot be written", broken);
        }
    }

    /**
     * The terminal is as it was before. Told to end, the program gets the end of input as its next
     * key, and this waits until it has left, so that nothing is drawn on a terminal given back.
     */
    private void end() {
        keys.end();
        try {
            if (!closed.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                close();
            }
        } catch (InterruptedException hurried) {
            close();
        }
    }

    @Override
    public void close() {
        if (closed.getCount() == 0) {
            return;
        }
        try {
            screen.stopScreen(false);
        } catch (IOException gone) {
            // The terminal has gone away; its settings may still be worth putting back.
        } finally {
            restore.run();
            closed.countDown();
        }
    }
}
