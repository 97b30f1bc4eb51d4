package rigside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.screen.Stroke;

class AbilityTest {
    static Stream<Arguments> environments() {
        return Stream.of(
                Arguments.of("a bare one", Map.of(), true, false),
                Arguments.of("a UTF-8 language", Map.of("LANG", "en_GB.UTF-8"), true, true),
                Arguments.of("utf8 without its hyphen", Map.of("LC_ALL", "C.utf8"), true, true),
                Arguments.of(
                        "LC_ALL goes before LANG",
                        Map.of("LC_ALL", "C", "LANG", "en_GB.UTF-8"),
                        true,
                        false),
                Arguments.of(
                        "LC_CTYPE goes before LANG",
                        Map.of("LC_CTYPE", "C.UTF-8", "LANG", "C"),
                        true,
                        true),
                Arguments.of(
                        "an empty LC_ALL says nothing",
                        Map.of("LC_ALL", "", "LANG", "C.UTF-8"),
                        true,
                        true),
                Arguments.of("NO_COLOR", Map.of("NO_COLOR", "1"), false, false),
                Arguments.of(
                        "an empty NO_COLOR says nothing", Map.of("NO_COLOR", ""), true, false));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("environments")
    void theEnvironmentTells(
            String name, Map<String, String> environment, boolean colour, boolean unicode) {
        assertEquals(colour, Ability.of(environment, false, Stroke.SPACE).colour());
        assertEquals(unicode, Ability.of(environment, false, Stroke.SPACE).unicode());
    }

    @Test
    void plainCharactersCanBeAskedFor() {
        assertEquals(false, Ability.of(Map.of("LANG", "C.UTF-8"), true, Stroke.SPACE).unicode());
    }
}
