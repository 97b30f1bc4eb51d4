package rigside.command;

import java.util.Optional;
import rigside.analysis.LaterPlan;
import rigside.archive.SpreadOnRecord;
import rigside.archive.SpreadOnRecordWords;
import rigside.protocol.Plan.Design;

/**
 * How far a measure spread as JSON. Spreads are standard deviations of one value, of natural
 * logarithms for ratios.
 */
final class SpreadOnRecordJson {
    private SpreadOnRecordJson() {}

    static String of(SpreadOnRecord spread, Optional<String> leftOut) {
        Optional<SpreadOnRecord.Found> planned = spread.planned(Design.ROUNDS);
        return new JsonText()
                        .text("measure", spread.measure().id())
                        .text("unit", spread.measure().unit())
                        .text("compare", spread.scale().ratio() ? "ratio" : "difference")
                        .object("by_rounds", spread.differences().map(SpreadOnRecordJson::found))
                        .object("by_donnings", spread.donnings().map(SpreadOnRecordJson::found))
                        .text(
                                "expected_spread",
                                planned.map(each -> spread.scale().spread(each.spread())))
                        .text(
                                "expected_spread_cautious",
                                planned.map(each -> spread.scale().spread(each.upper())))
                        .objects(
                                "later",
                                spread.later().stream().map(SpreadOnRecordJson::later).toList())
                        .texts("remarks", spread.remarks())
                        .text("left_out", leftOut)
                        .texts("sentences", SpreadOnRecordWords.of(spread))
                + "\n";
    }

    static JsonText found(SpreadOnRecord.Found found) {
        return new JsonText()
                .number("spread", found.spread())
                .limits("limits", found.limits().low(), found.limits().high())
                .number("upper_80", found.upper())
                .number("degrees_of_freedom", found.freedom())
                .whole("sessions", found.sessions())
                .whole("values", found.values())
                .number("spreads_unlike_p", found.unlike());
    }

    private static JsonText later(LaterPlan plan) {
        return new JsonText()
                .whole("most_rounds", plan.most())
                .number("settles", LaterPlan.SETTLES)
                .number("meaningful", plan.meaningful())
                .number("cautious", plan.cautious());
    }
}
