package rigside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.bench.Pressed;
import rigside.screen.View;
import rigside.screen.WatchView;
import rigside.session.Story;

/** An editor saves, the watcher sees; the clock and the keys are the test's. */
class WatchTest {
    private static final String GOOD = Story.text("/session/small.yaml");
    private static final View.Style PLAIN = new View.Style(View.Colours.NONE, false);

    @TempDir Path folder;

    /** A thing that happens while the watcher waits for a key. */
    private interface Doing {
        void run() throws IOException;
    }

    private final class Bench implements Watch.World {
        private final Path file;
        private final Deque<Doing> script = new ArrayDeque<>();
        private final Deque<KeyType> keys = new ArrayDeque<>();
        private final List<WatchView> drawn = new ArrayList<>();
        private long nanos;
        private int rows = 24;

        Bench(String name) {
            file = folder.resolve(name);
        }

        Bench then(Doing doing) {
            script.add(doing);
            return this;
        }

        Bench saves(String text) {
            return then(() -> Files.writeString(file, text));
        }

        Bench presses(KeyType key) {
            return then(() -> keys.add(key));
        }

        @Override
        public long nanos() {
            return nanos;
        }

        @Override
        public Optional<Pressed> next(long waitNanos) {
            nanos += waitNanos;
            try {
                if (script.isEmpty()) {
                    return Optional.of(new Pressed(new KeyStroke(KeyType.EOF), nanos, 0));
                }
                script.poll().run();
            } catch (IOException broken) {
                throw new IllegalStateException(broken);
            }
            return Optional.ofNullable(keys.poll())
                    .map(key -> new Pressed(new KeyStroke(key), nanos, Pressed.FIRST));
        }

        @Override
        public String read() throws IOException {
            return WatchedPath.text(file);
        }

        @Override
        public TerminalSize size() {
            return new TerminalSize(80, rows);
        }

        @Override
        public void draw(WatchView view) {
            drawn.add(view);
        }

        List<WatchView> watched(Executor threads) {
            new Watch(this, threads, file.getFileName().toString(), folder, PLAIN).run();
            return drawn;
        }

        WatchView last() {
            return drawn.get(drawn.size() - 1);
        }
    }

    @Test
    void theLastGoodVersionStaysWhileTheFileIsBroken() throws IOException {
        Bench bench = new Bench("a.yaml");
        Files.writeString(bench.file, GOOD);
        bench.saves(GOOD.replace("fewest:", "fewset:")).then(() -> {}).saves(GOOD).then(() -> {});
        List<WatchView> drawn = bench.watched(never -> {});
        WatchView first = drawn.get(0);
        assertEquals(List.of(), first.problems());
        assertTrue(String.join("\n", first.sheet()).contains("Compared"), first.toString());
        WatchView broken =
                drawn.stream().filter(each -> !each.problems().isEmpty()).findFirst().orElseThrow();
        assertTrue(broken.kept());
        assertEquals(first.sheet(), broken.sheet());
        assertTrue(broken.problems().get(0).startsWith("a.yaml:"), broken.problems().toString());
        assertTrue(broken.problems().toString().contains("fewest"));
        assertEquals(first, bench.last());
    }

    @Test
    void aFileThatIsReplacedOrGoneForAMomentIsSeenAgain() throws IOException {
        Bench bench = new Bench("a.yaml");
        Files.writeString(bench.file, GOOD);
        String other = GOOD.replaceFirst("title: .*", "title: Replaced");
        bench.then(() -> Files.delete(bench.file))
                .then(() -> {})
                .then(
                        () -> {
                            Path part = Files.writeString(folder.resolve("a.tmp"), other);
                            Files.move(part, bench.file, StandardCopyOption.ATOMIC_MOVE);
                        })
                .then(() -> {});
        List<WatchView> drawn = bench.watched(never -> {});
        assertTrue(
                drawn.stream()
                        .anyMatch(
                                each ->
                                        each.kept()
                                                && each.problems()
                                                        .toString()
                                                        .contains("no such file")));
        assertEquals(List.of(), bench.last().problems());
        assertEquals("Replaced", bench.last().sheet().get(0));
    }

