package rigside.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rigside.analysis.PlanTable;
import rigside.protocol.BenchTime;

/** A plan's table as lines of text, no wider than 80 columns but for the sentences. */
final class PlanText {
    private static final String HEAD = "%-15s %7s %9s %7s %7s %8s  %-10s %9s";

    private PlanText() {}

    /**
     * @param spreads what was taken from the archive, if that was asked for
     */
    static String of(PlanTable table, Optional<SpreadsTaken> spreads) {
        List<String> lines = new ArrayList<>();
        spreads.ifPresent(
                each -> {
                    lines.addAll(SpreadsTakenText.lines(each));
                    lines.add("");
                });
        lines.addAll(table.terms());
        lines.add("");
        lines.add("after round  critical value  p at this look alone");
        for (PlanTable.Look look : table.looks()) {
            lines.add(
                    format("%11d  %14.3f  %20.5f", look.round(), look.critical(), look.nominalP()));
        }
        lines.add("");
        lines.add(format(HEAD, "", "", "", "", "", "9 of 10", "", "all"));
        lines.add(
                format(HEAD, "", "", "does not", "", "rounds", "need at", "time at", "intervals"));
        lines.add(
                format(
                        HEAD,
                        "if the truth is",
                        "matters",
                        "matter",
                        "open",
                        "mean",
                        "most",
                        "the bench",
                        "hold it"));
        for (PlanTable.Outcome outcome : table.outcomes()) {
            lines.add(
                    format(
                            "%-15s %7s %9s %7s %7.1f %8d  %-10s %9s",
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
        lines.add("(shares of simulated comparisons: settled that the difference matters, settled");
        lines.add("that it does not, still open at the end)");
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

    /** Of simulated comparisons, of which none or all is not never or always. */
    private static String percent(double share) {
        if (share < 0.0005) {
            return "<0.1 %";
        }
        return share >= 0.9995 ? ">99.9 %" : format("%.1f %%", 100 * share);
    }

    private static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
