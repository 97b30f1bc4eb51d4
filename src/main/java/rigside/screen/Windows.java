package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.protocol.Step;

/** When an exercise samples what, as a line of letters over a line of elapsed time. */
final class Windows {
    private Windows() {}

    private record Kind(char letter, String words, Step.Window window) {}

    /** What is sampled now, in words; empty when nothing is. */
    static String open(Step.Exercise exercise, double elapsed) {
        return String.join(
                " and ",
                kinds(exercise).stream()
                        .filter(
                                kind ->
                                        kind.window().from() <= elapsed
                                                && elapsed < kind.window().to())
                        .map(kind -> kind.words().toUpperCase(java.util.Locale.ROOT))
                        .toList());
    }

    static List<Line> lines(Step.Exercise exercise, double elapsed, int columns, Glyphs signs) {
        StringBuilder letters = new StringBuilder(signs.dot().repeat(columns));
        for (Kind kind : kinds(exercise)) {
            int to = place(kind.window().to(), exercise.seconds(), columns);
            for (int at = place(kind.window().from(), exercise.seconds(), columns); at < to; at++) {
                letters.setCharAt(at, kind.letter());
            }
        }
        int now = Math.max(0, place(elapsed, exercise.seconds(), columns));
        Line time =
                Line.of(Tone.STRONG, signs.heavy().repeat(now))
                        .plus(Tone.QUIET, signs.light().repeat(columns - now));
        return kinds(exercise).isEmpty()
                ? List.of(time)
                : List.of(Line.of(letters.toString()), time);
    }

    /** What the letters stand for. */
    static Optional<String> legend(Step.Exercise exercise) {
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

    private static List<Kind> kinds(Step.Exercise exercise) {
        List<Kind> kinds = new ArrayList<>();
        exercise.ambient().forEach(window -> kinds.add(new Kind('a', "ambient", window)));
        exercise.mask().ifPresent(window -> kinds.add(new Kind('m', "mask", window)));
        exercise.pressure().ifPresent(window -> kinds.add(new Kind('p', "mask pressure", window)));
        return List.copyOf(kinds);
    }
}
