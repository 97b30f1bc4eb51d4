package rigside.command;

import java.util.OptionalDouble;
import java.util.stream.Collectors;
import rigside.analysis.PlanTable;
import rigside.protocol.Measure.Compared.Scale;
import rigside.runner.Rehearsals;
import rigside.runner.Truth;

/**
 * What many rehearsals came to, as JSON. {@code true} is the true ratio, or the true difference in
 * the measure's unit; {@code expected} is null where values do not spread.
 */
final class RehearsedJson {
    private RehearsedJson() {}

    static String of(Rehearsals all, long firstSeed) {
        return "{\"sessions\":"
                + all.sessions()
                + ",\"first_seed\":"
                + firstSeed
                + ",\"mean_rounds\":"
                + number(all.meanRounds())
                + ",\"mean_seconds\":"
                + number(all.meanSeconds())
                + ",\"faults_missed\":"
                + all.missed()
                + ",\"comparisons\":["
                + all.comparisons().stream()
                        .map(each -> comparison(each, all.sessions()))
                        .collect(Collectors.joining(","))
                + "]}\n";
    }

    private static String comparison(Rehearsals.Comparison each, int sessions) {
        Truth truth = each.truth();
        boolean ratio = truth.measure().scale() == Scale.RATIO;
        return "{\"measure\":"
                + AnalysisJson.text(truth.measure().id())
                + ",\"condition\":"
                + AnalysisJson.text(truth.condition())
                + ",\"true\":"
                + number(ratio ? Math.exp(truth.change()) : truth.change())
                + ",\"meaningful_difference\":"
                + each.meaningful()
                + ",\"no_meaningful_difference\":"
                + each.noMeaningful()
                + ",\"unsettled\":"
                + (sessions - each.meaningful() - each.noMeaningful())
                + ",\"mean_rounds\":"
                + number(each.meanRounds())
                + ",\"mean_rounds_error\":"
                + number(each.roundsError())
                + ",\"expected\":"
                + each.expected().map(RehearsedJson::expected).orElse("null")
                + "}";
    }

    private static String expected(PlanTable.Outcome outcome) {
        return "{\"meaningful_difference\":"
                + number(outcome.meaningful())
                + ",\"no_meaningful_difference\":"
                + number(outcome.noMeaningful())
                + ",\"unsettled\":"
                + number(outcome.unsettled())
                + ",\"mean_rounds\":"
                + number(outcome.meanRounds())
                + "}";
    }

    private static String number(double number) {
        return AnalysisJson.number(OptionalDouble.of(number));
    }
}
