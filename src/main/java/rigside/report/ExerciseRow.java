package rigside.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import rigside.analysis.DonningValue;
import rigside.analysis.Part;
import rigside.protocol.Measure;

/**
 * One row of {@link ExercisesPlot}: one exercise, or the whole donning.
 *
 * @param title the exercise's, with its number where several have the same
 * @param overall whether it is the whole donning
 * @param dots by condition, round by round
 */
record ExerciseRow(String title, boolean overall, Map<String, List<Dot>> dots) {
    /**
     * One donning.
     *
     * @param value its fit factor
     * @param atLeast whether it is only a lower bound
     * @param share how far the session had come: 0 in the first round, 1 in the last
     */
    record Dot(double value, boolean atLeast, double share) {}

    private static final Comparator<Dot> SMALLEST = Comparator.comparingDouble(Dot::value);

    /** The exercises in the order of the procedure, then the whole donning; none without values. */
    static List<ExerciseRow> all(Plotting of) {
        Map<String, ExerciseRow> rows = new LinkedHashMap<>();
        ExerciseRow overall = empty(overall(of.measure()), true);
        int last = Math.max(2, of.rounds());
        for (DonningValue value : of.result().values()) {
            if (!value.counts()) {
                continue;
            }
            double share = (value.round() - 1.0) / (last - 1.0);
            Map<String, Integer> alike = new HashMap<>();
            for (Part part : value.parts()) {
                String title =
                        part.title()
                                + numbered(alike.merge(part.title(), 1, Integer::sum))
                                + (part.counted() ? "" : " (not counted)");
                part.value()
                        .ifPresent(
                                number ->
                                        rows.computeIfAbsent(title, each -> empty(each, false))
                                                .add(
                                                        value.condition(),
                                                        new Dot(number, part.bounded(), share)));
            }
            value.value()
                    .ifPresent(
                            number ->
                                    overall.add(
                                            value.condition(),
                                            new Dot(number, value.bounded(), share)));
        }
        List<ExerciseRow> all = new ArrayList<>(rows.values());
        if (!overall.dots().isEmpty() && !all.isEmpty()) {
            all.add(overall);
        }
        return List.copyOf(all);
    }

    private static String overall(Measure measure) {
        return measure.kind() instanceof Measure.FitFactor
                ? "Whole donning: harmonic mean"
                : "Whole donning: median";
    }

    private static ExerciseRow empty(String title, boolean overall) {
        return new ExerciseRow(title, overall, new LinkedHashMap<>());
    }

    private static String numbered(int nth) {
        return nth == 1 ? "" : " (" + nth + ")";
    }

    private void add(String condition, Dot dot) {
        dots.computeIfAbsent(condition, each -> new ArrayList<>()).add(dot);
    }

    List<Dot> of(String condition) {
        return dots.getOrDefault(condition, List.of());
    }

    Mark.Weight weight() {
        return overall ? Mark.Weight.BOLD : Mark.Weight.NORMAL;
    }

    boolean isBounded() {
        return dots.values().stream().flatMap(List::stream).anyMatch(Dot::atLeast);
    }

    DoubleStream numbers() {
        return dots.values().stream().flatMap(List::stream).mapToDouble(Dot::value);
    }

    /** The mean of a condition that has values. */
    double mean(String condition, boolean geometric) {
        DoubleStream values = of(condition).stream().mapToDouble(Dot::value);
        return geometric
                ? Math.exp(values.map(Math::log).average().orElseThrow())
                : values.average().orElseThrow();
    }

    /** One that the lines above and below do not have. */
    static Mark.Shape shape(Plotting of, String condition) {
        if (of.isReference(condition)) {
            return Mark.Shape.RING;
        }
        return of.conditions().indexOf(condition) % 2 == 1 ? Mark.Shape.SQUARE : Mark.Shape.DIAMOND;
    }

    /** A, B, C in the order of the conditions; numbers where there are more than letters. */
    static String letter(Plotting of, String condition) {
        int at = of.conditions().indexOf(condition);
        return of.conditions().size() <= 26 ? String.valueOf((char) ('A' + at)) : "" + (at + 1);
    }

    /** The row in a sentence: each condition with its mean and its extremes. */
    String words(Plotting of) {
        List<String> conditions = new ArrayList<>();
        for (String condition : of.conditions()) {
            List<Dot> all = of(condition);
            if (all.isEmpty()) {
                continue;
            }
            boolean bounded = all.stream().anyMatch(Dot::atLeast);
            conditions.add(
                    of.title(condition)
                            + (all.size() == 1
                                    ? " " + of.number(all.get(0).value(), bounded)
                                    : (of.isRatio() ? " geometric mean " : " mean ")
                                            + of.number(mean(condition, of.isRatio()), bounded)
                                            + ", from "
                                            + extreme(of, all.stream().sorted(SMALLEST))
                                            + " to "
                                            + extreme(
                                                    of, all.stream().sorted(SMALLEST.reversed()))));
        }
        return title + ": " + String.join("; ", conditions) + ".";
    }

    private static String extreme(Plotting of, Stream<Dot> sorted) {
        Dot first = sorted.findFirst().orElseThrow();
        return of.number(first.value(), first.atLeast());
    }
}
