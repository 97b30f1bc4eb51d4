package rigside.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import rigside.archive.Archive;
import rigside.archive.Archived;
import rigside.bench.Bench;
import rigside.bench.Console;
import rigside.bench.Pressed;
import rigside.bench.Settings;
import rigside.journal.NotOpened;
import rigside.protocol.Protocol;
import rigside.screen.HomeAction;
import rigside.screen.HomeKeys;
import rigside.screen.HomeScreen;
import rigside.screen.HomeView;
import rigside.screen.View;

/** The home screen, and back to it after each session. */
public final class Home {
    /** Nothing moves here: only a change of the window's size can want a new picture. */
    private static final long WAIT_NANOS = 250_000_000L;

    /** While the sessions are read, how far that is moves. */
    private static final long SHORT_WAIT_NANOS = 50_000_000L;

    /** What a key held down does again and again. */
    private static final Set<HomeAction> MOVES =
            EnumSet.of(
                    HomeAction.UP,
                    HomeAction.DOWN,
                    HomeAction.PAGE_UP,
                    HomeAction.PAGE_DOWN,
                    HomeAction.ERASE);

    private final Console console;
    private final Folders folders;
    private final Settings settings;
    private Desk desk;

    /** What is worked at beside the drawing, for the page that is read. */
    private Optional<Pending> pending = Optional.empty();

    private final Reader reader;

    private Home(Console console, Folders folders, Settings settings, Choice rig) {
        this.console = console;
        this.folders = folders;
        this.settings = settings;
        this.desk = Desk.of(List.of(), List.of(), rig);
        this.reader = new Reader(new Archive(folders.sessions(), settings.version()));
    }

    /**
     * Shows the home screen until the tester leaves the program.
     *
     * @param rig what answers for the instruments unless something else is chosen
     */
    public static void run(Console console, Folders folders, Settings settings, Choice rig) {
        new Home(console, folders, settings, rig).run();
    }

    private void run() {
        look(read -> read.latest().filter(Archived::isResumable));
        boolean changed = true;
        boolean left = false;
        while (!left) {
            if (changed || console.isStale()) {
                HomeView view = desk.view(settings.style());
                console.draw(graphics -> HomeScreen.draw(graphics, view));
            }
            Optional<Pressed> pressed =
                    console.next(reader.isReading() ? SHORT_WAIT_NANOS : WAIT_NANOS);
            boolean read = reader.isReading() && lookAtSessions();
            changed = look(pending) || read || pressed.isPresent();
            left = pressed.isPresent() && (pressed.get().isEnd() || press(pressed.get()));
        }
    }

    /** Whether the page read has changed by what is worked at. */
    private boolean look(Optional<Pending> work) {
        Optional<HomeView.Review> found = work.flatMap(Pending::found);
        if (found.isPresent()) {
            pending = Optional.empty();
        }
        Optional<HomeView.Review> shown = found.or(() -> work.map(Pending::progress));
        boolean changed = shown.filter(lines -> !lines.equals(desk.review())).isPresent();
        shown.ifPresent(lines -> desk = desk.nowReading(lines));
        return changed;
    }

    private void await(Pending work) {
        pending = Optional.of(work);
        desk = desk.reading(work.progress());
    }

    /** Reads what is at hand: protocols here, the sessions meanwhile. */
    private void look() {
        reader.read();
        desk = reader.look(withProtocols());
    }

    /** The same, and selects a session once that is read, if there is one to be. */
    private void look(Function<SessionList, Optional<Archived>> selected) {
        reader.read();
        desk = reader.look(withProtocols(), selected);
    }

    private Desk withProtocols() {
        try {
            return desk.with(Shelf.all(folders.protocols()));
        } catch (IOException unreadable) {
            return desk.saying(
                    "'" + folders.root() + "' cannot be read: " + unreadable.getMessage());
        }
    }

    /** Whether the page has changed by what was read of the sessions. */
    private boolean lookAtSessions() {
        Desk before = desk;
        desk = reader.look(desk);
        return !desk.sessions().equals(before.sessions()) || desk.message().isPresent();
    }

    /** Whether the program is left. */
    private boolean press(Pressed pressed) {
        reader.leaveSelection();
        HomeView view = desk.view(settings.style());
        Optional<Character> typed = HomeKeys.typed(view, pressed.key());
        if (typed.isPresent()) {
            desk = desk.searching(desk.sessions().typed(typed.get()));
            return false;
        }
        boolean repeated = pressed.isRepeat(settings.bounceSeconds());
        Optional<HomeAction> action =
                HomeKeys.action(view, pressed.key())
                        .filter(known -> !repeated || MOVES.contains(known));
        desk = desk.silent();
        action.ifPresent(known -> act(known, HomeScreen.seen(view, console.size())));
        return action.equals(Optional.of(HomeAction.LEAVE));
    }

