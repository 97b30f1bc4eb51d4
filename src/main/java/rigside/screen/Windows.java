package rigside.screen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rigside.protocol.Exercise;
import rigside.protocol.Window;

/** When an exercise samples what, as a line of letters over a line of elapsed time. */
final class Windows {
    private static final char PRESSURE = 'p';

    private Windows() {}

    private record Kind(char letter, String words, Window window) {
        /** The pressure is a gauge's, not a counter's. */
        boolean isOfTube() {
            return letter != PRESSURE;
        }

        boolean isOpen(double elapsed) {
            return window.from() <= elapsed && elapsed < window.to();
        }

        String shouted() {
            return words.toUpperCase(Locale.ROOT);
        }
    }

    /** What the sample tube is on now, in words; empty when nothing is sampled. */
    static String tube(Exercise exercise, double elapsed) {
        return kinds(exercise).stream()
                .filter(kind -> kind.isOfTube() && kind.isOpen(elapsed))
                .map(Kind::shouted)
                .findFirst()
                .orElse("");
    }

    /** What it has to be on next in this exercise, and when: the hand on it wants to know. */
    static Optional<String> next(Exercise exercise, double elapsed) {
        String now = tube(exercise, elapsed);
        return kinds(exercise).stream()
                .filter(kind -> kind.isOfTube() && kind.window().from() > elapsed)
                .min(Comparator.comparingDouble(kind -> kind.window().from()))
                .filter(kind -> !kind.shouted().equals(now))
                .map(
                        kind ->
                                "in "
                                        + (long) Math.ceil(kind.window().from() - elapsed)
                                        + " s "
                                        + kind.shouted());
    }

    /** Whether the breath's pressure is read now. */
    static boolean readsPressure(Exercise exercise, double elapsed) {
        return kinds(exercise).stream().anyMatch(kind -> !kind.isOfTube() && kind.isOpen(elapsed));
    }

    /** The pressure has a line of its own: it may be read while a counter samples. */
    static List<Line> lines(Exercise exercise, double elapsed, int columns, Glyphs signs) {
        List<Line> lines = new ArrayList<>();
        for (boolean tube : List.of(true, false)) {
            List<Kind> kinds =
                    kinds(exercise).stream().filter(kind -> kind.isOfTube() == tube).toList();
            if (!kinds.isEmpty()) {
                lines.add(letters(kinds, exercise.seconds(), columns, signs));
            }
        }
        int now = Math.max(0, place(elapsed, exercise.seconds(), columns));
        lines.add(
                Line.of(Tone.STRONG, signs.heavy().repeat(now))
                        .plus(Tone.QUIET, signs.light().repeat(columns - now)));
        return List.copyOf(lines);
    }

    private static Line letters(List<Kind> kinds, double length, int columns, Glyphs signs) {
        StringBuilder letters = new StringBuilder(signs.dot().repeat(columns));
        for (Kind kind : kinds) {
            int to = place(kind.window().to(), length, columns);
            for (int at = place(kind.window().from(), length, columns); at < to; at++) {
                letters.setCharAt(at, kind.letter());
            }
        }
        return Line.of(letters.toString());
    }

    /** What the letters stand for. */
    static Optional<String> legend(Exercise exercise) {
        List<String> words =
                kinds(exercise).stream()
                        .map(kind -> kind.letter() + " = " + kind.words())
                        .distinct()
                        .toList();
        return words.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", words));
    }

    private static int place(double seconds, double length, int columns) {
        return (int) Math.round(Math.max(0, Math.min(1, seconds / length)) * columns);
    }

    private static List<Kind> kinds(Exercise exercise) {
        List<Kind> kinds = new ArrayList<>();
        exercise.ambient().forEach(window -> kinds.add(new Kind('a', "ambient", window)));
        exercise.mask().ifPresent(window -> kinds.add(new Kind('m', "mask", window)));
        exercise.pressure()
                .ifPresent(window -> kinds.add(new Kind(PRESSURE, "mask pressure", window)));
        return List.copyOf(kinds);
    }
}
