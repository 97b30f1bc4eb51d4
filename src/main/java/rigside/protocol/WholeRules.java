package rigside.protocol;

import java.util.List;
import rigside.protocol.Plan.Design;
import rigside.yaml.Entry;
import rigside.yaml.Value;

/** Rules that hold between parts of a file, checked when the parts concerned could be read. */
final class WholeRules {
    private WholeRules() {}

    /** At least one measure decides when a session has settled. */
    static void somethingDecides(Entry entry, List<Measure> measures) {
        if (measures.stream().noneMatch(WholeRules::decides)) {
            entry.wrong(
                    "no measure decides when the session has settled",
                    "give one 'compare' and 'meaningful', without 'decides: no'");
        }
    }

    /** Only a trial can be a replicate of its own, and only of its own measure. */
    static void replicatesFit(PlanReader.Planned planned, List<Measure> measures) {
        if (planned.plan().design() != Design.INDEPENDENT_TRIALS) {
            return;
        }
        measures.stream()
                .filter(WholeRules::decides)
                .filter(measure -> !(measure.kind() instanceof Measure.TimedInhalation))
                .findFirst()
                .ifPresent(
                        measure ->
                                planned.replicates()
                                        .wrong(
                                                "trials cannot be replicates: the measure '"
                                                        + measure.id()
                                                        + "' decides too and has no trials",
                                                "write 'donnings' here, or 'decides: no' in that"
                                                        + " measure"));
    }

    /** A donning cannot take less than the waits and exercises in it. */
    static void donningTakesLongEnough(Value<Double> stated, Protocol protocol) {
        double fixed =
                protocol.conditions().stream()
                        .mapToDouble(condition -> BenchTime.fixed(protocol, condition.id()))
                        .max()
                        .orElse(0);
        stated.must(
                seconds -> seconds >= fixed,
                seconds ->
                        "'donning-takes' is "
                                + QuantityText.plain(seconds)
                                + " s, but its waits and exercises alone take "
                                + QuantityText.plain(fixed)
                                + " s",
                "write the time from the first step to the last, without the trials");
    }

    /** Where each trial counts, one donning must not bring more values than the plan allows. */
    static void mostHoldsADonning(Value<Integer> most, Protocol protocol) {
        if (protocol.plan().design() != Design.INDEPENDENT_TRIALS) {
            return;
        }
        int trials =
                protocol.measures().stream()
                        .filter(WholeRules::decides)
                        .mapToInt(measure -> protocol.trials(measure.id()))
                        .max()
                        .orElse(0);
        most.must(
                number -> number >= trials,
                number ->
                        "'most' is "
                                + number
                                + " values per condition, but a donning already gives "
                                + trials,
                "write " + trials + " or more, or ask for fewer trials");
    }

    private static boolean decides(Measure measure) {
        return measure.compared().map(Measure.Compared::decides).orElse(false);
    }
}
