package rigside.screen;

import java.util.Locale;

/** Small turns of words. */
final class Texts {
    private Texts() {}

    /** The first letter large. */
    static String sentence(String text) {
        return text.isEmpty()
                ? text
                : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** "once", "2 times". */
    static String times(int count) {
        return count == 0 ? "never" : count == 1 ? "once" : count + " times";
    }

    /** "1 round", "2 rounds". */
    static String count(int number, String one) {
        return number + " " + one + (number == 1 ? "" : "s");
    }
}
