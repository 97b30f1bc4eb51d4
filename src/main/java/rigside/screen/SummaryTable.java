package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import rigside.analysis.ConditionSummary;
import rigside.analysis.Digits;
import rigside.analysis.MeasureResult;

/** One measure per condition: how many values, their mean, spread and places on one strip. */
record SummaryTable(Scene scene, MeasureResult result) {

    private static final int FIGURES = 4 + 9 + 9;

    /** The coefficient of variation says the spread again, where there is room. */
    private static final int VARIATION = 7;

    private static final int ROOM_FOR_VARIATION = 64;

    private static final int WIDEST_STRIP = 40;

    static List<Line> of(Scene scene, MeasureResult result) {
        return new SummaryTable(scene, result).lines();
    }

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        lines.add(heading());
        result.conditions().forEach(condition -> lines.add(row(condition)));
        return List.copyOf(lines);
    }

    private Line heading() {
        String unit = result.measure().unit().symbol();
        Line title =
                Line.of(Tone.STRONG, result.measure().title())
                        .plus(Tone.QUIET, unit.isEmpty() ? "" : " (" + unit + ")")
                        .cut(name() - 1, scene.signs().cut())
                        .padded(name(), Tone.PLAIN);
        return title.plus(
                        Tone.QUIET,
                        String.format("%4s%9s%9s", "n", "mean", "spread")
                                + (hasVariation() ? String.format("%7s", "CV") : "")
                                + (hasLevel() ? "  reached" : ""))
                .plus(Tone.QUIET, "  " + ends());
    }

    private Line row(ConditionSummary condition) {
        String spread =
                condition.spread().isEmpty()
                        ? "-"
                        : (condition.geometric() ? "x" : "")
                                + Figures.three(condition.spread().getAsDouble());
        String variation =
                condition.variation().isEmpty()
                        ? "-"
                        : Math.round(100 * condition.variation().getAsDouble()) + " %";
        Line name =
                Line.of(" " + Header.title(scene.state(), condition.condition()))
                        .cut(name() - 1, scene.signs().cut())
                        .padded(name(), Tone.PLAIN);
        Line figures =
                name.plus(String.format("%4d", condition.n()))
                        .plus(Tone.STRONG, String.format("%9s", mean(condition)))
                        .plus(
                                String.format("%9s", spread)
                                        + (hasVariation() ? String.format("%7s", variation) : "")
                                        + level(condition)
                                        + "  ");
        return condition.n() == 0
                ? figures
                : figures.plus(
                        strip().of(
                                        condition.values(),
                                        condition.mean().orElse(Double.NaN),
                                        scene.signs()));
    }

    /** With the sign of a lower bound where it is only that. */
    private static String mean(ConditionSummary condition) {
        return condition.atLeast() && condition.mean().isPresent()
                ? ">=" + Digits.threeAtLeast(condition.mean().getAsDouble())
                : Figures.three(condition.mean());
    }

    /** How many donnings reach the level, where the protocol names one. */
    private String level(ConditionSummary condition) {
        int judged = condition.reached() + condition.missed();
        return hasLevel() ? String.format("%9s", condition.reached() + " of " + judged) : "";
    }

    private boolean hasLevel() {
        return result.conditions().stream().anyMatch(each -> each.reached() + each.missed() > 0);
    }

    private boolean hasVariation() {
        return scene.columns() >= ROOM_FOR_VARIATION;
    }

    private int figures() {
        return FIGURES + (hasVariation() ? VARIATION : 0) + (hasLevel() ? 9 : 0);
    }

    /** The values at the two ends of the strip, over them. */
    private String ends() {
        if (values().isEmpty()) {
            return "";
        }
        String low = Figures.three(strip().low());
        String high = Figures.three(strip().high());
        int between = stripColumns() - low.length() - high.length();
        return strip().low() == strip().high() || between < 1
                ? low
                : low + " ".repeat(between) + high;
    }

    private Strip strip() {
        return Strip.over(
                values(),
                result.conditions().stream().anyMatch(ConditionSummary::geometric),
                stripColumns());
    }

    private List<Double> values() {
        return result.conditions().stream().flatMap(each -> each.values().stream()).toList();
    }

    private int name() {
        int longest =
                result.conditions().stream()
                        .mapToInt(
                                each ->
                                        2
                                                + Clean.width(
                                                        Clean.text(
                                                                Header.title(
                                                                        scene.state(),
                                                                        each.condition()))))
                        .max()
                        .orElse(0);
        int title =
                Clean.width(Clean.text(result.measure().title()))
                        + result.measure().unit().symbol().length()
                        + 4;
        return Math.max(12, Math.min(Math.max(longest, title), scene.columns() - figures() - 12));
    }

    private int stripColumns() {
        return Math.max(8, Math.min(WIDEST_STRIP, scene.columns() - name() - figures() - 2));
    }
}
