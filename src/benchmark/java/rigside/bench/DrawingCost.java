package rigside.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
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

    /** In the first half minute of a live picture the compiler takes as much as the program. */
    private static final int WARM_MILLIS = 60_000;

    /** Fifty readings a second, more than most gauges send. */
    private static final int GAUGE_MILLIS = 20;

    private static final String RIG =
            """
            # Invented, for measuring what a live gauge costs.
            format: 1
            title: gauge in a file
            feeds:
              - id: gauge
                quantity: mask-pressure
                file: gauge.txt
                pattern: '(?<value>[-+]?[0-9.]+)'
                unit: Pa
                rate: 50 /s
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
     * @param args the jar, columns, rows; "gauge" after them has a gauge followed all the while
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path jar = Path.of(args[0]).toAbsolutePath();
        Path folder = Files.createTempDirectory("drawing-cost");
        Path protocol = Files.writeString(folder.resolve("drawing.yaml"), PROTOCOL);
        String size = "stty cols " + args[1] + " rows " + args[2];
        boolean gauge = args.length > 3 && args[3].equals("gauge");
        String rig = gauge ? " --rig " + gauge(folder) : "";
        String run = "java -jar " + jar + " run " + protocol + rig + " --mute --home=" + folder;
        Process terminal =
                new ProcessBuilder("script", "-qfc", size + "; " + run, "/dev/null")
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .start();
        try {
            new DrawingCost(terminal).measure(args[1] + "x" + args[2] + " ", gauge);
        } finally {
            terminal.destroy();
        }
    }

    /** A rig file, and a thread that goes on writing what its gauge reads: an unsteady pull. */
    private static Path gauge(Path folder) throws IOException {
        Path readings = Files.writeString(folder.resolve("gauge.txt"), "");
        Thread gauge =
                new Thread(
                        () -> {
                            for (int at = 0; ; at++) {
                                double pressure = -250 - 60 * Math.sin(at / 40.0);
                                String line = String.format(Locale.ROOT, "%.1f%n", pressure);
                                try {
                                    Files.writeString(readings, line, StandardOpenOption.APPEND);
                                    Thread.sleep(GAUGE_MILLIS);
                                } catch (IOException | InterruptedException over) {
                                    return;
                                }
                            }
                        },
                        "gauge");
        gauge.setDaemon(true);
        gauge.start();
        return Files.writeString(folder.resolve("gauge.rig.yaml"), RIG);
    }

    private void measure(String size, boolean gauge) throws IOException, InterruptedException {
        Thread.sleep(10_000);
        cost(size + "while nothing moves");
        press("\r\r ", 1500);
        press(" ", gauge ? WARM_MILLIS : 3000);
        cost(size + "while a pull is timed");
        if (gauge) {
            return;
        }
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