    private void act(HomeAction action, View.Seen seen) {
        switch (action) {
            case UP -> desk = desk.moved(-1, seen.limit());
            case DOWN -> desk = desk.moved(1, seen.limit());
            case PAGE_UP -> desk = desk.moved(-seen.page(), seen.limit());
            case PAGE_DOWN -> desk = desk.moved(seen.page(), seen.limit());
            case FIRST -> desk = desk.moved(-seen.limit(), seen.limit());
            case LAST -> desk = desk.moved(seen.limit(), seen.limit());
            case OTHER_LIST -> {
                look();
                desk = desk.inOtherList();
            }
            case SEARCH -> desk = desk.searching(desk.sessions().asking());
            case FOUND -> desk = desk.with(desk.sessions().asked());
            case ERASE -> desk = desk.searching(desk.sessions().erased());
            case SHOW_ALL -> desk = desk.with(desk.sessions().dropped());
            case RESUME -> desk.session().ifPresent(this::resume);
            case REVIEW ->
                    desk.session()
                            .ifPresent(listed -> desk = desk.reading(Reviews.of(listed.folder())));
            case PROBLEMS, ABOUT, OUTLINE, CHECK, REHEARSE, START ->
                    desk.protocol().ifPresent(file -> actAsItIsNow(action, file));
            case DRAFT -> draft();
            case COPY -> desk.protocol().ifPresent(this::copy);
            case RIG -> otherRig();
            case SPEED -> desk = desk.with(desk.rig().faster());
            case HELP ->
                    desk =
                            desk.at(HomeView.Page.HELP)
                                    .saying("your own protocols live in " + folders.protocols());
            case CORRECT -> desk.session().ifPresent(this::correct);
            case METHOD -> desk = desk.at(HomeView.Page.METHOD);
            case REPORT -> desk.session().ifPresent(listed -> report(listed.folder()));
            case FLAGS -> desk = desk.at(HomeView.Page.FLAGS);
            case BACK -> {
                desk = desk.back();
                leaveWork();
                look();
            }
            case LEAVE -> {}
        }
    }

    private void otherRig() {
        try {
            desk = desk.with(desk.rig().other(Shelf.rigs(folders.rigs())));
        } catch (IOException unreadable) {
            desk = desk.saying("a rig file cannot be read: " + unreadable.getMessage());
        }
    }

    /** The file may have been written since it was listed: what it says now counts. */
    private void actAsItIsNow(HomeAction action, ProtocolFile listed) {
        look();
        Optional<ProtocolFile> now = desk.protocol().filter(listed::isSameFile);
        if (now.isEmpty()) {
            desk = desk.saying("the protocols at hand have changed; choose again");
        } else if (now.get().protocol().isEmpty()) {
            desk = desk.reading(ProtocolPages.problems(now.get()));
        } else {
            act(action, now.get());
        }
    }

    private void act(HomeAction action, ProtocolFile sound) {
        switch (action) {
            case START -> start(sound);
            case OUTLINE -> desk = desk.reading(outline(sound));
            case CHECK -> await(Pending.check(sound));
            case REHEARSE -> await(Pending.rehearsal(sound, settings.version()));
            default -> desk = desk.reading(Items.about(sound));
        }
    }

    private void draft() {
        Optional<Path> saved = Drafting.run(console, folders, settings);
        look();
        desk = saved.map(file -> desk.on(file).saying("saved as " + file)).orElse(desk);
    }

    private HomeView.Review outline(ProtocolFile sound) {
        Protocol protocol = sound.protocol().orElseThrow();
        return HomeView.Review.sheet(
                protocol.title(), ProtocolPages.outline(protocol, console.size().getColumns()));
    }

    private void copy(ProtocolFile shipped) {
        try {
            Path copy = new OwnFolder(folders.protocols()).copy(shipped);
            look();
            desk =
                    desk.on(copy)
                            .saying(
                                    "copied to "
                                            + copy
                                            + "; change it there, with 'rigside watch "
                                            + copy.getFileName()
                                            + "' beside the editor");
        } catch (IOException notWritten) {
            desk = desk.saying("the copy cannot be written: " + FileWords.notWritten(notWritten));
        }
    }

    private void report(Path session) {
        try {
            Archive archive = new Archive(folders.sessions(), settings.version());
            desk = desk.saying(Reports.write(session, archive));
        } catch (IOException notWritten) {
            desk = desk.saying("the report is not written: " + FolderWords.of(notWritten));
        }
    }

    /** Once nobody reads on, what is still worked at is of no use. */
    private void leaveWork() {
        if (desk.page() == HomeView.Page.HOME) {
            pending.ifPresent(Pending::leave);
            pending = Optional.empty();
        }
    }

    private void start(ProtocolFile file) {
        Protocol protocol = file.protocol().orElseThrow();
        Optional<RigOnDisk> named = desk.rig().named();
        List<String> problems =
                named.map(RigOnDisk::problems)
                        .orElse(desk.rig().simulated() ? file.rigProblems() : List.of());
        if (!problems.isEmpty()) {
            String name = named.map(RigOnDisk::name).orElse(file.name());
            desk = desk.reading(new HomeView.Review(name, problems));
            return;
        }
        try {
            Bench.begin(
                    console,
                    folders.sessions(),
                    Openings.of(file, protocol, desk.rig(), Openings.anySeed(), settings.version()),
                    protocol,
                    settings);
            look(SessionList::latest);
        } catch (NotOpened notOpened) {
            desk = desk.saying(notOpened.getMessage() + "; " + notOpened.help());
        } catch (IOException notKept) {
            desk = desk.saying(notKept.getMessage());
        }
    }

    /** What was found is read anew: it may have changed. */
    private void correct(Archived listed) {
        try {
            Bench.correct(console, listed.folder(), settings);
            look();
            desk = desk.reading(Reviews.of(listed.folder()));
        } catch (NotOpened notOpened) {
            desk = desk.saying(notOpened.getMessage() + "; " + notOpened.help());
        }
    }

    private void resume(Archived listed) {
        try {
            Bench.resume(console, listed.folder(), settings);
            look(read -> Optional.of(listed));
        } catch (NotOpened notOpened) {
            desk = desk.saying(notOpened.getMessage() + "; " + notOpened.help());
        }
    }
}
