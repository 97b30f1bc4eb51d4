package rigside.desk;

import com.googlecode.lanterna.TerminalSize;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import rigside.bench.Console;
import rigside.bench.Pressed;
import rigside.bench.Settings;
import rigside.protocol.Protocol;
import rigside.screen.HomeAction;
import rigside.screen.View;
import rigside.screen.WatchScreen;
import rigside.screen.WatchView;

/**
 * A file beside an editor: its problems, its outline and what its plan can be expected to bring,
 * anew at each save. The whole text is compared, not its time: editors put a new file in the old
 * one's place, and two saves can fall into one tick of a file's clock.
 */
public final class Watch {
    /** How often the file is read. */
    static final long EVERY_NANOS = 500_000_000L;

    /** What watching needs of the world; a test has one of its own. */
    interface World {
        /** The steady clock, in nanoseconds. */
        long nanos();

        /** The next key, if one arrives within the time. */
        Optional<Pressed> next(long waitNanos);

        /**
         * The file as it is now.
         *
         * @throws IOException if it cannot be read now
         */
        String read() throws IOException;

        TerminalSize size();

        /** Draws a picture where it or the window's size has changed. */
        void draw(WatchView view);
    }

    /** Figures in the making, and the text they are of. */
    private record Figures(String text, Aside<List<String>> work) {}

    private final World world;
    private final Executor threads;
    private final Path folder;
    private final View.Style style;
    private Watched file;
    private int first;
    private Optional<Figures> figures = Optional.empty();

    Watch(World world, Executor threads, String name, Path folder, View.Style style) {
        this.world = world;
        this.threads = threads;
        this.folder = folder;
        this.style = style;
        this.file = Watched.of(name);
    }

    /** Watches a file until the tester leaves. */
    public static void run(Console console, Path file, Settings settings) {
        Path absolute = file.toAbsolutePath().normalize();
        new Watch(
                        new WatchedPath(console, absolute),
                        Aside.THREADS,
                        absolute.getFileName().toString(),
                        absolute.getParent(),
                        settings.style())
                .run();
    }

    void run() {
        long read = world.nanos();
        look();
        boolean left = false;
        while (!left) {
            figure();
            world.draw(view());
            Optional<Pressed> pressed = world.next(EVERY_NANOS);
            left = pressed.isPresent() && (pressed.get().isEnd() || press(pressed.get()));
            if (world.nanos() - read >= EVERY_NANOS) {
                read = world.nanos();
                look();
            }
        }
    }

    private WatchView view() {
        return file.view(first, style, world.size().getColumns());
    }

    private void look() {
        try {
            file = file.saved(world.read(), folder);
        } catch (NoSuchFileException gone) {
            file = file.unreadable("there is no such file; it is looked for again and again");
        } catch (IOException unreadable) {
            file = file.unreadable(FileWords.of(folder.resolve(file.name()), unreadable));
        }
    }

    /** One version at a time is worked at: saves come faster than plans are played. */
    private void figure() {
        figures.ifPresent(
                each ->
                        each.work()
                                .found()
                                .ifPresent(
                                        lines -> {
                                            file = file.withFigures(each.text(), lines);
                                            figures = Optional.empty();
                                        }));
        if (figures.isEmpty()) {
            figures = file.good().filter(Watched.Good::lacksFigures).map(this::begin);
        }
    }

    private Figures begin(Watched.Good version) {
        Protocol protocol = version.protocol().orElseThrow();
        return new Figures(version.text(), Aside.begin(threads, () -> figures(protocol)));
    }

    private static List<String> figures(Protocol protocol) {
        List<String> lines = new ArrayList<>(ProtocolPages.advice(protocol));
        lines.add("");
        lines.addAll(PlanLines.of(protocol));
        return lines;
    }

    /** Whether the tester leaves. */
    private boolean press(Pressed pressed) {
        Optional<HomeAction> action = WatchScreen.action(pressed.key());
        View.Seen seen = WatchScreen.seen(view(), world.size());
        first = Math.min(first, seen.limit());
        int to =
                switch (action.orElse(HomeAction.HELP)) {
                    case UP -> first - 1;
                    case DOWN -> first + 1;
                    case PAGE_UP -> first - seen.page();
                    case PAGE_DOWN -> first + seen.page();
                    case FIRST -> 0;
                    case LAST -> seen.limit();
                    default -> first;
                };
        first = Math.max(0, Math.min(to, seen.limit()));
        return action.equals(Optional.of(HomeAction.LEAVE));
    }
}
