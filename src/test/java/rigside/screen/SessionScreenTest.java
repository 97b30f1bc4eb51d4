package rigside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.session.Activity;

final class SessionScreenTest {

    private static final Map<String, View> STEPS = Scenes.steps();
    private static final Map<String, View> PAGES = Scenes.pages();

    static Stream<String> steps() {
        return STEPS.keySet().stream();
    }

    static Stream<String> pages() {
        return PAGES.keySet().stream();
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
    @MethodSource("steps")
    void eachStepIsDrawnAsApprovedAtTheUsualSize(String name) {
        Approved.matches("80x24/" + name, Drawn.of(STEPS.get(name), 80, 24));
    }

    @ParameterizedTest
    @MethodSource("steps")
    void eachStepIsDrawnAsApprovedWithTheTallyBesideIt(String name) {
        Approved.matches("160x48/" + name, Drawn.of(STEPS.get(name), 160, 48));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void eachPageIsDrawnAsApprovedAtTheUsualSize(String name) {
        Approved.matches("80x24/" + name, Drawn.of(PAGES.get(name), 80, 24));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void eachPageIsDrawnAsApprovedInALargeWindow(String name) {
        Approved.matches("160x48/" + name, Drawn.of(PAGES.get(name), 160, 48));
    }
}
