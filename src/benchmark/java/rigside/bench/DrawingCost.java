package rigside.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;

/**
 * What the picture costs, end to end: processor time of the whole program and bytes sent to the
 * terminal, while nothing moves, while a pull is timed with its clock in sight, and while a
 * countdown runs. The program runs as a tester starts it, behind a pseudo-terminal of {@code
 * script} (util-linux).
 *
 * <p>A measurement, no test: it waits by the clock.
 */
public final class DrawingCost {
    private static final int SECONDS = 20;

    private static final String PROTOCOL =
            """
            # Invented, for measuring what drawing costs.
            format: 1
            title: Drawing
            question: What does the picture cost?
            cautions:
              - Nobody wears a mask here.
            conditions:
              - id: bare
                title: Mask as it is
                specimen: {piece: mask 1, worn-before: 0}
                particle-reading: seal-only
              - id: disc
                title: Mask with the disc
                specimen: {piece: mask 1 and disc 1, worn-before: 0}
                particle-reading: seal-only
            measures:
              - {id: time, title: Time, kind: timed-inhalation, compare: ratio, meaningful: 10 %}
            plan:
              fewest: 2
              most: 4
              conceal: {trial-clock: shown}
            donning:
              - step: trials
                title: Timed inhalations
                feeds: time
                trials: 1
                target: 250 Pa
                lead-in: 1 s
                rest: 3 s
                shortest: 2 s
                longest: 200 s
              - step: countdown
                title: Purge
                for: 300 s
            """;

    private final OutputStream keys;
    private final ProcessHandle program;
    private final AtomicLong bytes = new AtomicLong();

    private DrawingCost(Process terminal) throws InterruptedException {
        keys = terminal.getOutputStream();
        Thread reader = new Thread(() -> count(terminal.getInputStream()), "bytes");
        reader.setDaemon(true);
        reader.start();
        Thread.sleep(5000);
        program =
                terminal.descendants()
                        .filter(each -> each.info().command().orElse("").endsWith("java"))
                        .findFirst()
                        .orElseThrow();
    }

    /**
     * @param args the jar, columns, rows
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path jar = Path.of(args[0]).toAbsolutePath();
        Path folder = Files.createTempDirectory("drawing-cost");
        Path protocol = Files.writeString(folder.resolve("drawing.yaml"), PROTOCOL);
        String size = "stty cols " + args[1] + " rows " + args[2];
        String run = "java -jar " + jar + " run " + protocol + " --mute --home=" + folder;
        Process terminal =
                new ProcessBuilder("script", "-qfc", size + "; " + run, "/dev/null")
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .start();
        try {
            new DrawingCost(terminal).measure(args[1] + "x" + args[2] + " ");
        } finally {
            terminal.destroy();
        }
    }

    private void measure(String size) throws IOException, InterruptedException {
        Thread.sleep(10_000);
        cost(size + "while nothing moves");
        press("\r\r ", 1500);
        press(" ", 3000);
        cost(size + "while a pull is timed");
        press(" y\r", 2000);
        cost(size + "while a countdown runs");
    }

    private void press(String each, long thenMillis) throws IOException, InterruptedException {
        for (char key : each.toCharArray()) {
            keys.write(key);
            keys.flush();
            Thread.sleep(500);
        }
        Thread.sleep(thenMillis);
    }

    private void cost(String when) throws InterruptedException {
        Duration before = program.info().totalCpuDuration().orElseThrow();
        long sent = bytes.get();
        Thread.sleep(SECONDS * 1000L);
        Duration took = program.info().totalCpuDuration().orElseThrow().minus(before);
        System.out.println(
                String.format(
                        Locale.ROOT,
                        "%s: %.1f %% of a core, %d bytes a second",
                        when,
                        took.toMillis() / (10.0 * SECONDS),
                        (bytes.get() - sent) / SECONDS));
    }

    private void count(InputStream picture) {
        byte[] buffer = new byte[1 << 16];
        try {
            for (int read = 0; read >= 0; read = picture.read(buffer)) {
                bytes.addAndGet(read);
            }
        } catch (IOException gone) {
            // The terminal was closed: everything is measured by then.
        }
    }
}
