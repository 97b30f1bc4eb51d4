package rigside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.TerminalSize;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

final class HomeScreenTest {

    private static final Map<String, HomeView> ALL = HomeScenes.all();

    static Stream<String> all() {
        return ALL.keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("all")
    void eachPageIsDrawnAsApprovedAtTheUsualSize(String name) {
        Approved.matches("80x24/" + name, Drawn.of(ALL.get(name), 80, 24));
    }

    @ParameterizedTest
    @MethodSource("all")
    void eachPageIsDrawnAsApprovedInALargeWindow(String name) {
        Approved.matches("160x48/" + name, Drawn.of(ALL.get(name), 160, 48));
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyLiveKeyIsOnTheBottomLinesOfTheSmallestTerminal(String name) {
        String drawn = Drawn.of(ALL.get(name), 60, 18);
        HomeKeys.of(ALL.get(name))
                .forEach(key -> assertTrue(drawn.contains("[" + key.label() + "]"), drawn));
    }

    /** Another window size alone must not hide what a page is for. */
    /** Enter pressed twice would begin a session of the protocol that the cursor fell back to. */
    @Test
    void withNoSessionFoundThereIsNothingToKeep() {
        assertTrue(Drawn.of(ALL.get("home-searching"), 80, 24).contains("[Enter]"));
        assertFalse(Drawn.of(ALL.get("home-none-found"), 80, 24).contains("[Enter]"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "home",
                "home-many",
                "home-review",
                "home-review-method",
                "home-review-flags"
            })
    void widerWindowsHaveLayoutsOfTheirOwn(String name) {
        Approved.matches("120x36/" + name, Drawn.of(ALL.get(name), 120, 36));
        Approved.matches("200x60/" + name, Drawn.of(ALL.get(name), 200, 60));
    }

    @Test
    void whatAnOpenDonningConcealsIsNotInItsReviewEither() {
        for (HomeView.Page page : HomeView.Page.values()) {
            HomeView open = HomeScenes.review(page, Scenes.rounds(2).purged().exercised("39"));
            String drawn = Drawn.of(open, 200, 60);
            assertFalse(drawn.contains("times as"), drawn);
            assertFalse(drawn.contains("settled"), drawn);
            assertFalse(drawn.contains("critical"), drawn);
        }
    }

    @Test
    void aTitleThatTheListHasNoRoomForStandsWholeBelowIt() {
        String whole = "Seal and breathing, with and without an added part";
        String narrow = Drawn.of(ALL.get("home"), 80, 24);
        assertTrue(narrow.contains("shipped  Seal and breathing, with and withou"), narrow);
        assertTrue(narrow.contains("\n  " + whole), narrow);
        String wide = Drawn.of(ALL.get("home"), 100, 30);
        assertEquals(wide.indexOf(whole), wide.lastIndexOf("shipped  " + whole) + 9);
    }

    @Test
    void theLastLineOfTheHomePageIsItsLastSession() {
        assertEquals(4, HomeScreen.seen(ALL.get("home"), new TerminalSize(80, 24)).limit());
    }

    @Test
    void aReviewSaysWhetherItsOwnSessionIsSimulatedWhateverRigIsChosen() {
        String review = Drawn.of(ALL.get("home-review"), 80, 24);
        assertTrue(review.contains("[simulated rig x30: invented values]"), review);
        assertFalse(review.contains("readings:"), review);
        String help = Drawn.of(ALL.get("home-help"), 80, 24);
        assertFalse(help.contains("simulated rig x"), help);
    }
}
