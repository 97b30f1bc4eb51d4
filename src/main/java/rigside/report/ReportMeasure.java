package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import rigside.analysis.Comparison;
import rigside.analysis.ConditionSummary;
import rigside.analysis.Digits;
import rigside.analysis.InDigits;
import rigside.analysis.MeasureResult;
import rigside.protocol.Measure;
import rigside.report.Block.Head;

/** One measure: its figures, what each condition gave, how the interval moved. */
record ReportMeasure(Material of, MeasureResult result) {

    static String title(Measure measure) {
        String unit = measure.unit().symbol();
        return unit.isEmpty() ? measure.title() : measure.title() + " (" + unit + ")";
    }

    static List<Block> of(Material of, MeasureResult result) {
        return new ReportMeasure(of, result).blocks();
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        if (result.measure().compared().isEmpty() && of.compares()) {
            blocks.add(new Block.Words("Recorded, not compared."));
        }
        Figures.of(of, result.measure().id()).stream().map(Block.Drawn::new).forEach(blocks::add);
        PressurePlot.missing(of, result.measure().id())
                .map(Block.Words::new)
                .ifPresent(blocks::add);
        blocks.add(conditions());
        if (!result.remarks().isEmpty()) {
            blocks.add(new Block.Points(result.remarks()));
        }
        blocks.addAll(ReportValues.of(of, result));
        result.comparisons().stream()
                .filter(each -> !each.looks().isEmpty())
                .map(this::looks)
                .forEach(blocks::add);
        return blocks;
    }

    private Block conditions() {
        boolean geometric = result.conditions().stream().anyMatch(ConditionSummary::geometric);
        boolean levels = result.conditions().stream().anyMatch(ReportMeasure::hasLevel);
        List<Head> heads = new ArrayList<>();
        heads.add(new Head("Condition", false));
        heads.add(Head.figures("n"));
        heads.add(Head.figures(geometric ? "Geometric mean" : "Mean"));
        heads.add(Head.figures(geometric ? "Geometric SD" : "SD"));
        heads.add(Head.figures("Coefficient of variation"));
        if (levels) {
            heads.add(Head.figures("Reach the level"));
        }
        return new Block.Table(
                "Each condition, over its donnings",
                heads,
                result.conditions().stream().map(each -> condition(each, levels)).toList());
    }

    private static boolean hasLevel(ConditionSummary each) {
        return each.reached() + each.missed() > 0;
    }

    private List<Cell> condition(ConditionSummary each, boolean levels) {
        List<String> cells = new ArrayList<>();
        cells.add(of.title(each.condition()));
        cells.add(String.valueOf(each.n()));
        cells.add(mean(each));
        cells.add(three(each.spread()));
        cells.add(
                each.variation().isEmpty()
                        ? "-"
                        : String.format(
                                Locale.ROOT, "%.1f %%", 100 * each.variation().getAsDouble()));
        if (levels) {
            cells.add(each.reached() + " of " + (each.reached() + each.missed()));
        }
        return Cell.texts(cells);
    }

    /** A mean, with the words of a lower bound where it is only that. */
    static String mean(ConditionSummary each) {
        return each.atLeast() && each.mean().isPresent()
                ? "at least " + Digits.threeAtLeast(each.mean().getAsDouble())
                : three(each.mean());
    }

    static String three(OptionalDouble value) {
        return value.isPresent() ? Digits.three(value.getAsDouble()) : "-";
    }

    private Block looks(Comparison each) {
        String against =
                of.protocol().conditions().size() > 2 ? ": " + of.title(each.condition()) : "";
        return new Block.Table(
                "How the interval moved, look by look" + against,
                List.of(
                        new Head("Look", false),
                        Head.figures("n"),
                        Head.figures("Change"),
                        Head.figures("Interval"),
                        Head.figures("c"),
                        new Head("By itself it says", false)),
                rows(each));
    }

    private static List<List<Cell>> rows(Comparison each) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Comparison.Seen look : each.looks()) {
            InDigits digits = InDigits.of(each, look);
            rows.add(
                    Cell.texts(
                            List.of(
                                    String.valueOf(rows.size() + 1),
                                    String.valueOf(look.n()),
                                    digits.estimate(),
                                    digits.interval(),
                                    Digits.three(look.critical()),
                                    each.words(look.verdict()))));
        }
        return rows;
    }
}
