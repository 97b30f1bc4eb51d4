package rigside.command;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.stream.Stream;
import rigside.protocol.Shipped;
import rigside.yaml.Problem;

/**
 * Every file that comes with the program, and one that uses the whole language, damaged in 200 000
 * ways and read. Run as DEVELOPERS.md says; the table there is what it printed.
 */
public final class MutationStudy {

    /** Declared before the first run, and not changed after it. */
    static final long SEED = 20_261_128L;

    static final int FILES = 200_000;

    private static final List<String> RIGS =
            List.of(
                    "demo/prefilter-disc.rig.yaml",
                    "demo/gauge.rig.yaml",
                    "demo/instruments.rig.yaml");

    /** Between them they say all that a protocol can say. */
    private static final List<String> WHOLE_LANGUAGE =
            List.of(
                    "rigside/protocol/base.yaml",
                    "session/groups.yaml",
                    "protocols-written-by-a-new-user/voice-cover.yaml",
                    "protocols-written-by-a-new-user/wet-straps.yaml");

    /** How a file is damaged. */
    enum Way {
        BYTES,
        WORDS,
        TREE
    }

    private MutationStudy() {}

    /**
     * Prints the table, and each file that was answered wrongly.
     *
     * @param args how many files, if another number than {@link #FILES} is wanted
     */
    @SuppressWarnings("SystemOut")
    public static void main(String[] args) {
        int files = args.length == 0 ? FILES : Integer.parseInt(args[0]);
        Tally tally = new Tally();
        cases(files, tally::take);
        tally.print(System.out);
    }

    /** The names of the files that are damaged. */
    static List<String> names() {
        return Stream.of(Shipped.names(), WHOLE_LANGUAGE.stream(), RIGS.stream())
                .flatMap(names -> names)
                .toList();
    }

    /** The first so many cases, one after the other, each by its number alone. */
    static void cases(int count, Consumer<Damaged> taker) {
        List<String> names = names();
        List<String> texts = names.stream().map(Shipped::text).toList();
        for (int number = 0; number < count; number++) {
            SplittableRandom random = new SplittableRandom(SEED + number);
            int at = number % names.size();
            Way way = Way.values()[number / names.size() % Way.values().length];
            byte[] file = damaged(texts, at, way, random);
            taker.accept(new Damaged(number, names.get(at), way, file));
        }
    }

    private static byte[] damaged(List<String> texts, int at, Way way, SplittableRandom random) {
        String text = texts.get(at);
        int times = 1 + random.nextInt(4);
        if (way == Way.TREE) {
            return MutatedTree.of(text, times, random).getBytes(StandardCharsets.UTF_8);
        }
        if (way == Way.WORDS) {
            for (int i = 0; i < times; i++) {
                text = MutatedWords.once(text, random);
            }
            return text.getBytes(StandardCharsets.UTF_8);
        }
        byte[] other = texts.get(random.nextInt(texts.size())).getBytes(StandardCharsets.UTF_8);
        byte[] file = text.getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < times; i++) {
            file = MutatedBytes.once(file, other, random);
        }
        return file;
    }

    /** Counts, the slowest, and what went wrong. */
    private static final class Tally {
        private static final double NANOS_PER_MS = 1e6;

        private final Map<Way, Integer> read = new EnumMap<>(Way.class);
        private final Map<Way, Integer> refused = new EnumMap<>(Way.class);
        private final List<String> wrong = new ArrayList<>();
        private long all;
        private long most;
        private Optional<Damaged> slowest = Optional.empty();
        private int mostProblems;
        private int problems;

        void take(Damaged damaged) {
            try {
                // The answer is judged within the time taken: that is small beside it.
                long begin = System.nanoTime();
                List<Problem> told = damaged.answer();
                time(damaged, System.nanoTime() - begin);
                damaged.use();
                (told.isEmpty() ? read : refused).merge(damaged.way(), 1, Integer::sum);
                mostProblems = Math.max(mostProblems, told.size());
                problems += told.size();
            } catch (AssertionError | RuntimeException | StackOverflowError | OutOfMemoryError e) {
                wrong.add(damaged + ": " + e);
            }
        }

        private void time(Damaged damaged, long nanos) {
            all += nanos;
            if (nanos > most) {
                most = nanos;
                slowest = Optional.of(damaged);
            }
        }

        void print(PrintStream out) {
            out.println("| damaged | files | read | refused |");
            out.println("| --- | --- | --- | --- |");
            int files = wrong.size();
            int refusals = 0;
            for (Way way : Way.values()) {
                int good = read.getOrDefault(way, 0);
                int bad = refused.getOrDefault(way, 0);
                files += good + bad;
                refusals += bad;
                out.printf(
                        Locale.ROOT,
                        "| %s | %d | %d (%.1f %%) | %d |%n",
                        way.name().toLowerCase(Locale.ROOT),
                        good + bad,
                        good,
                        100.0 * good / Math.max(1, good + bad),
                        bad);
            }
            out.printf(
                    Locale.ROOT,
                    "%n%d files, seed %d, %d answered wrongly; read in %.2f ms on average, slowest"
                            + " %.0f ms (%s); %.1f problems a refusal, at most %d; heap of %d MiB%n",
                    files,
                    SEED,
                    wrong.size(),
                    all / NANOS_PER_MS / Math.max(1, files),
                    most / NANOS_PER_MS,
                    slowest.map(Damaged::toString).orElse("none"),
                    (double) problems / Math.max(1, refusals),
                    mostProblems,
                    Runtime.getRuntime().maxMemory() >> 20);
            wrong.forEach(out::println);
        }
    }
}
