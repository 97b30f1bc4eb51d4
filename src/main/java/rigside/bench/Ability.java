package rigside.bench;

import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import rigside.screen.Stroke;
import rigside.screen.View;

/** What the terminal can show, told from the environment. */
public final class Ability {
    private Ability() {}

    /**
     * Colours unless NO_COLOR is set (no-color.org: to anything but nothing), 256 where TERM or
     * COLORTERM says so; lines and blocks where the locale says UTF-8.
     *
     * @param environment the environment's variables
     * @param asciiOnly whether nothing beyond ASCII is wanted
     * @param trigger the key that starts and stops timing
     */
    public static View.Style of(
            Map<String, String> environment, boolean asciiOnly, Stroke trigger) {
        String locale =
                Stream.of("LC_ALL", "LC_CTYPE", "LANG")
                        .map(name -> environment.getOrDefault(name, ""))
                        .filter(value -> !value.isEmpty())
                        .findFirst()
                        .orElse("")
                        .toLowerCase(Locale.ROOT)
                        .replace("-", "");
        return new View.Style(colours(environment), !asciiOnly && locale.contains("utf8"), trigger);
    }

    private static View.Colours colours(Map<String, String> environment) {
        if (!environment.getOrDefault("NO_COLOR", "").isEmpty()) {
            return View.Colours.NONE;
        }
        boolean many =
                environment.getOrDefault("TERM", "").contains("256color")
                        || !environment.getOrDefault("COLORTERM", "").isEmpty();
        return many ? View.Colours.MANY : View.Colours.FEW;
    }
}
