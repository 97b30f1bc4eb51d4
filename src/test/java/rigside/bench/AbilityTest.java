package rigside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.screen.Stroke;
import rigside.screen.View.Colours;

class AbilityTest {
    static Stream<Arguments> environments() {
        return Stream.of(
                Arguments.of("a bare one", Map.of(), Colours.FEW, false),
                Arguments.of("a UTF-8 language", Map.of("LANG", "en_GB.UTF-8"), Colours.FEW, true),
                Arguments.of(
                        "utf8 without its hyphen", Map.of("LC_ALL", "C.utf8"), Colours.FEW, true),
                Arguments.of(
                        "LC_ALL goes before LANG",
                        Map.of("LC_ALL", "C", "LANG", "en_GB.UTF-8"),
                        Colours.FEW,
                        false),
                Arguments.of(
                        "LC_CTYPE goes before LANG",
                        Map.of("LC_CTYPE", "C.UTF-8", "LANG", "C"),
                        Colours.FEW,
                        true),
                Arguments.of(
                        "an empty LC_ALL says nothing",
                        Map.of("LC_ALL", "", "LANG", "C.UTF-8"),
                        Colours.FEW,
                        true),
                Arguments.of("NO_COLOR", Map.of("NO_COLOR", "1"), Colours.NONE, false),
                Arguments.of(
                        "an empty NO_COLOR says nothing",
                        Map.of("NO_COLOR", ""),
                        Colours.FEW,
                        false),
                Arguments.of(
                        "a terminal of 256 colours",
                        Map.of("TERM", "tmux-256color"),
                        Colours.MANY,
                        false),
                Arguments.of(
                        "a terminal that says it has more",
                        Map.of("TERM", "xterm", "COLORTERM", "truecolor"),
                        Colours.MANY,
                        false),
                Arguments.of(
                        "NO_COLOR goes before all",
                        Map.of("TERM", "xterm-256color", "NO_COLOR", "1"),
                        Colours.NONE,
                        false));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("environments")
    void theEnvironmentTells(
            String name, Map<String, String> environment, Colours colours, boolean unicode) {
        assertEquals(colours, Ability.of(environment, false, Stroke.SPACE).colours());
        assertEquals(unicode, Ability.of(environment, false, Stroke.SPACE).unicode());
    }

    @Test
    void plainCharactersCanBeAskedFor() {
        assertEquals(false, Ability.of(Map.of("LANG", "C.UTF-8"), true, Stroke.SPACE).unicode());
    }
}