    /** A pipe has no text until somebody writes, and who waits for it draws nothing more. */
    @Test
    void whatIsNoFileIsToldAndNotWaitedFor() throws Exception {
        Bench bench = new Bench("a.yaml");
        Process made = new ProcessBuilder("mkfifo", bench.file.toString()).start();
        assertEquals(0, made.waitFor());
        bench.then(() -> Files.delete(bench.file))
                .then(() -> Files.createDirectory(bench.file))
                .then(() -> {});
        List<WatchView> drawn = bench.watched(never -> {});
        assertEquals(
                List.of("a.yaml: the file cannot be read: it is no ordinary file"),
                drawn.get(0).problems());
        assertEquals(
                List.of("a.yaml: this is a folder; name a file in it"), bench.last().problems());
    }

    /** Two saves within one tick of the file's clock, of one length. */
    @Test
    void aSaveThatLeavesTimeAndSizeAsTheyWereIsSeen() throws IOException {
        Bench bench = new Bench("a.yaml");
        Files.writeString(bench.file, GOOD.replaceFirst("title: .*", "title: One"));
        var time = Files.getLastModifiedTime(bench.file);
        bench.saves(GOOD.replaceFirst("title: .*", "title: Two"))
                .then(() -> Files.setLastModifiedTime(bench.file, time))
                .then(() -> {});
        bench.watched(never -> {});
        assertEquals("Two", bench.last().sheet().get(0));
    }

    @Test
    void thePlanIsPlayedBesideTheDrawingOneVersionAtATime() throws IOException {
        Bench bench = new Bench("a.yaml");
        Files.writeString(bench.file, GOOD);
        List<Runnable> todo = new ArrayList<>();
        String other = GOOD.replaceFirst("title: .*", "title: Replaced");
        bench.saves(other)
                .then(() -> {})
                .then(() -> todo.get(0).run())
                .then(() -> {})
                .then(() -> todo.get(1).run())
                .then(() -> {});
        List<WatchView> drawn = bench.watched(todo::add);
        assertEquals(2, todo.size());
        assertFalse(drawn.get(0).doing().isEmpty());
        assertEquals(List.of(), drawn.get(0).lines());
        assertEquals("", bench.last().doing());
        assertTrue(bench.last().lines().contains("Bench time"), bench.last().toString());
    }

    @Test
    void keysScrollNoFurtherThanThereIsAnything() throws IOException {
        Bench bench = new Bench("a.yaml");
        Files.writeString(bench.file, GOOD);
        bench.presses(KeyType.End)
                .then(() -> {})
                .presses(KeyType.PageUp)
                .then(() -> {})
                .presses(KeyType.Home)
                .presses(KeyType.ArrowUp)
                .then(() -> {});
        List<WatchView> drawn = bench.watched(never -> {});
        int end = drawn.get(1).first();
        assertTrue(end > 20, () -> "only " + end);
        assertTrue(drawn.get(3).first() < end && drawn.get(3).first() > 0);
        assertEquals(0, bench.last().first());
    }

    @Test
    void aRigFileIsWatchedToo() throws IOException {
        Bench bench = new Bench("a.rig.yaml");
        Files.writeString(bench.file, Files.readString(Path.of("demo/instruments.rig.yaml")));
        bench.saves("format: 1\n").then(() -> {});
        List<WatchView> drawn = bench.watched(never -> {});
        assertEquals(List.of(), drawn.get(0).problems());
        assertTrue(drawn.get(0).lines().contains("Instruments"), drawn.get(0).toString());
        assertFalse(bench.last().problems().isEmpty());
        assertTrue(bench.last().kept());
    }
}
