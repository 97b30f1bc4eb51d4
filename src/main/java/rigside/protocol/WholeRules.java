package rigside.protocol;

import java.util.List;
import java.util.Optional;
import rigside.measure.Unit;
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
    static void replicatesFit(Entry plan, Design design, List<Measure> measures) {
        if (design != Design.INDEPENDENT_TRIALS) {
            return;
        }
        measures.stream()
                .filter(WholeRules::decides)
                .filter(measure -> !(measure.kind() instanceof Measure.TimedInhalation))
                .findFirst()
                .ifPresent(
                        measure ->
                                plan.wrong(
                                        "'replicates: trials' does not fit the deciding measure '"
                                                + measure.id()
                                                + "', which has no trials",
                                        "write 'replicates: donnings', or 'decides: no' in that"
                                                + " measure"));
    }

    /** Every typed number has one numeric form field that is always filled in. */
    static void typedNumbersAreAsked(Known known) {
        for (Known.Typed typed : known.typed) {
            typed.field().toOptional().ifPresent(id -> isAsked(typed, id, known));
        }
    }

    private static void isAsked(Known.Typed typed, String id, Known known) {
        Known.Asked asked = known.forms.get(id);
        Value<String> field = typed.field();
        if (asked == null) {
            field.wrong(
                    "no form of the donning has a field with the id '" + id + "'",
                    rigside.yaml.Words.nearest(id, known.forms.keySet())
                            .map(near -> "did you mean '" + near + "'?")
                            .orElse("add it to a step 'form' under 'donning'"));
            return;
        }
        Optional<Unit> unit =
                asked.field().answer() instanceof Field.Numeric number
                        ? Optional.of(number.unit())
                        : Optional.empty();
        boolean fits =
                typed.unit().isPresent()
                        && unit.filter(u -> u.dimension() == typed.unit().get().dimension())
                                .isPresent();
        if (!fits && typed.unit().isPresent()) {
            field.wrong(
                    "the field '"
                            + id
                            + "' does not take "
                            + typed.unit().get().dimension().words(),
                    "give the field and the measure units of one kind");
        } else if (asked.field().optional()) {
            field.wrong(
                    "the field '" + id + "' may be empty, but the measure needs it",
                    "delete 'may-be-empty' there");
        } else {
            known.feeds.add(new Known.Feed(typed.measure(), asked.onlyFor()));
        }
    }

    /** Every measure is fed in a donning, by one step; a compared one for every condition. */
    static void everyMeasureIsFed(Known known, List<Measure> measures, List<Condition> conditions) {
        for (Measure measure : measures) {
            Value<String> id = known.measureIds.get(measure.id());
            List<Known.Feed> feeds =
                    known.feeds.stream()
                            .filter(feed -> feed.measure().get().equals(measure.id()))
                            .toList();
            if (feeds.isEmpty()) {
                id.wrong(
                        "no step of the donning feeds the measure '" + measure.id() + "'",
                        "name it in 'feeds' of a step 'exercises' or 'trials', or delete it");
                continue;
            }
            for (Condition condition : conditions) {
                List<Known.Feed> here =
                        feeds.stream().filter(feed -> feed.appliesTo(condition.id())).toList();
                if (here.isEmpty() && measure.compared().isPresent()) {
                    id.wrong(
                            "no step feeds the measure '"
                                    + measure.id()
                                    + "' for the condition '"
                                    + condition.id()
                                    + "'",
                            "add the condition to 'only-for' of the step, or delete that line");
                    break;
                }
                if (here.size() > 1) {
                    here.get(1)
                            .measure()
                            .wrong(
                                    "a second step feeds the measure '" + measure.id() + "'",
                                    "give this step a measure of its own, or join the two steps");
                    break;
                }
            }
        }
    }

    private static boolean decides(Measure measure) {
        return measure.compared().map(Measure.Compared::decides).orElse(false);
    }
}
