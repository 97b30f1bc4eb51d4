package rigside.rig;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.locks.LockSupport;

/**
 * How late lines are stamped: written at a known instant to a pipe, a growing file and a pseudo
 * terminal. Run by hand, for the figures of DEVELOPERS.md; needs mkfifo and socat.
 */
final class StampStudy {
    private static final int LINES = 1000;

    private StampStudy() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("stamps");
        Path pipe = folder.resolve("pipe");
        new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor();
        study("pipe", new Origin.Piped(pipe), pipe);
        Path file = Files.createFile(folder.resolve("file"));
        study("file", new Origin.Appended(file), file);
        Path ours = folder.resolve("ours");
        Path theirs = folder.resolve("theirs");
        Process socat =
                new ProcessBuilder(
                                "socat",
                                "pty,raw,echo=0,link=" + ours,
                                "pty,raw,echo=0,link=" + theirs)
                        .start();
        Patiently.until(() -> Files.exists(theirs), () -> "a serial line");
        study("serial", new Origin.Serial(ours.toString(), 9600, 8, Origin.Parity.NONE, 1), theirs);
        socat.destroy();
    }

    private static void study(String name, Origin origin, Path target) throws IOException {
        ArrivalQueue queue = new ArrivalQueue();
        Kept kept = new Kept(name, RawSink.NONE);
        long[] late = new long[LINES];
        Random random = new Random(1);
        try (Listener listener =
                        new Listener(name, Wires.to(origin), System::nanoTime, kept, queue);
                FileChannel out =
                        FileChannel.open(
                                target, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            listener.start();
            Patiently.until(() -> !queue.drain().isEmpty(), () -> "opened");
            out.write(ByteBuffer.wrap(new byte[] {'\n'}));
            pause(random);
            queue.drain();
            for (int at = 0; at < LINES; at++) {
                pause(random);
                long written = System.nanoTime();
                out.write(ByteBuffer.wrap(("" + at + "\n").getBytes(StandardCharsets.US_ASCII)));
                List<Arrival> got = next(queue);
                late[at] = got.get(0).at() - written;
            }
        }
        Arrays.sort(late);
        System.out.printf(
                "%s: stamped late, median %.2f ms, p99 %.2f ms, most %.2f ms%n",
                name, late[LINES / 2] / 1e6, late[LINES * 99 / 100] / 1e6, late[LINES - 1] / 1e6);
    }

    private static List<Arrival> next(ArrivalQueue queue) {
        long until = System.nanoTime() + 5_000_000_000L;
        while (System.nanoTime() < until) {
            List<Arrival> got = queue.drain();
            if (!got.isEmpty()) {
                return got;
            }
            LockSupport.parkNanos(2_000_000);
        }
        throw new IllegalStateException("no line came");
    }

    /** Instruments write when they like. */
    private static void pause(Random random) {
        LockSupport.parkNanos(20_000_000L + random.nextInt(20_000_000));
    }
}
