package rigside.journey;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.DoubleFunction;

/** An invented instrument that writes a line twenty times a second, whoever listens. */
final class Instrument implements AutoCloseable {
    private static final long EVERY_MILLIS = 50;
    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(20);

    private final Path target;
    private final long begun = System.nanoTime();
    private volatile DoubleFunction<String> lines;
    private final AtomicLong written = new AtomicLong();
    private final CountDownLatch stop = new CountDownLatch(1);
    private FileChannel open;
    private volatile boolean well;

    private Instrument(Path target, DoubleFunction<String> lines) {
        this.target = target;
        this.lines = lines;
    }

    static Instrument writing(Path target, String line) {
        return writing(target, seconds -> line);
    }

    /** An instrument whose line depends on the seconds it has been there. */
    static Instrument writing(Path target, DoubleFunction<String> lines) {
        Instrument instrument = new Instrument(target, lines);
        Thread thread = new Thread(instrument::play, "instrument");
        thread.setDaemon(true);
        thread.start();
        return instrument;
    }

    /** From now on it writes this line. */
    void shows(String line) {
        shows(seconds -> line);
    }

    void shows(DoubleFunction<String> next) {
        lines = next;
    }

    /** Waits until it has written so many lines more. */
    void writes(long more) {
        long until = System.nanoTime() + PATIENCE_NANOS;
        long wanted = written.get() + more;
        while (written.get() < wanted) {
            if (System.nanoTime() > until) {
                fail("the instrument cannot write");
            }
            Thread.onSpinWait();
        }
    }

    private void play() {
        try {
            while (!stop.await(EVERY_MILLIS, TimeUnit.MILLISECONDS)) {
                write();
            }
        } catch (InterruptedException stopped) {
            forget();
        }
    }

    /** What is torn out is tried again at the next line. */
    private void write() {
        try {
            if (open == null) {
                // Opened for reading too, a pipe does not wait for its reader.
                open = FileChannel.open(target, StandardOpenOption.READ, StandardOpenOption.WRITE);
                if (Files.isRegularFile(target)) {
                    open.position(open.size());
                }
            }
            String line = lines.apply((System.nanoTime() - begun) / 1e9);
            open.write(ByteBuffer.wrap(line.getBytes(StandardCharsets.US_ASCII)));
            written.incrementAndGet();
            well = true;
        } catch (IOException torn) {
            well = false;
            forget();
        }
    }

    private void forget() {
        try {
            if (open != null) {
                open.close();
            }
        } catch (IOException gone) {
            well = false;
        }
        open = null;
    }

    /** Whether its last line could be written. */
    boolean isWell() {
        return well;
    }

    /** It writes no more. */
    void fallsSilent() {
        stop.countDown();
    }

    @Override
    public void close() {
        stop.countDown();
    }

    /** A named pipe. */
    static Path pipe(Path name) throws IOException, InterruptedException {
        Needed.toRun("mkfifo", name.toString());
        return name;
    }

    /** A serial line with two ends, as pseudo terminals. */
    static Process line(Path ours, Path theirs) throws IOException, InterruptedException {
        Needed.toRun("socat", "-V");
        Process socat =
                new ProcessBuilder(
                                "socat",
                                "pty,raw,echo=0,link=" + ours,
                                "pty,raw,echo=0,link=" + theirs)
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
        long until = System.nanoTime() + PATIENCE_NANOS;
        while (!(Files.exists(ours) && Files.exists(theirs))) {
            if (System.nanoTime() > until) {
                fail("socat made no line");
            }
            Thread.onSpinWait();
        }
        return socat;
    }

    static void end(Process process) throws InterruptedException {
        process.destroy();
        process.waitFor();
    }
}
