package rigside.report;

import java.util.Locale;

/**
 * What a mark is drawn in. No meaning hangs on it: shapes and words carry that.
 *
 * <p>On a page an ink is a variable of {@link Style}, which differs in the light, in the dark and
 * on paper; in a file of its own it is the light one.
 */
enum Ink {
    /** What is to be read. */
    INK("#1d2023"),
    /** What stands beside it. */
    QUIET("#5a6168"),
    /** Thin lines behind it. */
    RULE("#c9cdd1"),
    /** A surface behind it. */
    WASH("#e6e8e3"),
    /** What is to be seen first. */
    MARK("#9a3412"),
    /** The sheet itself, to cover what lies below. */
    PAPER("#ffffff");

    private final String light;

    Ink(String light) {
        this.light = light;
    }

    /** On white, as SVG writes it. */
    String light() {
        return light;
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
