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
