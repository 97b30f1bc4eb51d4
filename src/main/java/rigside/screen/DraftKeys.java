package rigside.screen;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The keys of a draft: one table for what the bottom line says and what a key does. */
public final class DraftKeys {
    private DraftKeys() {}

    /** A key that is live now, as in {@link HomeKeys.HomeKey}; an empty label is not shown. */
    record DraftKey(String label, String help, DraftAction action, List<Stroke> strokes) {}

    /** What a press does now; empty when it types a character, or does nothing. */
    public static Optional<DraftAction> action(DraftView view, KeyStroke pressed) {
        Stroke stroke = Stroke.of(pressed);
        return pressed.isAltDown()
                ? Optional.empty()
                : of(view).stream()
                        .filter(key -> key.strokes().contains(stroke))
                        .map(DraftKey::action)
                        .findFirst();
    }

    static List<DraftKey> of(DraftView view) {
        if (view.mode() == DraftView.Mode.LEAVING) {
            return List.of(
                    key(
                            "leave, nothing is written",
                            DraftAction.LEAVE_NOW,
                            Stroke.of('y'),
                            Stroke.ctrl('c')),
                    key(
                            "go on drafting",
                            DraftAction.STAY,
                            Stroke.of('n'),
                            Stroke.of(KeyType.Escape)));
        }
        List<DraftKey> keys = new ArrayList<>();
        if (view.mode() != DraftView.Mode.WORKING) {
            keys.add(key(enter(view), DraftAction.TAKE, Stroke.of(KeyType.Enter)));
        }
        switch (view.mode()) {
            case SEVERAL -> {
                keys.add(key("tick", DraftAction.TICK, Stroke.SPACE));
                keys.addAll(upAndDown("choose"));
            }
            case ONE -> keys.addAll(upAndDown("choose"));
            case RESULT -> {
                keys.addAll(upAndDown(""));
                keys.add(key("", DraftAction.PAGE_UP, Stroke.of(KeyType.PageUp)));
                keys.add(key("scroll", DraftAction.PAGE_DOWN, Stroke.of(KeyType.PageDown)));
            }
            case WORKING, LEAVING -> {}
            case LINE -> {
                keys.add(
                        new DraftKey(
                                "", "", DraftAction.ERASE, List.of(Stroke.of(KeyType.Backspace))));
                if (view.offered()) {
                    keys.addAll(upAndDown("from your sessions"));
                }
                if (!view.typed().isEmpty()) {
                    keys.add(key("clear", DraftAction.CLEAR, Stroke.ctrl('u')));
                }
            }
        }
        if (isAnswered(view) || !view.answered().isEmpty()) {
            keys.add(
                    key(
                            isAnswered(view) ? "change the answers" : "back",
                            DraftAction.BACK,
                            Stroke.of(KeyType.ArrowLeft)));
        }
        keys.add(
                key(
                        "leave",
                        DraftAction.LEAVE,
                        Stroke.of(KeyType.Escape),
                        Stroke.ctrl('c'),
                        Stroke.ctrl('q')));
        return List.copyOf(keys);
    }

    private static boolean isAnswered(DraftView view) {
        return view.mode() == DraftView.Mode.RESULT || view.mode() == DraftView.Mode.WORKING;
    }

    private static String enter(DraftView view) {
        if (view.mode() == DraftView.Mode.RESULT) {
            return "save it under a name";
        }
        boolean bare = view.mode() == DraftView.Mode.LINE && view.typed().isBlank();
        return bare && !view.usual().isEmpty() ? "take '" + brief(view.usual()) + "'" : "go on";
    }

    private static String brief(String usual) {
        return usual.length() <= 30 ? usual : usual.substring(0, 27) + "...";
    }

    private static List<DraftKey> upAndDown(String help) {
        return List.of(
                key("", DraftAction.UP, Stroke.of(KeyType.ArrowUp)),
                key(help, DraftAction.DOWN, Stroke.of(KeyType.ArrowDown)));
    }

    private static DraftKey key(String help, DraftAction action, Stroke... strokes) {
        return new DraftKey(strokes[0].label(), help, action, List.of(strokes));
    }
}
