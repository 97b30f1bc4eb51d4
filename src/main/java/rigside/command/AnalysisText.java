package rigside.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import rigside.analysis.Comparison;
import rigside.analysis.ConditionSummary;
import rigside.analysis.Digits;
import rigside.analysis.Flag;
import rigside.analysis.Happened;
import rigside.analysis.InDigits;
import rigside.analysis.MeasureResult;
import rigside.analysis.Shown;
import rigside.analysis.TableAnalysis;
import rigside.protocol.Condition;
import rigside.report.Legible;
import rigside.session.Event;
import rigside.session.State;

/** Analyses as sentences, with their numbers. */
final class AnalysisText {

    private AnalysisText() {}

    static String of(TableAnalysis analysis) {
        List<String> lines = new ArrayList<>();
        for (Comparison each : analysis.comparisons()) {
            lines.add("");
            comparison(each, lines);
        }
        analysis.flags().forEach(each -> flag(each, lines));
        looks(analysis.comparisons(), condition -> condition, lines);
        lines.add("- " + analysis.promise());
        return text(lines);
    }

    static String of(State state, Shown shown) {
        List<String> lines = new ArrayList<>();
        lines.add(state.protocol().title());
        state.opening()
                .filter(opening -> opening.event().simulated())
                .ifPresent(
                        opening ->
                                lines.add("Simulated: every value of this session is invented."));
        state.opening()
                .flatMap(opening -> opening.event().paper())
                .ifPresent(paper -> lines.add(paper(paper)));
        if (!shown.concealed().isEmpty()) {
            lines.add("Concealed: " + shown.concealed() + ".");
        }
        lines.add(shown.next() + ".");
        shown.results().forEach(each -> measure(state, each, lines));
        lines.addAll(Happened.of(state));
        lines.add("");
        lines.add("This is not a certified fit test.");
        return text(lines);
    }

    private static String paper(Event.Paper paper) {
        return "E" + paper.words().substring(1) + ": every time and reading was typed in later.";
    }

    private static void measure(State state, MeasureResult result, List<String> lines) {
        lines.add("");
        lines.add(
                (result.measure().title() + " " + bracketed(result.measure().unit().symbol()))
                        .strip());
        result.repeatability().ifPresent(each -> lines.addAll(each.sentences()));
        for (Comparison each : result.comparisons()) {
            comparison(each, lines);
            lines.add("");
        }
        result.conditions().forEach(each -> lines.add("  " + summary(state, each)));
        result.flags().forEach(each -> flag(each, lines));
        looks(result.comparisons(), condition -> title(state, condition), lines);
        if (!result.promise().isEmpty()) {
            lines.add("- " + result.promise());
        }
        result.remarks().forEach(each -> lines.add("- " + each));
    }

    private static String summary(State state, ConditionSummary each) {
        StringBuilder line =
                new StringBuilder(title(state, each.condition())).append(": n ").append(each.n());
        each.mean()
                .ifPresent(
                        mean ->
                                line.append(each.geometric() ? ", geometric mean " : ", mean ")
                                        .append(each.atLeast() ? "at least " : "")
                                        .append(
                                                each.atLeast()
                                                        ? Digits.threeAtLeast(mean)
                                                        : Digits.three(mean)));
        each.variation()
                .ifPresent(
                        share ->
                                line.append(", coefficient of variation ")
                                        .append(String.format(Locale.ROOT, "%.1f", 100 * share))
                                        .append(" %"));
        if (!each.values().isEmpty()) {
            line.append("; ")
                    .append(String.join(", ", each.values().stream().map(Digits::three).toList()));
        }
        return line.toString();
    }

    private static String title(State state, String condition) {
        return state.protocol().condition(condition).map(Condition::title).orElse(condition);
    }

    private static void comparison(Comparison each, List<String> lines) {
        lines.add(each.sentence());
        lines.add(each.next());
        lines.add(each.words().change());
        lines.add("  " + numbers(each));
        lines.add("  " + each.words().technical());
        each.remarks().forEach(remark -> lines.add("- " + remark));
    }

    /** A flag, and what would be said without what it names. */
    private static void flag(Flag flag, List<String> lines) {
        lines.add("- Worth a second look: " + flag.reason());
        for (Flag.WhatIf each : flag.whatIf()) {
            lines.add("  " + each.without() + ": " + each.then().sentence());
            lines.add("  " + each.then().next());
        }
    }

    private static void looks(
            List<Comparison> comparisons, UnaryOperator<String> title, List<String> lines) {
        for (Comparison each : comparisons) {
            for (Comparison.Seen look : each.looks()) {
                InDigits digits = InDigits.of(each, look);
                lines.add(
                        "  with "
                                + look.n()
                                + " of each ("
                                + title.apply(each.condition())
                                + "): estimate "
                                + digits.estimate()
                                + ", interval "
                                + digits.interval()
                                + ", critical value "
                                + Digits.three(look.critical())
                                + ": "
                                + each.words(look.verdict()));
            }
        }
    }

    private static String numbers(Comparison each) {
        InDigits digits = InDigits.of(each);
        StringBuilder line = new StringBuilder("n ").append(each.n());
        each.estimate().ifPresent(some -> line.append(", estimate ").append(digits.estimate()));
        each.interval().ifPresent(some -> line.append(", interval ").append(digits.interval()));
        each.critical().ifPresent(c -> line.append(", critical value ").append(Digits.three(c)));
        return line.append(", band ")
                .append(digits.band())
                .append(": ")
                .append(InDigits.verdict(each))
                .toString();
    }

    private static String bracketed(String unit) {
        return unit.isEmpty() ? "" : "(" + unit + ")";
    }

    private static String text(List<String> lines) {
        List<String> kept =
                lines.isEmpty() || !lines.get(0).isEmpty() ? lines : lines.subList(1, lines.size());
        return kept.stream().map(Legible::line).collect(Collectors.joining("\n", "", "\n"));
    }
}
