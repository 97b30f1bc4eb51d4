package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import rigside.analysis.ConditionSummary;
import rigside.analysis.MeasureResult;

/** Failed checks and donnings that do not count, per condition: outcomes, not nothing. */
final class Outcomes {
    private Outcomes() {}

    static List<Line> of(Scene scene) {
        List<Line> lines = new ArrayList<>();
        lines.add(
                Line.of(Tone.STRONG, "Beside the values")
                        .plus(Tone.QUIET, "  what else came of the donnings"));
        scene.view().shown().measures().stream()
                .findFirst()
                .map(MeasureResult::conditions)
                .orElse(List.of())
                .forEach(condition -> lines.addAll(of(scene, condition)));
        return List.copyOf(lines);
    }

    private static List<Line> of(Scene scene, ConditionSummary condition) {
        List<String> all = new ArrayList<>();
        all.addAll(named("check failed", condition.failedChecks()));
        all.addAll(named("abandoned", condition.abandoned()));
        all.addAll(named("struck out", condition.struck()));
        String counts =
                Texts.count(condition.failedChecks().size(), "failed check")
                        + ", "
                        + condition.abandoned().size()
                        + " abandoned, "
                        + condition.struck().size()
                        + " struck out";
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

    private static List<String> named(String what, List<String> all) {
        return all.stream().map(each -> what + ", " + each).toList();
    }
}
