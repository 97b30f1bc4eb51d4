package rigside.bench;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.ansi.ANSITerminal;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.lang.reflect.Proxy;
import java.nio.charset.StandardCharsets;

/**
 * The terminal this program was started from.
 *
 * <p>Not Lanterna's own Unix terminal: that one changes the settings in four calls and puts them
 * back from a thread that runs while the picture may still be drawn.
 */
final class RawTerminal extends ANSITerminal {
    /** A whole picture goes out in one write; through the standard stream it was thousands. */
    private static final int BUFFER = 64 * 1024;

    private volatile boolean sizeKnown;
    private volatile TerminalSize size = new TerminalSize(80, 24);

    /** UTF-8 whatever the locale: in a bare locale Java would print question marks. */
    RawTerminal() {
        super(
                new FileInputStream(FileDescriptor.in),
                new BufferedOutputStream(new FileOutputStream(FileDescriptor.out), BUFFER),
                StandardCharsets.UTF_8);
    }

    @Override
    protected TerminalSize findTerminalSize() {
        if (!sizeKnown) {
            sizeKnown = true;
            size = Stty.size();
        }
        return size;
    }

    /** From the fifth row: in the first the answer could be taken for a key with Shift. */
    void askCursor() throws IOException {
        setCursorPosition(4, 4);
        writeToTerminal("\u001b[6n".getBytes(StandardCharsets.US_ASCII));
        flush();
    }

    /** The size is asked anew when it is next wanted. */
    void forgetSize() {
        sizeKnown = false;
    }

    /**
     * Calls {@code changed} whenever the window changes its size.
     *
     * <p>By reflection: the compiler knows no public type for signals.
     *
     * @return whether this machine tells
     */
    static boolean onResize(Runnable changed) {
        try {
            Class<?> signal = Class.forName("sun.misc.Signal");
            Class<?> handler = Class.forName("sun.misc.SignalHandler");
            Object calls =
                    Proxy.newProxyInstance(
                            handler.getClassLoader(),
                            new Class<?>[] {handler},
                            (proxy, method, arguments) -> {
                                changed.run();
                                return null;
                            });
            Object winch = signal.getConstructor(String.class).newInstance("WINCH");
            signal.getMethod("handle", signal, handler).invoke(null, winch, calls);
            return true;
        } catch (ReflectiveOperationException | IllegalArgumentException unknown) {
            return false;
        }
    }
}
