package rigside.report;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rigside.analysis.Comparison;
import rigside.decide.Verdict;
import rigside.protocol.Measure.Compared;
import rigside.session.Look;

/** What each look at each comparison showed. */
final class ComparisonTable {
    private static final List<String> VERDICTS =
            Stream.of(Verdict.values()).map(Verdict::word).toList();

    private ComparisonTable() {}

    /**
     * One look at one comparison.
     *
     * @param look which one, from 1
     */
    record Looked(Comparison comparison, int look, Comparison.Seen seen) {
        boolean isLast() {
            return look == comparison.looks().size();
        }
    }

    static Resource<Looked> of(Told told) {
        return new Resource<>(
                "comparisons",
                "Comparisons",
                "One row for each look at each comparison of a condition with the reference, from"
                        + " the values as they stand now. Estimate and limits are ratios (condition"
                        + " over reference) where ratios are compared, else differences (condition"
                        + " less reference) in the measure's unit. The limits are the estimate, on"
                        + " the scale of the analysis (natural logarithms for ratios), less and"
                        + " plus the critical value times the standard error plus the rounding"
                        + " shift; they hold at all looks together.",
                List.of(
                        Column.<Looked>text(
                                        "measure",
                                        "The measure.",
                                        each -> each.comparison().measure())
                                .always(),
                        Column.<Looked>text(
                                        "condition",
                                        "The condition compared.",
                                        each -> each.comparison().condition())
                                .always(),
                        Column.<Looked>text(
                                        "reference",
                                        "The condition it is compared with.",
                                        each -> each.comparison().reference())
                                .always(),
                        Column.<Looked>whole("look", "Which look, from 1.", Looked::look).always(),
                        Column.<Looked, Compared.Scale>word(
                                        "compared_by",
                                        "How two values are compared.",
                                        Compared.Scale.class,
                                        each ->
                                                each.comparison().ratio()
                                                        ? Compared.Scale.RATIO
                                                        : Compared.Scale.DIFFERENCE)
                                .always(),
                        Column.whole(
                                "n",
                                "Complete rounds used; values per condition where each value stands"
                                        + " for itself.",
                                each -> each.seen().n()),
                        number("estimate", "The estimated change.", each -> each.seen().estimate()),
                        number("low", "The lower limit.", each -> each.seen().interval().low()),
                        number("high", "The upper limit.", each -> each.seen().interval().high()),
                        number(
                                "standard_error",
                                "The standard error of the change, on the scale of the analysis.",
                                each -> each.seen().standardError()),
                        number(
                                "degrees_of_freedom",
                                "The degrees of freedom behind it.",
                                each -> each.seen().degrees()),
                        number(
                                "critical",
                                "The critical value of this look.",
                                each -> each.seen().critical()),
                        number(
                                "rounding_shift",
                                "What rounding may have shifted the estimate by, on the scale of"
                                        + " the analysis; mostly 0.",
                                each -> each.seen().shift()),
                        Column.word(
                                "verdict",
                                "What this look says by itself.",
                                VERDICTS,
                                each -> each.seen().verdict().word()),
                        Column.yesOrNo(
                                "last", "Whether it is the last look there was.", Looked::isLast),
                        Column.word(
                                "standing_verdict",
                                "What holds after the last look: the first verdict that settled, if"
                                        + " one has and nothing struck out or bounded speaks against"
                                        + " it.",
                                VERDICTS,
                                each -> each.isLast() ? each.comparison().verdict().word() : ""),
                        Column.anyWhole(
                                "settled_at_round",
                                "How many rounds were complete when it first settled.",
                                each ->
                                        each.comparison()
                                                .settledAt()
                                                .filter(settled -> each.isLast())
                                                .map(settled -> OptionalInt.of(settled.round()))
                                                .orElse(OptionalInt.empty())),
                        Column.yesOrNo(
                                "depends_on_struck",
                                "Whether the verdict differs with and without what was struck out"
                                        + " after a look.",
                                each -> each.comparison().dependsOnStruck()),
                        Column.yesOrNo(
                                "bounded_agrees",
                                "Whether the verdict is the same with what the counter only bounded"
                                        + " taken at half its penetration.",
                                each -> each.comparison().boundedAgrees()),
                        Column.word(
                                "recorded_verdict",
                                "What the program concluded after as many complete rounds during"
                                        + " the session, as recorded then.",
                                VERDICTS,
                                each -> recorded(told, each))),
                List.of("measure", "condition", "look"),
                List.of(
                        new Resource.Link("measure", "measures", "measure"),
                        Worn.CONDITION,
                        new Resource.Link("reference", "conditions", "condition")),
                told.shown().measures().stream()
                        .flatMap(measure -> measure.comparisons().stream())
                        .flatMap(ComparisonTable::looks)
                        .toList());
    }

    private static Column<Looked> number(String name, String words, ToDoubleFunction<Looked> of) {
        return Column.<Looked>number(
                        name, "", words, each -> OptionalDouble.of(of.applyAsDouble(each)))
                .always();
    }

    private static Stream<Looked> looks(Comparison comparison) {
        return IntStream.range(0, comparison.looks().size())
                .mapToObj(at -> new Looked(comparison, at + 1, comparison.looks().get(at)));
    }

    /** The last record of this comparison with as many values. */
    private static String recorded(Told told, Looked row) {
        return told.state().captured().looks().stream()
                .map(Look::lines)
                .flatMap(List::stream)
                .filter(
                        line ->
                                line.measure().equals(row.comparison().measure())
                                        && line.condition().equals(row.comparison().condition())
                                        && line.n() == row.seen().n())
                .reduce((first, last) -> last)
                .map(Look.Line::verdict)
                .orElse("");
    }
}
