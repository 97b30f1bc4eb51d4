package rigside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.session.Activity;

final class KeysTest {

    private static final TerminalSize USUAL = new TerminalSize(80, 24);
    private static final Map<String, View> ALL = all();

    private static Map<String, View> all() {
        Map<String, View> all = new LinkedHashMap<>(Scenes.steps());
        all.putAll(Scenes.pages());
        all.replaceAll((name, view) -> view.with(SessionScreen.seen(view, USUAL)));
        return all;
    }

    static Stream<String> names() {
        return ALL.keySet().stream();
    }

    /** Every press a terminal can send that could be mistaken for a key of ours. */
    private static List<KeyStroke> presses() {
        List<KeyStroke> presses = new ArrayList<>();
        for (char each = ' '; each < 0x7F; each++) {
            presses.add(new KeyStroke(each, false, false));
        }
        for (char each = 'a'; each <= 'z'; each++) {
            presses.add(new KeyStroke(each, true, false));
            presses.add(new KeyStroke(each, false, true));
        }
        EnumSet.complementOf(
                        EnumSet.of(KeyType.Character, KeyType.CursorLocation, KeyType.MouseEvent))
                .forEach(type -> presses.add(new KeyStroke(type)));
        return presses;
    }

    @ParameterizedTest
    @MethodSource("names")
    void eachLabelOnTheBottomLineDoesWhatTheTableSays(String name) {
        View view = ALL.get(name);
        for (Key key : Keys.of(view)) {
            assertEquals(
                    Optional.of(key.action()), Keys.action(view, press(key.label())), key.label());
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void nothingElseIsAccepted(String name) {
        View view = ALL.get(name);
        Set<Stroke> told = new HashSet<>();
        Keys.of(view).forEach(key -> told.addAll(key.strokes()));
        for (KeyStroke press : presses()) {
            boolean live = !press.isAltDown() && told.contains(Stroke.of(press));
            assertEquals(live, Keys.action(view, press).isPresent(), press.toString());
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void noPressMeansTwoThings(String name) {
        List<Stroke> strokes =
                Keys.of(ALL.get(name)).stream().flatMap(key -> key.strokes().stream()).toList();
        assertEquals(strokes.size(), Set.copyOf(strokes).size(), strokes.toString());
    }

    @ParameterizedTest
    @MethodSource("names")
    void whileTextIsTypedNoPlainCharacterIsAKey(String name) {
        View view = ALL.get(name);
        if (view.isTyping()) {
            Keys.of(view)
                    .forEach(
                            key ->
                                    assertTrue(
                                            key.strokes().stream().noneMatch(Stroke::types),
                                            key.label()));
        }
    }

    /** Ctrl-H, I, J, M and [ come from a terminal as Backspace, Tab, Enter and Esc. */
    @ParameterizedTest
    @MethodSource("names")
    void noKeyNeedsACtrlLetterThatTerminalsUseOtherwise(String name) {
        Keys.of(ALL.get(name))
                .forEach(
                        key ->
                                key.strokes().stream()
                                        .filter(Stroke::ctrl)
                                        .forEach(
                                                stroke ->
                                                        assertTrue(
                                                                "hijm[".indexOf(stroke.character())
                                                                        < 0,
                                                                key.label())));
    }

    @ParameterizedTest
    @MethodSource("names")
    void ctrlCAlwaysLeaves(String name) {
        assertEquals(
                Optional.of(Action.LEAVE),
                Keys.action(ALL.get(name), new KeyStroke('c', true, false)));
    }

    @ParameterizedTest
    @MethodSource("names")
    void escStopsAtOnceWhereverThereIsAnythingToStop(String name) {
        View view = ALL.get(name);
        Activity activity = view.state().activity();
        boolean still =
                activity instanceof Activity.Halted
                        || activity instanceof Activity.Closed
                        // Nobody breathes while a form of paper is typed in.
                        || view.state().isFromPaper();
        assertEquals(
                still ? Optional.empty() : Optional.of(Action.STOP),
                Keys.action(view, new KeyStroke(KeyType.Escape)));
    }

    @Test
    void escLeadsBackFromAPageWhereThereIsNothingToStop() {
        View step = ALL.get("paper-trial");
        for (View.Page page : EnumSet.of(View.Page.HELP, View.Page.TALLY, View.Page.ENTRIES)) {
            View read =
                    new View(
                            step.state(),
                            step.shown(),
                            step.now(),
                            page,
                            0,
                            Optional.empty(),
                            "",
                            Optional.empty(),
                            step.style());
            assertEquals(
                    Optional.of(Action.STEP_PAGE),
                    Keys.action(read, new KeyStroke(KeyType.Escape)));
        }
    }

    @Test
    void aStrayLetterCannotEndAPull() {
        for (char each = 'a'; each <= 'z'; each++) {
            KeyStroke press = new KeyStroke(each, false, false);
            assertEquals(Optional.empty(), Keys.action(ALL.get("pulling"), press));
            assertEquals(Optional.empty(), Keys.action(ALL.get("lead-in"), press));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "cautions, Enter, PAGE_DOWN",
        "checking, Enter, YES",
        "checking, n, NO",
        "field, Enter, GO_ON",
        "field, Ctrl-U, CLEAR",
        "reading, Ctrl-U, UNDO",
        "prompt, Ctrl-U, CLEAR",
        "help, PgDn, PAGE_DOWN",
        "cautions, End, LAST",
        "field, Ctrl-L, LEAVE_OUT",
        "waiting-to-start, Space, TRIGGER",
        "exercise, a, ABANDON",
        "trial-ready, Space, TRIGGER",
        "trial-ready, Enter, GO_ON",
        "pulling, Space, TRIGGER",
        "hold-asked, y, YES",
        "void-asked, n, NO",
        "doubting, y, YES",
        "resting, l, LEAVE_OUT",
        "donning-done, u, UNDO",
        "next-donning, d, END",
        "recommended, m, MORE",
        "halted, Enter, GO_ON",
        "halted, a, ABANDON",
        "closing, Enter, GO_ON",
        "closed, Enter, LEAVE",
        "tally, t, STEP_PAGE",
        "tally, w, METHOD_PAGE",
        "tally-flags, f, FLAGS_PAGE",
        "recommended, w, METHOD_PAGE",
        "recommended-flags, f, FLAGS_PAGE",
        "method, w, STEP_PAGE",
        "method, t, TALLY_PAGE",
        "flags, f, STEP_PAGE",
        "flags, w, METHOD_PAGE",
        "entries, v, VOID",
        "entries, Down, DOWN",
        "help, F1, STEP_PAGE",
        "prompt, Enter, GO_ON",
    })
    void theKeysOfTheBench(String name, String label, Action action) {
        assertEquals(Optional.of(action), Keys.action(ALL.get(name), press(label)));
    }

    @ParameterizedTest
    @CsvSource({
        "exercise, Enter",
        "resting, Enter",
        "pulling, Enter",
        "hold-asked, Enter",
        "halted, Esc",
        "entries-concealed, v",
        "tally-concealed, Down",
        "tally-concealed, w",
        "tally-concealed, f",
        "tally-settled, f",
        "flags-concealed, w",
        "next-donning, a",
        "closed, o",
        "pulling, u",
    })
    void aKeyThatMakesNoSenseNowIsNone(String name, String label) {
        assertEquals(Optional.empty(), Keys.action(ALL.get(name), press(label)));
    }

    @Test
    void anotherTriggerTakesThePlaceOfTheSpaceBar() {
        View.Style pedal = new View.Style(View.Colours.MANY, true, Stroke.of(KeyType.F5));
        View view = Scenes.styled(ALL.get("pulling"), pedal);
        assertEquals(Optional.of(Action.TRIGGER), Keys.action(view, new KeyStroke(KeyType.F5)));
        assertEquals(Optional.empty(), Keys.action(view, new KeyStroke(' ', false, false)));
        assertTrue(Drawn.of(view, 80, 24).contains("[F5]"));
    }

    @ParameterizedTest
    @MethodSource("homeNames")
    void awayFromASessionToo(String name) {
        HomeView view = HomeScenes.all().get(name);
        Set<Stroke> told = new HashSet<>();
        for (HomeKeys.HomeKey key : HomeKeys.of(view)) {
            told.addAll(key.strokes());
            assertEquals(
                    Optional.of(key.action()),
                    HomeKeys.action(view, press(key.label())),
                    key.label());
        }
        for (KeyStroke press : presses()) {
            boolean live = !press.isAltDown() && told.contains(Stroke.of(press));
            assertEquals(live, HomeKeys.action(view, press).isPresent(), press.toString());
        }
    }

    static Stream<String> homeNames() {
        return HomeScenes.all().keySet().stream();
    }

    /** The press a label names: what a tester does who reads the bottom line. */
    private static KeyStroke press(String label) {
        String first = label.split(" or ", 2)[0];
        if (first.startsWith("Ctrl-")) {
            return new KeyStroke(Character.toLowerCase(first.charAt(5)), true, false);
        }
        if (first.length() == 1) {
            return new KeyStroke(first.charAt(0), false, false);
        }
        return switch (first) {
            case "Space" -> new KeyStroke(' ', false, false);
            case "Esc" -> new KeyStroke(KeyType.Escape);
            case "Up" -> new KeyStroke(KeyType.ArrowUp);
            case "Down" -> new KeyStroke(KeyType.ArrowDown);
            case "PgUp" -> new KeyStroke(KeyType.PageUp);
            case "PgDn" -> new KeyStroke(KeyType.PageDown);
            default ->
                    new KeyStroke(
                            Arrays.stream(KeyType.values())
                                    .filter(type -> type.name().equals(first))
                                    .findFirst()
                                    .orElseThrow());
        };
    }

    @ParameterizedTest
    @CsvSource({"80, 24", "60, 18", "160, 20"})
    void cautionsAreNotAcceptedBeforeTheirEndHasBeenShown(int columns, int rows) {
        TerminalSize size = new TerminalSize(columns, rows);
        View view = ALL.get("cautions");
        int limit = SessionScreen.seen(view, size).limit();
        assertTrue(limit > 0);
        KeyStroke enter = new KeyStroke(KeyType.Enter);
        for (int first = 0; first <= limit; first++) {
            View at = Scenes.selected(view, first);
            String drawn = Drawn.of(at, columns, rows).replaceAll("\\s+", " ");
            boolean accepts = first == limit;
            assertEquals(
                    Optional.of(accepts ? Action.GO_ON : Action.PAGE_DOWN),
                    Keys.action(at.with(SessionScreen.seen(at, size)), enter));
            assertEquals(accepts, drawn.contains("[Enter] read and understood"), drawn);
            assertEquals(!accepts, drawn.contains("[Enter] read on"), drawn);
            assertTrue(!accepts || drawn.contains("and will keep to them."), drawn);
        }
    }

    /** Nobody can answer what nobody can see. */
    @ParameterizedTest
    @MethodSource("names")
    void inAWindowTooSmallOnlyStoppingTheTriggerOfAPullAndLeavingWork(String name) {
        View view = ALL.get(name);
        View small = view.with(SessionScreen.seen(view, new TerminalSize(59, 18)));
        List<Action> actions = Keys.of(small).stream().map(Key::action).toList();
        Activity activity = view.state().activity();
        boolean timed = StepKeys.isTimed(activity);
        assertEquals(timed, actions.contains(Action.TRIGGER));
        assertTrue(actions.contains(Action.LEAVE));
        assertTrue(
                List.of(Action.STOP, Action.TRIGGER, Action.LEAVE).containsAll(actions),
                actions.toString());
        String drawn = Drawn.of(view, 59, 18);
        assertTrue(drawn.contains("nothing else works") || drawn.contains("nothing\nelse"), drawn);
    }

    @Test
    void cautionsThatHaveNoRoomAtAllAreNotAccepted() {
        View view = ALL.get("cautions");
        View small = view.with(SessionScreen.seen(view, new TerminalSize(59, 18)));
        assertEquals(Optional.empty(), Keys.action(small, new KeyStroke(KeyType.Enter)));
    }
}
