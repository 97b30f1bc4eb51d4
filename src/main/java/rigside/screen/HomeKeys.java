package rigside.screen;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.analysis.Shown;

/** The keys away from a session: one table for what the bottom line says and what a key does. */
public final class HomeKeys {
    private HomeKeys() {}

    /** As many lines are gone through one by one. */
    private static final int FEW = 12;

    private static final Stroke ENTER = Stroke.of(KeyType.Enter);

    /**
     * A key that is live now.
     *
     * @param label the key as the bottom line names it
     * @param help what it does; empty when the next key says it for both
     * @param action what it does
     * @param strokes every press that means it
     */
    public record HomeKey(String label, String help, HomeAction action, List<Stroke> strokes) {
        public HomeKey {
            strokes = List.copyOf(strokes);
        }
    }

    /** Every key live now, in the order of the bottom line. */
    public static List<HomeKey> of(HomeView view) {
        return switch (view.page()) {
            case HOME -> home(view);
            case HELP -> reading(view, Stroke.of(KeyType.F1), Stroke.of('?'));
            case REVIEW -> reading(view, Stroke.of('v'));
            case METHOD -> reading(view, Stroke.of('w'));
            case FLAGS -> reading(view, Stroke.of('f'));
        };
    }

    /** What a press does now; empty when it does nothing. */
    public static Optional<HomeAction> action(HomeView view, KeyStroke pressed) {
        if (pressed.isAltDown()) {
            return Optional.empty();
        }
        Stroke stroke = Stroke.of(pressed);
        return of(view).stream()
                .filter(key -> key.strokes().contains(stroke))
                .map(HomeKey::action)
                .findFirst();
    }

    /**
     * The character that a press puts into the words searched for; empty when it is a key of its
     * own, or nothing is typed now.
     */
    public static Optional<Character> typed(HomeView view, KeyStroke pressed) {
        return view.page() == HomeView.Page.HOME
                        && view.sought().typing()
                        && !pressed.isAltDown()
                        && Stroke.of(pressed).types()
                ? Optional.of(pressed.getCharacter())
                : Optional.empty();
    }

    /**
     * Letters are typed: only what is no letter is a key. With no session found nothing is kept:
     * the line chosen is a protocol's then, and Enter once more would begin a session of it.
     */
    private static List<HomeKey> searching(HomeView view) {
        List<HomeKey> keys = new ArrayList<>();
        if (!view.sessions().isEmpty()) {
            keys.add(key("keep these", HomeAction.FOUND, ENTER));
        }
        keys.add(key("all sessions", HomeAction.SHOW_ALL, Stroke.of(KeyType.Escape)));
        keys.add(key("erase", HomeAction.ERASE, Stroke.of(KeyType.Backspace)));
        keys.addAll(pages("choose"));
        keys.add(key("leave", HomeAction.LEAVE, Stroke.ctrl('c'), Stroke.ctrl('q')));
        return List.copyOf(keys);
    }

    private static List<HomeKey> home(HomeView view) {
        if (view.sought().typing()) {
            return searching(view);
        }
        List<HomeKey> keys = new ArrayList<>();
        view.protocol().ifPresent(protocol -> keys.addAll(ofProtocol(protocol)));
        view.session().ifPresent(session -> keys.addAll(ofSession(session)));
        int lines = view.protocols().size() + view.sessions().size();
        if (lines > 1) {
            keys.addAll(lines > FEW ? pages("choose") : scroll("choose"));
        }
        if (!view.protocols().isEmpty() && !view.sessions().isEmpty()) {
            String other = view.session().isPresent() ? "to the protocols" : "to the sessions";
            keys.add(key(other, HomeAction.OTHER_LIST, Stroke.of(KeyType.Tab)));
        }
        if (view.sought().all() > 0) {
            keys.add(key("search", HomeAction.SEARCH, Stroke.of('/')));
        }
        if (view.sought().isNarrow()) {
            keys.add(key("all sessions", HomeAction.SHOW_ALL, Stroke.of(KeyType.Escape)));
        }
        keys.add(key("draft a new one", HomeAction.DRAFT, Stroke.of('d')));
        keys.add(key("change the rig", HomeAction.RIG, Stroke.of('r')));
        if (view.rig().simulated()) {
            keys.add(key("speed", HomeAction.SPEED, Stroke.of('s')));
        }
        keys.add(help());
        keys.add(leave());
        return List.copyOf(keys);
    }

