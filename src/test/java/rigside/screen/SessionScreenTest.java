package rigside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.TerminalSize;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigside.session.Activity;
import rigside.session.Input;
import rigside.session.Story;

final class SessionScreenTest {

    private static final Map<String, View> STEPS = Scenes.steps();
    private static final Map<String, View> ALL = all();

    private static Map<String, View> all() {
        Map<String, View> all = new LinkedHashMap<>(STEPS);
        all.putAll(Scenes.pages());
        return all;
    }

    static Stream<String> names() {
        return ALL.keySet().stream();
    }

    @Test
    void everyKindOfActivityHasAPicture() {
        Set<Class<?>> drawn =
                STEPS.values().stream()
                        .map(view -> view.state().activity().getClass())
                        .collect(Collectors.toSet());
        assertEquals(Set.copyOf(Arrays.asList(Activity.class.getPermittedSubclasses())), drawn);
    }

    @ParameterizedTest
    @MethodSource("names")
    void eachPictureIsDrawnAsApprovedAtTheUsualSize(String name) {
        Approved.matches("80x24/" + name, Drawn.of(ALL.get(name), 80, 24));
    }

    @ParameterizedTest
    @MethodSource("names")
    void eachPictureIsDrawnAsApprovedInALargeWindow(String name) {
        Approved.matches("160x48/" + name, Drawn.of(ALL.get(name), 160, 48));
    }

    /** Pictures that differ by more than room. */
    private static Stream<String> laidOut() {
        return Stream.of(
                "recommended",
                "recommended-flags",
                "between-rounds",
                "closing",
                "tally",
                "tally-settled",
                "tally-flags",
                "tally-of-mishaps",
                "method",
                "flags",
                "checking",
                "choices",
                "exercise-to-start",
                "exercise",
                "trial-ready",
                "pulling",
                "gauge-weak",
                "gauge-right",
                "gauge-hard",
                "gauge-silent",
                "gate-value",
                "gate-to-start",
                "gating-live",
                "gate-missed",
                "exercise-live",
                "exercise-two-to-start",
                "lead-in-go",
                "gauge-ready",
                "shown-pulling",
                "resting",
                "waiting",
                "halted");
    }

    @ParameterizedTest
    @MethodSource("laidOut")
    void widerWindowsHaveLayoutsOfTheirOwn(String name) {
        Approved.matches("120x36/" + name, Drawn.of(ALL.get(name), 120, 36));
        Approved.matches("200x60/" + name, Drawn.of(ALL.get(name), 200, 60));
    }

