package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import rigside.protocol.BenchTime;
import rigside.protocol.Plan;

/** What was asked of a plan, in words. */
final class PlanSentences {

    private PlanSentences() {}

    static List<String> terms(PlanTerms terms) {
        List<String> lines = new ArrayList<>();
        Setting setting = terms.setting();
        Plan plan = setting.plan();
        lines.add(
                Phrases.sentence(setting.measure().title())
                        + ", compared as a "
                        + (setting.scale().isRatio() ? "ratio" : "difference")
                        + ": "
                        + matters(setting.compared().meaningful())
                        + ", "
                        + direction(setting));
        lines.add(
                plan.fewest()
                        + " to "
                        + counted(setting, plan.most())
                        + ", "
                        + Phrases.confidence(plan.confidence())
                        + " confidence over all looks together, "
                        + (setting.isPaired()
                                ? "differences within rounds"
                                : "independent values"));
        if (setting.sharing() > 1) {
            lines.add(
                    "one of "
                            + setting.sharing()
                            + " comparisons that share the error equally: "
                            + Phrases.confidence(1 - setting.alpha())
                            + " for each");
        }
        lines.add(spread(terms));
        terms.roundSeconds()
                .ifPresent(seconds -> lines.add("a round takes about " + BenchTime.words(seconds)));
        return lines;
    }

    /** "3 rounds", "1 value per condition". */
    static String counted(Setting setting, int count) {
        return count + " " + units(setting, count);
    }

    static String units(Setting setting, int count) {
        if (setting.isPaired()) {
            return count == 1 ? "round" : "rounds";
        }
        return count == 1 ? "value per condition" : "values per condition";
    }

    /** Two limits say what does not matter, a size what does. */
    private static String matters(String meaningful) {
        return meaningful.contains(" to ")
                ? "what is beyond " + meaningful + " matters"
                : meaningful + " matters";
    }

    private static String direction(Setting setting) {
        return switch (setting.compared().matters()) {
            case EITHER -> "either way";
            case INCREASE -> "only as an increase";
            case DECREASE -> "only as a decrease";
        };
    }

    private static String spread(PlanTerms terms) {
        String unit = terms.setting().measure().unit().symbol();
        boolean ratio = terms.setting().scale().isRatio();
        String one = Digits.three(terms.spread()) + (ratio || unit.isEmpty() ? "" : " " + unit);
        String round =
                Digits.three(terms.roundSpread()) + (ratio || unit.isEmpty() ? "" : " " + unit);
        String of = ratio ? " log " : " ";
        return terms.setting().isPaired()
                ? "spread (standard deviation) of one round's"
                        + (ratio ? " log ratio " : " difference ")
                        + round
                        + ", which is "
                        + one
                        + " for one donning's"
                        + of
                        + "value"
                : "spread (standard deviation) of one" + of + "value " + one;
    }
}