    /** A file with problems is only read: nothing half-read ever runs. */
    private static List<HomeKey> ofProtocol(HomeView.ProtocolItem protocol) {
        if (protocol.problems() > 0) {
            return List.of(
                    key(
                            "see the problems",
                            HomeAction.PROBLEMS,
                            ENTER,
                            Stroke.of('v'),
                            Stroke.of('c')));
        }
        List<HomeKey> keys = new ArrayList<>();
        keys.add(key("start a session", HomeAction.START, ENTER));
        keys.add(key("about", HomeAction.ABOUT, Stroke.of('v')));
        keys.add(key("outline", HomeAction.OUTLINE, Stroke.of('o')));
        keys.add(key("check", HomeAction.CHECK, Stroke.of('c')));
        keys.add(key("rehearse", HomeAction.REHEARSE, Stroke.of('t')));
        if (!protocol.own()) {
            keys.add(key("copy to change it", HomeAction.COPY, Stroke.of('y')));
        }
        return List.copyOf(keys);
    }

    private static List<HomeKey> ofSession(HomeView.SessionItem session) {
        HomeKey review = key("review", HomeAction.REVIEW, Stroke.of('v'));
        return session.open()
                ? List.of(key("go on with it", HomeAction.RESUME, ENTER), review)
                : List.of(
                        new HomeKey(
                                "Enter",
                                "review",
                                HomeAction.REVIEW,
                                List.of(ENTER, Stroke.of('v'))));
    }

    private static HomeKey help() {
        return key("help", HomeAction.HELP, Stroke.of(KeyType.F1), Stroke.of('?'));
    }

    /** The key that led here leads back too. */
    private static List<HomeKey> reading(HomeView view, Stroke... led) {
        List<HomeKey> keys = new ArrayList<>();
        List<Stroke> back = new ArrayList<>(List.of(ENTER, Stroke.of(KeyType.Escape)));
        back.addAll(List.of(led));
        keys.add(new HomeKey(ENTER.label(), "back", HomeAction.BACK, back));
        keys.addAll(pages("scroll"));
        Optional<Shown> shown = view.review().read().map(HomeView.Read::shown);
        if (view.page() != HomeView.Page.METHOD
                && shown.filter(MethodPicture::isWorth).isPresent()) {
            keys.add(key("why", HomeAction.METHOD, Stroke.of('w')));
        }
        if (view.page() != HomeView.Page.FLAGS && shown.filter(FlagsPicture::isWorth).isPresent()) {
            keys.add(key("flags", HomeAction.FLAGS, Stroke.of('f')));
        }
        if (view.page() == HomeView.Page.REVIEW
                && view.review().read().filter(HomeView.Read::kept).isPresent()) {
            keys.add(key("report", HomeAction.REPORT, Stroke.of('r')));
        }
        if (view.page() == HomeView.Page.REVIEW && isKeptAndClosed(view)) {
            keys.add(key("amend entries", HomeAction.CORRECT, Stroke.of('e')));
        }
        if (view.page() != HomeView.Page.HELP) {
            keys.add(help());
        }
        keys.add(leave());
        return List.copyOf(keys);
    }

    private static boolean isKeptAndClosed(HomeView view) {
        return view.review()
                .read()
                .filter(read -> read.kept() && read.state().course().closed())
                .isPresent();
    }

    private static List<HomeKey> scroll(String help) {
        return List.of(
                key("", HomeAction.UP, Stroke.of(KeyType.ArrowUp)),
                key(help, HomeAction.DOWN, Stroke.of(KeyType.ArrowDown)));
    }

    static List<HomeKey> pages(String help) {
        return List.of(
                key("", HomeAction.UP, Stroke.of(KeyType.ArrowUp)),
                key("", HomeAction.DOWN, Stroke.of(KeyType.ArrowDown)),
                key("", HomeAction.PAGE_UP, Stroke.of(KeyType.PageUp)),
                key("", HomeAction.PAGE_DOWN, Stroke.of(KeyType.PageDown)),
                key("", HomeAction.FIRST, Stroke.of(KeyType.Home)),
                key(help, HomeAction.LAST, Stroke.of(KeyType.End)));
    }

    private static HomeKey leave() {
        return key("leave", HomeAction.LEAVE, Stroke.of('q'), Stroke.ctrl('q'), Stroke.ctrl('c'));
    }

    private static HomeKey key(String help, HomeAction action, Stroke... strokes) {
        return new HomeKey(strokes[0].label(), help, action, List.of(strokes));
    }
}
