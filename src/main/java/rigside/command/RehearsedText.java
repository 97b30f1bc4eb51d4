package rigside.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import rigside.analysis.Digits;
import rigside.analysis.PlanTable;
import rigside.analysis.VerdictWords;
import rigside.decide.Verdict;
import rigside.protocol.BenchTime;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.protocol.Measure.Compared;
import rigside.protocol.Protocol;
import rigside.rig.Wearer;
import rigside.runner.Faults;
import rigside.runner.Rehearsals;
import rigside.runner.Truth;

/** What was rehearsed, and what many rehearsals came to, in words. */
final class RehearsedText {
    private static final String ROW = "  %-34s %10s %12s";

    private RehearsedText() {}

    /** What is true of the invented wearer. */
    static List<String> truths(Protocol protocol, Wearer wearer) {
        List<String> lines = new ArrayList<>();
        lines.add("Every value is invented. Who answers: " + wearer.title() + ".");
        Truth.of(protocol, wearer).forEach(truth -> lines.add("- " + truth(protocol, truth)));
        if (protocol.purpose() == Protocol.Purpose.REPEATABILITY) {
            protocol.measures().forEach(each -> spread(protocol, wearer, each, lines));
        }
        if (lines.size() > 1) {
            lines.set(0, lines.get(0) + " In truth,");
        }
        return lines;
    }

    private static void spread(
            Protocol protocol, Wearer wearer, Measure measure, List<String> lines) {
        boolean ratio = measure.scale() == Compared.Scale.RATIO;
        String unit = ratio ? "" : " " + measure.unit().symbol();
        Truth.spread(protocol, wearer, measure, protocol.reference().id())
                .ifPresent(
                        size ->
                                lines.add(
                                        "- "
                                                + measure.title()
                                                + ": values spread by "
                                                + spread(size, ratio)
                                                + unit));
    }

    private static String truth(Protocol protocol, Truth truth) {
        boolean ratio = isRatio(truth);
        String symbol = truth.measure().unit().symbol();
        String unit = ratio || symbol.isEmpty() ? "" : " " + symbol;
        return truth.measure().title()
                + ": "
                + title(protocol, truth.condition())
                + (truth.change() == 0
                        ? " does not differ"
                        : ratio
                                ? " has " + Digits.three(Math.exp(truth.change())) + " times"
                                : " has " + Digits.three(truth.change()) + unit + " more than")
                + (truth.change() == 0 ? " from " : ratio ? " that of " : " ")
                + protocol.reference().title()
                + "; values spread by "
                + spread(truth.reference(), ratio)
                + (spread(truth.reference(), ratio).equals(spread(truth.spread(), ratio))
                        ? ""
                        : " and " + spread(truth.spread(), ratio))
                + unit;
    }

    private static boolean isRatio(Truth truth) {
        return truth.measure().scale() == Compared.Scale.RATIO;
    }

    /** A ratio's as a percentage, or a factor where it is large. */
    private static String spread(double size, boolean ratio) {
        if (!ratio) {
            return Digits.three(size);
        }
        return size < Math.log(2)
                ? Digits.three(100 * Math.expm1(size)) + " %"
                : Digits.three(Math.exp(size)) + " times";
    }

    private static String title(Protocol protocol, String id) {
        return protocol.condition(id).map(Condition::title).orElse(id);
    }

    /** Which faults were asked for; nothing without any. */
    static List<String> faults(Faults faults) {
        return faults.asked().isEmpty()
                ? List.of()
                : List.of(
                        "Faults asked for: "
                                + String.join(
                                        ", ",
                                        faults.asked().stream()
                                                .map(
                                                        each ->
                                                                each.fault().word()
                                                                        + " in donning "
                                                                        + each.donning())
                                                .toList()));
    }

    /** What many sessions came to. */
    static List<String> many(Protocol protocol, Rehearsals all, long firstSeed) {
        List<String> lines = new ArrayList<>();
        for (Rehearsals.Comparison each : all.comparisons()) {
            lines.add("");
            lines.add(
                    each.truth().measure().title()
                            + ", "
                            + title(protocol, each.truth().condition())
                            + " against "
                            + protocol.reference().title());
            lines.add(format(ROW, "", "rehearsed", "to expect"));
            lines.addAll(rows(each, all.sessions()));
        }
        lines.add("");
        lines.add(
                all.sessions()
                        + (all.sessions() == 1 ? " session" : " sessions")
                        + ", seeds "
                        + firstSeed
                        + " to "
                        + (firstSeed + all.sessions() - 1)
                        + ": "
                        + format("%.1f", all.meanRounds())
                        + " rounds and "
                        + BenchTime.words(all.meanSeconds())
                        + " each on average, from the opening to the close.");
        if (!all.comparisons().isEmpty()) {
            lines.add(
                    "To expect: by the plan, as 'rigside plan' reckons it; +- one standard error.");
        }
        return lines;
    }

    private static List<String> rows(Rehearsals.Comparison each, int sessions) {
        Compared.Matters matters = each.truth().measure().compared().orElseThrow().matters();
        OptionalDouble expected = rounds(each);
        return List.of(
                row(
                        VerdictWords.of(Verdict.MEANINGFUL_DIFFERENCE, matters),
                        each.meaningful(),
                        sessions,
                        share(each, PlanTable.Outcome::meaningful)),
                row(
                        VerdictWords.of(Verdict.NO_MEANINGFUL_DIFFERENCE, matters),
                        each.noMeaningful(),
                        sessions,
                        share(each, PlanTable.Outcome::noMeaningful)),
                row(
                        VerdictWords.of(Verdict.NOT_SETTLED, matters),
                        sessions - each.meaningful() - each.noMeaningful(),
                        sessions,
                        share(each, PlanTable.Outcome::unsettled)),
                format(
                        ROW,
                        "rounds",
                        format("%.2f", each.meanRounds())
                                + (sessions > 1 ? format("+-%.2f", each.roundsError()) : ""),
                        expected.isPresent() ? format("%.2f", expected.getAsDouble()) : "-"));
    }

    private interface Share {
        double of(PlanTable.Outcome outcome);
    }

    private static OptionalDouble share(Rehearsals.Comparison each, Share share) {
        return each.expected().stream().mapToDouble(share::of).findFirst();
    }

    private static OptionalDouble rounds(Rehearsals.Comparison each) {
        return each.expected().stream().mapToDouble(PlanTable.Outcome::meanRounds).findFirst();
    }

    private static String row(String words, int count, int sessions, OptionalDouble expected) {
        return format(
                ROW,
                words,
                format("%.1f %%", 100.0 * count / sessions),
                expected.isPresent() ? format("%.1f %%", 100 * expected.getAsDouble()) : "-");
    }

    private static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
