package rigside.desk;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Function;
import java.util.function.Supplier;
import rigside.archive.Archive;
import rigside.bench.Console;
import rigside.bench.Pressed;
import rigside.bench.Settings;
import rigside.bench.Wall;
import rigside.screen.DraftAction;
import rigside.screen.DraftKeys;
import rigside.screen.DraftScreen;
import rigside.screen.DraftView;
import rigside.screen.View;

/** The interview at the terminal, from the first question to the file. */
public final class Drafting {
    private static final long WAIT_NANOS = 250_000_000L;

    /** What drafting needs of the world; a test has one of its own. */
    interface World {
        /** The next key, if one arrives within the time. */
        Optional<Pressed> next(long waitNanos);

        TerminalSize size();

        void draw(DraftView view);
    }

    private final World world;
    private final Executor threads;
    private final OwnFolder folder;
    private final Function<String, List<String>> result;
    private final Supplier<DraftRecord> record;
    private final double bounceSeconds;
    private final View.Style style;
    private DraftDesk desk = DraftDesk.begin();
    private Optional<Aside<List<String>>> work = Optional.empty();
    private Optional<Path> saved = Optional.empty();

    /**
     * @param result what a file's text brings, as lines to read; asked beside the drawing
     * @param record reads the sessions on record; asked beside the drawing
     */
    Drafting(
            World world,
            Executor threads,
            OwnFolder folder,
            Function<String, List<String>> result,
            Supplier<DraftRecord> record,
            double bounceSeconds,
            View.Style style) {
        this.world = world;
        this.threads = threads;
        this.folder = folder;
        this.result = result;
        this.record = record;
        this.bounceSeconds = bounceSeconds;
        this.style = style;
    }

    /**
     * Asks until the protocol is saved or the tester leaves.
     *
     * @return where it was saved; empty when nothing was written
     */
    public static Optional<Path> run(Console console, Folders folders, Settings settings) {
        World terminal =
                new World() {
                    @Override
                    public Optional<Pressed> next(long waitNanos) {
                        return console.next(waitNanos);
                    }

                    @Override
                    public TerminalSize size() {
                        return console.size();
                    }

                    @Override
                    public void draw(DraftView view) {
                        console.draw(graphics -> DraftScreen.draw(graphics, view));
                    }
                };
        return new Drafting(
                        terminal,
                        Aside.THREADS,
                        new OwnFolder(folders.protocols()),
                        text -> DraftResult.of(text, Wall.now(), settings.version()),
                        () -> DraftRecord.read(new Archive(folders.sessions(), settings.version())),
                        settings.bounceSeconds(),
                        settings.style())
                .run();
    }

    Optional<Path> run() {
        boolean left = false;
        Aside<DraftRecord> reading = Aside.begin(threads, record);
        while (!left && saved.isEmpty()) {
            if (desk.draft().record().isEmpty()) {
                reading.found().ifPresent(read -> desk = desk.with(read));
            }
            look();
            world.draw(desk.view(style));
            Optional<Pressed> pressed = world.next(WAIT_NANOS);
            left = pressed.isPresent() && (pressed.get().isEnd() || press(pressed.get()));
        }
        return saved;
    }

    /** Begins to work out what the choices bring, and shows it when it is there. */
    private void look() {
        if (!desk.awaitsResult()) {
            work = Optional.empty();
            return;
        }
        if (work.isEmpty()) {
            String text = desk.draft().text();
            work = Optional.of(Aside.begin(threads, () -> result.apply(text)));
        }
        work.flatMap(Aside::found).ifPresent(lines -> desk = desk.with(lines));
    }

    /** Whether the tester leaves. */
    private boolean press(Pressed pressed) {
        DraftView view = desk.view(style);
        Optional<DraftAction> action = DraftKeys.action(view, pressed.key());
        boolean typing = view.mode() == DraftView.Mode.LINE;
        // Letters may come twice in a word, and arrows held down; nothing else may.
        boolean repeats =
                action.isEmpty()
                        || action.get() == DraftAction.UP
                        || action.get() == DraftAction.DOWN
                        || action.get() == DraftAction.ERASE;
        if (pressed.isRepeat(bounceSeconds) && !repeats) {
            return false;
        }
        if (action.isEmpty()) {
            desk = typing ? typed(pressed.key()) : desk;
            return false;
        }
        if (action.get() == DraftAction.TAKE && desk.isNamed()) {
            save();
            return false;
        }
        desk = desk.act(action.get(), DraftScreen.seen(view, world.size()));
        return action.get() == DraftAction.LEAVE_NOW
                || (action.get() == DraftAction.LEAVE && !desk.draft().isBegun());
    }

    private DraftDesk typed(KeyStroke key) {
        boolean character =
                key.getKeyType() == KeyType.Character
                        && !key.isCtrlDown()
                        && !Character.isISOControl(key.getCharacter());
        return character ? desk.typing(desk.typed() + key.getCharacter()) : desk;
    }

    private void save() {
        String name = desk.fileName();
        try {
            saved = Optional.of(folder.write(name, desk.draft().text()));
        } catch (FileAlreadyExistsException taken) {
            desk = desk.saying("there is a file '" + name + "' already; write another name");
        } catch (IOException notWritten) {
            desk =
                    desk.saying(
                            "'"
                                    + name
                                    + "' cannot be written: "
                                    + FileWords.notWritten(notWritten));
        }
    }
}
