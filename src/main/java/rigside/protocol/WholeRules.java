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

    /** With one condition nothing is compared, so nothing may speak of it: said once. */
    static void oneConditionComparesNothing(
            Entry conditions, Value<List<Measure>> measures, Value<PlanReader.Planned> plan) {
        measures.orElse(List.of()).stream()
                .filter(measure -> measure.compared().isPresent())
                .map(measure -> "the measure '" + measure.id() + "' is compared")
                .findFirst()
                .or(
                        () ->
                                plan.toOptional()
                                        .flatMap(PlanReader.Planned::ofComparisons)
                                        .map(key -> "the plan says '" + key + "'"))
                .ifPresent(
                        why ->
                                conditions.wrong(
                                        "there is one condition, but " + why,
                                        "add the condition to compare it with; or, to see how far"
                                                + " the values of one spread, give its measures no"
                                                + " 'compare' and 'meaningful', and the plan only"
                                                + " 'most' rounds"));
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
