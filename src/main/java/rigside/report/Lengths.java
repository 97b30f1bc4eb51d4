package rigside.report;

import java.util.ArrayList;
import java.util.List;
import rigside.measure.Numbers;

/** Lengths of time to the second: {@code 45 s}, {@code 1 min 30 s}, {@code 1 h 5 min}. */
final class Lengths {
    private Lengths() {}

    private static final int MINUTE = 60;
    private static final int HOUR = 3600;

    /** In words; what is shorter than a minute keeps its fractions. */
    static String of(double seconds) {
        if (seconds < MINUTE) {
            return Numbers.plain(seconds) + " s";
        }
        long whole = Math.round(seconds);
        List<String> words = new ArrayList<>();
        add(words, whole / HOUR, "h");
        add(words, whole % HOUR / MINUTE, "min");
        add(words, whole % MINUTE, "s");
        return String.join(" ", words);
    }

    private static void add(List<String> words, long count, String unit) {
        if (count > 0) {
            words.add(count + " " + unit);
        }
    }
}
