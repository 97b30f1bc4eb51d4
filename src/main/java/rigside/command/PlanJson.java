package rigside.command;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import rigside.analysis.PlanTable;

/**
 * What a plan brings, as JSON. {@code true} is the true ratio, or the true difference in the
 * measure's unit.
 */
final class PlanJson {

    private PlanJson() {}

    /**
     * @param spreads what was taken from the archive, if that was asked for
     */
    static String of(PlanTable table, Optional<SpreadsTaken> spreads) {
        return "{\"looks\":["
                + table.looks().stream().map(PlanJson::look).collect(Collectors.joining(","))
                + "],\"outcomes\":["
                + table.outcomes().stream().map(PlanJson::outcome).collect(Collectors.joining(","))
                + "],\"advice\":["
                + table.advice().stream().map(AnalysisJson::text).collect(Collectors.joining(","))
                + "]"
                + spreads.map(each -> "," + SpreadsTakenText.json(each)).orElse("")
                + "}\n";
    }

    private static String look(PlanTable.Look look) {
        return "{\"round\":"
                + look.round()
                + ",\"critical\":"
                + number(look.critical())
                + ",\"nominal_p\":"
                + number(look.nominalP())
                + "}";
    }

    private static String outcome(PlanTable.Outcome outcome) {
        return "{\"true\":"
                + number(outcome.truth())
                + ",\"meaningful_difference\":"
                + number(outcome.meaningful())
                + ",\"no_meaningful_difference\":"
                + number(outcome.noMeaningful())
                + ",\"unsettled\":"
                + number(outcome.unsettled())
                + ",\"mean_rounds\":"
                + number(outcome.meanRounds())
                + ",\"p90_rounds\":"
                + outcome.ninetiethRounds()
                + ",\"coverage\":"
                + number(outcome.coverage())
                + "}";
    }

    private static String number(double number) {
        return AnalysisJson.number(OptionalDouble.of(number));
    }
}
