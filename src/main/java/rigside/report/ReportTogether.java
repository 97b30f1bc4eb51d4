package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.analysis.ConditionSummary;
import rigside.analysis.Digits;
import rigside.analysis.MeasureResult;
import rigside.measure.TimedInhalation;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.report.Block.Head;

/**
 * Seal and breathing side by side: a leak is a parallel path, so a worse seal makes breathing look
 * easier than it is.
 */
record ReportTogether(Material of, MeasureResult seal, List<MeasureResult> breathing) {

    /** None where not both were measured, or one is concealed. */
    static List<Block> of(Material of) {
        Optional<MeasureResult> seal =
                of.shown().results().stream()
                        .filter(each -> each.measure().kind() instanceof Measure.FitFactor)
                        .findFirst();
        List<MeasureResult> breathing =
                of.shown().results().stream()
                        .filter(
                                each ->
                                        each.measure().kind() instanceof Measure.TimedInhalation
                                                || each.measure().kind()
                                                        instanceof Measure.PressureTrace)
                        .toList();
        return seal.isEmpty() || breathing.isEmpty()
                ? List.of()
                : new ReportTogether(of, seal.get(), breathing).blocks();
    }

    private List<Block> blocks() {
        List<Head> heads = new ArrayList<>();
        heads.add(new Head("Condition", false));
        heads.add(Head.figures(ReportMeasure.title(seal.measure())));
        breathing.forEach(each -> heads.add(Head.figures(ReportMeasure.title(each.measure()))));
        heads.add(Head.figures("Flow that may have leaked"));
        return List.of(
                new Block.Words(
                        "A leak is a second way in, beside the filter: a worse seal makes breathing"
                                + " look easier than it is. Of the flow at most about one part in"
                                + " the fit factor can have taken it; a warning stands above 2 %."),
                new Block.Table(
                        "Means of both, condition by condition",
                        heads,
                        of.protocol().conditions().stream().map(this::row).toList()));
    }

    private List<Cell> row(Condition condition) {
        List<String> cells = new ArrayList<>(List.of(condition.title()));
        Optional<ConditionSummary> sealed = of(seal, condition);
        cells.add(sealed.map(ReportMeasure::mean).orElse("-"));
        breathing.forEach(
                each -> cells.add(of(each, condition).map(ReportMeasure::mean).orElse("-")));
        cells.add(
                sealed.filter(each -> each.mean().isPresent())
                        .map(each -> leak(each.mean().getAsDouble()))
                        .orElse("-"));
        return Cell.texts(cells);
    }

    private static Optional<ConditionSummary> of(MeasureResult result, Condition condition) {
        return result.conditions().stream()
                .filter(each -> each.condition().equals(condition.id()))
                .findFirst();
    }

    private static String leak(double fitFactor) {
        double share = TimedInhalation.possibleLeakShare(fitFactor);
        return "up to "
                + Digits.three(100 * share)
                + " %"
                + (share > TimedInhalation.LEAK_WARNING ? ", WARNING" : "");
    }
}
