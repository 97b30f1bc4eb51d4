package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rigside.analysis.ConditionSummary;
import rigside.analysis.MeasureResult;

/** Failed checks and donnings that do not count, per condition: outcomes, not nothing. */
final class Outcomes {
    private Outcomes() {}

    /** Each with its reason; nothing where there is none. */
    static List<Line> of(Scene scene) {
        List<ConditionSummary> conditions = conditions(scene);
        if (conditions.stream().noneMatch(Outcomes::isMarred)) {
            return List.of();
        }
        List<Line> lines = new ArrayList<>();
        lines.add(
                Line.of(Tone.STRONG, "Beside the values")
                        .plus(Tone.QUIET, "  what else came of the donnings"));
        conditions.forEach(condition -> lines.addAll(of(scene, condition)));
        return List.copyOf(lines);
    }

    /** How many there are, in a line or two; nothing where nothing is worn. */
    static List<Line> counted(Scene scene) {
        List<ConditionSummary> conditions = conditions(scene);
        if (conditions.isEmpty()) {
            return List.of();
        }
        if (conditions.stream().noneMatch(Outcomes::isMarred)) {
            return Wrap.lines(
                    Tone.QUIET,
                    "no check failed, no donning abandoned or struck out",
                    scene.columns());
        }
        List<String> words =
                conditions.stream()
                        .map(
                                each ->
                                        Header.title(scene.state(), each.condition())
                                                + ": "
                                                + counts(each))
                        .toList();
        return scene.strong(String.join("; ", words));
    }

    private static List<ConditionSummary> conditions(Scene scene) {
        return scene.view().shown().measures().stream()
                .findFirst()
                .map(MeasureResult::conditions)
                .orElse(List.of());
    }

    private static boolean isMarred(ConditionSummary condition) {
        return Stream.of(condition.failedChecks(), condition.abandoned(), condition.struck())
                .anyMatch(each -> !each.isEmpty());
    }

    private static List<Line> of(Scene scene, ConditionSummary condition) {
        List<String> all = new ArrayList<>();
        all.addAll(named("check failed", condition.failedChecks()));
        all.addAll(named("abandoned", condition.abandoned()));
        all.addAll(named("struck out", condition.struck()));
        String counts = counts(condition);
        List<Line> lines = new ArrayList<>();
        lines.addAll(
                Wrap.hanging(
                        Line.of(" " + Header.title(scene.state(), condition.condition()) + ": "),
                        all.isEmpty() ? Tone.PLAIN : Tone.STRONG,
                        counts,
                        scene.columns()));
        all.forEach(
                each ->
                        lines.addAll(
                                Wrap.hanging(Line.of("   "), Tone.PLAIN, each, scene.columns())));
        return lines;
    }

    private static String counts(ConditionSummary condition) {
        return Texts.count(condition.failedChecks().size(), "failed check")
                + ", "
                + condition.abandoned().size()
                + " abandoned, "
                + condition.struck().size()
                + " struck out";
    }

    private static List<String> named(String what, List<String> all) {
        return all.stream().map(each -> what + ", " + each).toList();
    }
}
