package rigside.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rigside.analysis.PlanTable;
import rigside.protocol.BenchTime;

/** A plan's table as lines of text, no wider than 80 columns but for the sentences. */
final class PlanText {
    private PlanText() {}

    static String of(PlanTable table) {
        List<String> lines = new ArrayList<>(table.terms());
        lines.add("");
        lines.add("after round  critical value  p at this look alone");
        for (PlanTable.Look look : table.looks()) {
            lines.add(
                    format("%11d  %14.3f  %20.5f", look.round(), look.critical(), look.nominalP()));
        }
        lines.add("");
        lines.add(
                "if the truth is  meaningful    none  open  rounds  9 of 10  bench      all hold");
        for (PlanTable.Outcome outcome : table.outcomes()) {
            lines.add(
                    format(
                            "%-15s %10s %7s %5s %7.1f %8d  %-10s %8s",
                            truth(outcome),
                            percent(outcome.meaningful()),
                            percent(outcome.noMeaningful()),
                            percent(outcome.unsettled()),
                            outcome.meanRounds(),
                            outcome.ninetiethRounds(),
                            outcome.benchSeconds().isPresent()
                                    ? BenchTime.words(outcome.benchSeconds().getAsDouble())
                                    : "-",
                            percent(outcome.coverage())));
        }
        lines.add(
                "(shares of simulated comparisons in percent: settled as a meaningful difference,");
        lines.add("as none, still open at the end; rounds on average and in 9 of 10; time at the");
        lines.add("bench; how often all intervals together hold the truth)");
        lines.add("");
        table.advice().forEach(sentence -> lines.add("- " + sentence));
        return String.join("\n", lines) + "\n";
    }

    private static String truth(PlanTable.Outcome outcome) {
        String value = format("%.4g", outcome.truth());
        double multiple = outcome.multiple();
        if (multiple == 0) {
            return value + " (none)";
        }
        return value + format(" (%s x)", format("%.1f", multiple));
    }

    private static String percent(double share) {
        return format("%.1f", 100 * share);
    }

    private static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
