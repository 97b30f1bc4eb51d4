package rigside.command;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import rigside.analysis.Comparison;
import rigside.analysis.ConditionSummary;
import rigside.analysis.Flag;
import rigside.analysis.MeasureResult;
import rigside.analysis.Shown;
import rigside.analysis.TableAnalysis;
import rigside.decide.Limits;
import rigside.decide.Verdict;
import rigside.desk.Happened;
import rigside.measure.Numbers;
import rigside.protocol.Condition;
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
        if (!shown.concealed().isEmpty()) {
            lines.add("Concealed: " + shown.concealed() + ".");
        }
        lines.add(shown.next() + ".");
        if (shown.result()) {
            shown.measures().forEach(each -> measure(state, each, lines));
        }
        lines.addAll(Happened.of(state));
        lines.add("");
        lines.add("This is not a certified fit test.");
        return text(lines);
    }

    private static void measure(State state, MeasureResult result, List<String> lines) {
        lines.add("");
        lines.add(
                (result.measure().title() + " " + bracketed(result.measure().unit().symbol()))
                        .strip());
        result.comparisons().forEach(each -> comparison(each, lines));
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
                                        .append(rounded(mean)));
        each.variation()
                .ifPresent(
                        share ->
                                line.append(", coefficient of variation ")
                                        .append(String.format(Locale.ROOT, "%.1f", 100 * share))
                                        .append(" %"));
        if (!each.values().isEmpty()) {
            line.append("; ")
                    .append(
                            String.join(
                                    ", ",
                                    each.values().stream().map(AnalysisText::rounded).toList()));
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
                lines.add(
                        "  with "
                                + look.n()
                                + " of each ("
                                + title.apply(each.condition())
                                + "): estimate "
                                + rounded(look.estimate())
                                + ", interval "
                                + between(look.interval(), each.ratio())
                                + ", critical value "
                                + rounded(look.critical())
                                + ": "
                                + words(look.verdict()));
            }
        }
    }

    private static String numbers(Comparison each) {
        StringBuilder line = new StringBuilder("n ").append(each.n());
        each.estimate().ifPresent(estimate -> line.append(", estimate ").append(rounded(estimate)));
        each.interval()
                .ifPresent(
                        limits -> line.append(", interval ").append(between(limits, each.ratio())));
        each.critical().ifPresent(c -> line.append(", critical value ").append(rounded(c)));
        line.append(", band ")
                .append(between(each.band(), each.ratio()))
                .append(": ")
                .append(words(each.verdict()));
        return line.toString();
    }

    /** Two limits; one that is nowhere has no number. */
    private static String between(Limits limits, boolean ratio) {
        boolean low = Double.isFinite(limits.low()) && !(ratio && limits.low() == 0);
        boolean high = Double.isFinite(limits.high());
        if (!low && !high) {
            return "without ends";
        }
        return (low ? rounded(limits.low()) : "no lower end")
                + " to "
                + (high ? rounded(limits.high()) : "no upper end");
    }

    private static String words(Verdict verdict) {
        return switch (verdict) {
            case TOO_FEW_ROUNDS -> "too early to say";
            case MEANINGFUL_DIFFERENCE -> "a meaningful difference";
            case NO_MEANINGFUL_DIFFERENCE -> "no meaningful difference";
            case DIFFERENCE_SIZE_UNSETTLED -> "a difference of unsettled size";
            case NOT_SETTLED -> "not settled";
        };
    }

    /** Four digits: more would claim a precision that no bench has. */
    private static String rounded(double number) {
        return Double.isFinite(number)
                ? Numbers.plain(new BigDecimal(number).round(new MathContext(4)).doubleValue())
                : Numbers.plain(number);
    }

    private static String bracketed(String unit) {
        return unit.isEmpty() ? "" : "(" + unit + ")";
    }

    private static String text(List<String> lines) {
        List<String> kept =
                lines.isEmpty() || !lines.get(0).isEmpty() ? lines : lines.subList(1, lines.size());
        return String.join("\n", kept) + "\n";
    }
}
