package rigside.bench;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * How far the journal's time of a key press is from the press, end to end: keys are written to a
 * pseudo-terminal at known moments, while the program behind it redraws a running exercise 20 times
 * a second. The program runs as a tester starts it; {@code script} (util-linux) gives the
 * pseudo-terminal, and its own delay counts against the program.
 *
 * <p>A measurement, no test: it waits by the clock, so that keys come at all phases of the drawing.
 */
public final class KeyTiming {
    private static final long SEED = 25_112_026;

    private static final String PROTOCOL =
            """
            # Invented, for measuring how exactly keys are timed.
            format: 1
            title: Key timing
            question: How exactly are keys timed?
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
              - id: fit
                title: Fit factor
                kind: fit-factor
                compare: ratio
                meaningful: 2 times
            plan:
              fewest: 2
              most: 4
            donning:
              - step: exercises
                title: Exercises
                feeds: fit
                unit: /cm3
                exercises:
                  - title: Normal breathing
                    say: Breathe normally.
                    for: 3000 s
                    ambient: 0 to 5 s
                    mask: 8 to 20 s
            """;

    private static final Pattern EVENT =
            Pattern.compile("\"at\":(\\d+),\"event\":\"(halted|continued|exercise-started)\"");

    private static final Pattern WALL = Pattern.compile("\"wall\":\"([^\"]+)\"");

    private final Path folder;
    private final OutputStream keys;
    private final List<Press> presses = new ArrayList<>();

    private record Press(String event, Instant at) {}

    private KeyTiming(Path folder, OutputStream keys) {
        this.folder = folder;
        this.keys = keys;
    }

    /**
     * @param args the jar, how many presses while the picture changes, columns, rows
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path jar = Path.of(args[0]).toAbsolutePath();
        int presses = Integer.parseInt(args[1]);
        String size = "stty cols " + args[2] + " rows " + args[3];
        Path folder = Files.createTempDirectory("key-timing");
        Path protocol = Files.writeString(folder.resolve("key-timing.yaml"), PROTOCOL);
        String run = "java -jar " + jar + " run " + protocol + " --mute --home=" + folder;
        Process program =
                new ProcessBuilder("script", "-qfc", size + "; " + run, "/dev/null")
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .start();
        try {
            new KeyTiming(folder, program.getOutputStream()).measure(presses);
        } finally {
            program.destroy();
        }
    }

    private void measure(int wanted) throws IOException, InterruptedException {
        Random random = new Random(SEED);
        await("session-opened", 1);
        for (int i = 0; i < 40 && count("donning-started") == 0; i++) {
            key('\r');
            Thread.sleep(250);
        }
        for (int i = 1; i <= wanted; i++) {
            press("exercise-started", ' ', i);
            Thread.sleep(150 + random.nextInt(200));
            press("halted", '\u001b', i);
            Thread.sleep(20 + random.nextInt(60));
            press("continued", '\r', i);
            Thread.sleep(20 + random.nextInt(60));
        }
        report();
    }

    private void press(String event, char key, int count) throws IOException, InterruptedException {
        Instant at = Instant.now();
        key(key);
        presses.add(new Press(event, at));
        await(event, count);
    }

    private void key(char key) throws IOException {
        keys.write(key);
        keys.flush();
    }

    private void await(String event, int count) throws IOException, InterruptedException {
        for (int i = 0; i < 6000; i++) {
            if (count(event) >= count) {
                return;
            }
            Thread.sleep(5);
        }
        throw new IllegalStateException("no " + event + " number " + count + " within 30 s");
    }

    private long count(String event) throws IOException {
        return journal().lines().filter(line -> line.contains("\"" + event + "\"")).count();
    }

    private String journal() throws IOException {
        try (Stream<Path> below = Files.walk(folder)) {
            List<Path> journals = below.filter(each -> each.endsWith("journal.jsonl")).toList();
            return journals.isEmpty() ? "" : Files.readString(journals.get(0));
        }
    }

    private void report() throws IOException {
        String journal = journal();
        Matcher wall = WALL.matcher(journal);
        if (!wall.find()) {
            throw new IllegalStateException("the journal says no time");
        }
        Instant opened = ZonedDateTime.parse(wall.group(1)).toInstant();
        Matcher event = EVENT.matcher(journal);
        List<Double> moving = new ArrayList<>();
        List<Double> still = new ArrayList<>();
        for (Press press : presses) {
            if (!event.find() || !event.group(2).equals(press.event())) {
                throw new IllegalStateException("the journal does not tell the keys pressed");
            }
            Instant seen = opened.plusNanos(Long.parseLong(event.group(1)));
            double late = ChronoUnit.NANOS.between(press.at(), seen) / 1e6;
            (press.event().equals("halted") ? moving : still).add(late);
        }
        // The first exercise may have been started on the way to it.
        still.remove(0);
        report("while the picture changes 20 times a second", moving);
        report("while nothing moves", still);
    }

    private static void report(String when, List<Double> late) {
        double[] sorted = late.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        System.out.println(
                String.format(
                        Locale.ROOT,
                        "%s: %d presses, late by ms: least %.2f median %.2f p99 %.2f most %.2f",
                        when,
                        sorted.length,
                        sorted[0],
                        sorted[sorted.length / 2],
                        sorted[(int) Math.ceil(0.99 * sorted.length) - 1],
                        Arrays.stream(sorted).max().orElseThrow()));
    }
}
