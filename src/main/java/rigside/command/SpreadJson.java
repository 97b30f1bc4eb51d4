package rigside.command;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import rigside.analysis.LaterPlan;
import rigside.analysis.Repeatability;
import rigside.analysis.Shown;
import rigside.decide.VarianceParts;

/** How far one repeated condition spreads, as JSON. */
final class SpreadJson {

    private SpreadJson() {}

    /** A key to follow others; empty where conditions are compared, or the result is concealed. */
    static String of(Shown shown) {
        List<Repeatability> all =
                shown.measures().stream().flatMap(each -> each.repeatability().stream()).toList();
        return all.isEmpty()
                ? ""
                : ",\"repeatability\":["
                        + all.stream().map(SpreadJson::of).collect(Collectors.joining(","))
                        + "]";
    }

    private static String of(Repeatability each) {
        return "{\"measure\":"
                + AnalysisJson.text(each.measure().id())
                + ",\"n\":"
                + each.n()
                + ",\"mean\":"
                + AnalysisJson.number(each.mean())
                + ",\"confidence\":"
                + number(each.confidence())
                + ",\"spread\":"
                + AnalysisJson.number(each.spread())
                + ",\"spread_limits\":"
                + each.limits().map(AnalysisJson::limits).orElse("null")
                + ",\"expected_spread\":["
                + each.expectedSpreads().stream()
                        .map(AnalysisJson::text)
                        .collect(Collectors.joining(","))
                + "]"
                + each.parts().map(parts -> parts(each, parts)).orElse("")
                + ",\"later\":["
                + each.later().stream().map(SpreadJson::later).collect(Collectors.joining(","))
                + "],\"sentences\":["
                + each.sentences().stream().map(AnalysisJson::text).collect(Collectors.joining(","))
                + "]}";
    }

    /** Standard deviations, on the scale of the spread. */
    private static String parts(Repeatability each, VarianceParts parts) {
        return ",\"trial_spread\":"
                + number(Math.sqrt(parts.trial()))
                + ",\"donning_spread\":"
                + number(Math.sqrt(parts.donning()))
                + ",\"trials_per_donning\":"
                + number(each.trialsPerDonning());
    }

    private static String later(LaterPlan plan) {
        return "{\"most_rounds\":"
                + plan.most()
                + ",\"settles\":"
                + number(LaterPlan.SETTLES)
                + ",\"meaningful\":"
                + number(plan.meaningful())
                + ",\"cautious\":"
                + number(plan.cautious())
                + "}";
    }

    private static String number(double number) {
        return AnalysisJson.number(OptionalDouble.of(number));
    }
}
