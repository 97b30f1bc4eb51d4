package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import rigside.analysis.Comparison;
import rigside.analysis.ConditionSummary;
import rigside.analysis.MeasureResult;

/** Each comparison as its interval against the band, what was found, and what to do next. */
final class Verdicts {
    private Verdicts() {}

    /** Wider lines say no more. */
    private static final int WIDEST = 72;

    /** All comparisons in full sentences; or that they are concealed. */
    static List<Line> of(Scene scene) {
        if (!scene.view().shown().result()) {
            return concealed(scene);
        }
        List<Line> lines = new ArrayList<>();
        for (MeasureResult measure : scene.view().shown().measures()) {
            for (Comparison comparison : measure.comparisons()) {
                lines.addAll(lines.isEmpty() ? List.of() : List.of(Line.BLANK));
                lines.add(Line.of(Tone.STRONG, measure.measure().title()));
                lines.addAll(of(scene, measure, comparison, !comparison.isSettled()));
            }
        }
        return List.copyOf(lines);
    }

    private static List<Line> concealed(Scene scene) {
        return Wrap.lines(
                Tone.WARN, Texts.sentence(scene.view().shown().concealed()) + ".", scene.columns());
    }

    /** One line for each comparison: its interval against the band, and the verdict in a word. */
    static List<Line> brief(Scene scene) {
        if (!scene.view().shown().result()) {
            return concealed(scene);
        }
        List<Line> lines = new ArrayList<>();
        boolean several = scene.state().protocol().conditions().size() > 2;
        for (MeasureResult measure : scene.view().shown().measures()) {
            for (Comparison comparison : measure.comparisons()) {
                String name =
                        measure.measure().title()
                                + (several
                                        ? ", " + Header.title(scene.state(), comparison.condition())
                                        : "");
                lines.add(brief(scene, name, comparison));
            }
        }
        return List.copyOf(lines);
    }

    private static Line brief(Scene scene, String name, Comparison comparison) {
        int width = scene.columns() / 4;
        Line title =
                sign(scene, comparison)
                        .plus(Line.of(name).cut(width - 3, scene.signs().cut()))
                        .padded(width, Tone.PLAIN);
        int axis = scene.columns() - width - 29;
        String line =
                comparison.estimate().isPresent()
                        ? new IntervalLine(comparison, axis, scene.signs()).axis()
                        : "no complete round yet";
        return title.plus(Line.of(line).cut(axis, scene.signs().cut()))
                .padded(width + axis + 2, Tone.PLAIN)
                .plus(word(comparison));
    }

    private static Line word(Comparison comparison) {
        return switch (comparison.verdict()) {
            case TOO_FEW_ROUNDS -> Line.of("too few rounds");
            case MEANINGFUL_DIFFERENCE -> Line.of(Tone.STRONG, "a meaningful difference");
            case NO_MEANINGFUL_DIFFERENCE -> Line.of(Tone.STRONG, "no meaningful difference");
            case DIFFERENCE_SIZE_UNSETTLED -> Line.of("differs, size unsettled");
            case NOT_SETTLED -> Line.of("not settled");
        };
    }

    /**
     * One comparison.
     *
     * @param withNext whether what to do next is said too
     */
    static List<Line> of(
            Scene scene, MeasureResult measure, Comparison comparison, boolean withNext) {
        int width = Math.min(WIDEST, scene.columns());
        List<Line> lines = new ArrayList<>();
        if (comparison.estimate().isPresent()) {
            lines.addAll(new IntervalLine(comparison, width, scene.signs()).lines());
        }
        lines.addAll(
                Wrap.hanging(
                        sign(scene, comparison),
                        Tone.STRONG,
                        comparison.sentence(),
                        scene.columns()));
        if (withNext) {
            lines.addAll(
                    Wrap.hanging(
                            Line.of("  next: "), Tone.PLAIN, comparison.next(), scene.columns()));
        }
        lines.addAll(
                Wrap.hanging(
                        Line.of("  "),
                        Tone.QUIET,
                        mishaps(scene, measure, comparison),
                        scene.columns()));
        return List.copyOf(lines);
    }

    /**
     * What else came of the donnings stands beside every verdict: a condition that fails often says
     * so.
     */
    private static String mishaps(Scene scene, MeasureResult measure, Comparison comparison) {
        boolean none =
                measure.conditions().stream()
                        .allMatch(
                                each ->
                                        each.failedChecks().isEmpty()
                                                && each.abandoned().isEmpty()
                                                && each.struck().isEmpty());
        return none
                ? "no check failed, no donning abandoned or struck out"
                : count("failed checks", measure, comparison, ConditionSummary::failedChecks)
                        + ", "
                        + count("abandoned", measure, comparison, ConditionSummary::abandoned)
                        + ", "
                        + count("struck out", measure, comparison, ConditionSummary::struck)
                        + " ("
                        + Header.title(scene.state(), comparison.condition())
                        + " / "
                        + Header.title(scene.state(), comparison.reference())
                        + ")";
    }

    private static String count(
            String what,
            MeasureResult measure,
            Comparison comparison,
            Function<ConditionSummary, List<String>> mishaps) {
        return what
                + " "
                + count(measure, comparison.condition(), mishaps)
                + " / "
                + count(measure, comparison.reference(), mishaps);
    }

    private static int count(
            MeasureResult measure,
            String condition,
            Function<ConditionSummary, List<String>> mishaps) {
        return measure.conditions().stream()
                .filter(each -> each.condition().equals(condition))
                .mapToInt(each -> mishaps.apply(each).size())
                .sum();
    }

    private static Line sign(Scene scene, Comparison comparison) {
        return comparison.isSettled()
                ? Line.of(Tone.GOOD, scene.signs().tick() + " ")
                : Line.of(Tone.QUIET, "? ");
    }
}