    /** Nothing is said by colour alone, nor by a sign that ASCII has no like of. */
    @ParameterizedTest
    @MethodSource("names")
    void withoutColourOrUnicodeEveryPictureSaysTheSame(String name) {
        View view = ALL.get(name);
        String full = Drawn.of(view, 80, 24);
        View grey = Scenes.styled(view, new View.Style(View.Colours.NONE, true));
        assertEquals(full, Drawn.of(grey, 80, 24));
        String plain = Drawn.of(Scenes.styled(view, Scenes.ASCII), 80, 24);
        assertTrue(plain.chars().allMatch(each -> each < 0x7F), plain);
        assertEquals(full.lines().count(), plain.lines().count());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "pulling",
                "exercise",
                "checking",
                "exercise-to-start",
                "tally-settled",
                "tally-flags",
                "flags"
            })
    void withoutUnicodeAPictureIsDrawnInAsciiAlone(String name) {
        String drawn = Drawn.of(Scenes.styled(ALL.get(name), Scenes.ASCII), 80, 24);
        assertTrue(drawn.chars().allMatch(each -> each < 0x7F), drawn);
        Approved.matches("ascii/" + name, drawn);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "choices",
                "pulling",
                "exercise",
                "checking",
                "between-rounds",
                "trial-ready",
                "hold-asked",
                "lead-in-go",
                "resting",
                "next-donning",
                "halted"
            })
    void theSmallestTerminalHasRoomForWhatIsAskedNow(String name) {
        Approved.matches("60x18/" + name, Drawn.of(ALL.get(name), 60, 18));
    }

    @Test
    void aTerminalThatIsTooSmallIsToldWhatIsNeeded() {
        Approved.matches("too-small", Drawn.of(ALL.get("pulling"), 59, 18));
        String words = Drawn.of(ALL.get("pulling"), 60, 17).replaceAll("\\s+", " ");
        assertTrue(words.contains("60 columns and 18 rows"), words);
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyLiveKeyIsOnTheBottomLinesOfTheSmallestTerminal(String name) {
        String drawn = Drawn.of(ALL.get(name), 60, 18);
        View view = ALL.get(name);
        Keys.of(view.with(SessionScreen.seen(view, new TerminalSize(60, 18))))
                .forEach(key -> assertTrue(drawn.contains("[" + key.label() + "]"), drawn));
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyBreathingScreenSaysToStopAtOnceWhenUnwell(String name) {
        View view = ALL.get(name);
        Activity activity = view.state().activity();
        boolean breathing =
                activity instanceof Activity.Exercising
                        || activity instanceof Activity.Waiting
                        || activity instanceof Activity.TrialReady
                        || activity instanceof Activity.LeadIn
                        || activity instanceof Activity.Pulling
                        || activity instanceof Activity.HoldAsked
                        || activity instanceof Activity.Resting;
        if (breathing && !view.state().isFromPaper()) {
            String drawn = Drawn.of(view, 60, 18);
            assertTrue(drawn.contains("Dizzy or unwell? Stop at once"), drawn);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"hold-asked", "resting", "void-asked", "entries-concealed"})
    void aConcealedTimeIsNowhereOnTheScreen(String name) {
        String drawn = Drawn.of(ALL.get(name), 160, 48);
        assertFalse(drawn.contains("8.25"), drawn);
        assertFalse(drawn.contains("8.3"), drawn);
        assertFalse(drawn.contains("0.9"), drawn);
    }

    @Test
    void aConcealedClockDrawsThePullTheSameAtEveryMoment() {
        View view = ALL.get("pulling");
        assertEquals(
                Drawn.of(view, 80, 24),
                Drawn.of(Scenes.at(view, view.now() + 3_000_000_000L), 80, 24));
        View shown = ALL.get("shown-pulling");
        assertFalse(
                Drawn.of(shown, 80, 24)
                        .equals(Drawn.of(Scenes.at(shown, shown.now() + 3_000_000_000L), 80, 24)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"cautions", "tally-settled", "help"})
    void scrollingToTheLimitShowsTheEndAndNoFurther(String name) {
        View view = ALL.get(name);
        int limit = SessionScreen.seen(view, new TerminalSize(80, 24)).limit();
        String end = Drawn.of(Scenes.selected(view, limit), 80, 24);
        assertTrue(limit > 0);
        assertFalse(end.contains("more below"), end);
        assertEquals(end, Drawn.of(Scenes.selected(view, limit + 1), 80, 24));
        Approved.matches("80x24/" + name + "-end", end);
    }

    @Test
    void theLastLineOfTheEntriesIsTheirLimit() {
        View view = ALL.get("entries");
        assertEquals(
                Listing.of(view.state()).size() - 1,
                SessionScreen.seen(view, new TerminalSize(80, 24)).limit());
    }

    @ParameterizedTest
    @CsvSource({
        "hold-asked, Was the pull held at",
        "hold-asked, Answer before the time is shown.",
        "trial-ready, starts a lead-in of 3 s. Breathe out fully while it counts.",
        "lead-in-go, the moment you begin to pull.",
        "pulling, the moment your lungs are full.",
        "exercise, sample tube: MASK",
        "exercise, 'a = ambient, m = mask'",
        "resting, It goes on by itself when the rest is over.",
    })
    void inTheSmallestTerminalWhatToDoGoesBeforeBigText(String name, String words) {
        String drawn = Drawn.of(ALL.get(name), 60, 18).replaceAll("\\s+", " ");
        assertTrue(drawn.contains(words), drawn);
        assertFalse(drawn.contains("in a taller window"), drawn);
    }

    @Test
    void aStruckDonningIsNotShownAsTheLastResult() {
        Story story = Scenes.rounds(2);
        assertTrue(Drawn.of(Scenes.step(story), 80, 24).contains("donning 4, "));
        story.send(new Input.StrikeAsked(4, "the strap slipped"));
        String drawn = Drawn.of(Scenes.step(story), 80, 24);
        assertTrue(drawn.contains("Next to put on"), drawn);
        assertFalse(drawn.contains("donning 4, "), drawn);
    }

    /** A reason of 60 000 letters left no room for the list and took the bottom line away. */
    @ParameterizedTest
    @ValueSource(strings = {"x", "word ", "\u0301"})
    void howeverLongAReasonIsTheListAndTheKeysAreSeen(String piece) {
        Story story = Scenes.amended();
        story.send(new Input.AmendAsked(4, "45", "a" + piece.repeat(60_000), false));
        int chosen = 0;
        for (int at = 0; at < Listing.of(story.state()).size(); at++) {
            boolean isIt =
                    Listing.of(story.state()).get(at) instanceof Listing.Row.OfEntry line
                            && line.entry().number() == 4;
            chosen = isIt ? at : chosen;
        }
        String drawn = Drawn.of(Scenes.page(story, View.Page.ENTRIES, chosen), 80, 24);
        assertTrue(drawn.contains("[a] amend it"), drawn);
        assertTrue(
                drawn.lines().anyMatch(line -> line.startsWith("  \u25BA      4  AMENDED")), drawn);
        assertTrue(drawn.contains("time of trial 1"), drawn);
    }
}
