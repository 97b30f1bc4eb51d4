package rigside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.screen.DraftView.Mode;
import rigside.screen.DraftView.Option;

/** The pictures of a draft, and of a file that is watched; all of it invented. */
class DraftScreenTest {
    private static final List<String> ANSWERED =
            List.of("title: Half mask and disc", "conditions: 2", "condition-1: plain");

    private static final Map<String, DraftView> DRAFTS = drafts();

    private static final Map<String, WatchView> WATCHED = watched();

    private static Map<String, DraftView> drafts() {
        Map<String, DraftView> views = new LinkedHashMap<>();
        List<String> why =
                List.of(
                        "The smallest change that would make you act differently. Choose it now:"
                                + " chosen after the readings it could be fitted to them.",
                        "Two and three times are usual.");
        String ask = "Which change of the fit factor would matter?";
        views.put("draft-line", view(Mode.LINE, ask, why, List.of(), 0, "", "3 times", ""));
        views.put(
                "draft-refused",
                view(
                        Mode.LINE,
                        ask,
                        why,
                        List.of(),
                        0,
                        "3",
                        "3 times",
                        "'meaningful' is '3', must be a percentage or a factor; write '10 %', '2"
                                + " times' or '0.8 to 1.25'"));
        views.put(
                "draft-offered",
                view(
                        Mode.LINE,
                        "How far do fit factors of one condition spread from donning to donning?",
                        List.of(
                                "Your own sessions: 21 % (95 % limits 16 % to 31 %; with 80 %"
                                        + " confidence at most 25 %), from 28 differences in 5"
                                        + " sessions.",
                                "1.5 to 1.8 times for a practised wearer."),
                        List.of(),
                        0,
                        "21 %",
                        "1.5 times",
                        ""));
        List<Option> two =
                List.of(new Option("how well it seals", true), new Option("another", false));
        views.put(
                "draft-several", view(Mode.SEVERAL, "What is measured?", why, two, 1, "", "", ""));
        views.put("draft-one", view(Mode.ONE, "Until when?", why, two, 0, "", "", ""));
        List<String> lines =
                IntStream.rangeClosed(1, 40)
                        .mapToObj(at -> at % 10 == 1 ? "Heading " + at : "  - line " + at)
                        .toList();
        views.put(
                "draft-result",
                view(Mode.RESULT, "What these choices bring", lines, List.of(), 0, "", "", ""));
        views.put(
                "draft-working",
                view(Mode.WORKING, "What these", List.of("at it ..."), List.of(), 0, "", "", ""));
        views.put(
                "draft-leaving", view(Mode.LEAVING, "Leave?", List.of(), List.of(), 0, "", "", ""));
        return views;
    }

    private static DraftView view(
            Mode mode,
            String ask,
            List<String> why,
            List<Option> options,
            int chosen,
            String typed,
            String usual,
            String message) {
        return new DraftView(
                mode,
                "[question 4 of 27]",
                ask,
                why,
                options,
                chosen,
                typed,
                usual,
                ANSWERED,
                message,
                ask.contains("spread"),
                Scenes.UNICODE);
    }

    private static Map<String, WatchView> watched() {
        List<String> lines = List.of("To think over", "  - no purge", "", "Bench time", "  1 h");
        List<String> sheet = List.of("Disc", "====", "Does it?", "", "Compared", "--------", "  a");
        Map<String, WatchView> views = new LinkedHashMap<>();
        views.put(
                "watch-good",
                new WatchView("disc.yaml", List.of(), false, lines, sheet, "", 0, Scenes.UNICODE));
        views.put(
                "watch-broken",
                new WatchView(
                        "disc.yaml",
                        List.of(
                                "disc.yaml:31:5: unknown kind of step 'exersises'\n    did you mean"
                                        + " 'exercises'?"),
                        true,
                        lines,
                        sheet,
                        "playing the plan ...",
                        0,
                        Scenes.UNICODE));
        return views;
    }

    static Stream<String> draftNames() {
        return DRAFTS.keySet().stream();
    }

    static Stream<String> watchNames() {
        return WATCHED.keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("draftNames")
    void eachPageOfADraftIsDrawnAsApproved(String name) {
        Approved.matches("80x24/" + name, Drawn.of(DRAFTS.get(name), 80, 24));
        Approved.matches("160x48/" + name, Drawn.of(DRAFTS.get(name), 160, 48));
    }

    @ParameterizedTest
    @MethodSource("watchNames")
    void aWatchedFileIsDrawnAsApproved(String name) {
        Approved.matches("80x24/" + name, Drawn.of(WATCHED.get(name), 80, 24));
        Approved.matches("160x48/" + name, Drawn.of(WATCHED.get(name), 160, 48));
    }

    @ParameterizedTest
    @MethodSource("draftNames")
    void everyLiveKeyIsOnTheBottomLinesOfTheSmallestTerminal(String name) {
        String drawn = Drawn.of(DRAFTS.get(name), 60, 18);
        DraftKeys.of(DRAFTS.get(name)).stream()
                .filter(key -> !key.label().isEmpty())
                .forEach(key -> assertTrue(drawn.contains("[" + key.label() + "]"), drawn));
    }

    @Test
    void lettersAreTypedWhereALineIsAndKeysElsewhere() {
        KeyStroke letter = new KeyStroke('y', false, false);
        assertEquals(Optional.empty(), DraftKeys.action(DRAFTS.get("draft-line"), letter));
        assertEquals(
                Optional.of(DraftAction.LEAVE_NOW),
                DraftKeys.action(DRAFTS.get("draft-leaving"), letter));
        assertEquals(
                Optional.of(DraftAction.TICK),
                DraftKeys.action(DRAFTS.get("draft-several"), new KeyStroke(' ', false, false)));
        assertEquals(
                Optional.of(DraftAction.LEAVE),
                DraftKeys.action(DRAFTS.get("draft-one"), new KeyStroke(KeyType.Escape)));
    }
}
