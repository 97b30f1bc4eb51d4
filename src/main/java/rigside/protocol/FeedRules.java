package rigside.protocol;

import java.util.List;
import rigside.yaml.Value;

/** Rules between measures and the steps that feed them. */
final class FeedRules {
    private FeedRules() {}

    /** Every measure is fed in a donning, by one step; a compared one for every condition. */
    static void everyMeasureIsFed(Known known, List<Measure> measures, List<Condition> conditions) {
        for (Measure measure : measures) {
            Value<String> id = known.measureIds.get(measure.id());
            List<Known.Feed> feeds =
                    known.feeds.stream()
                            .filter(feed -> feed.measure().get().equals(measure.id()))
                            .toList();
            // Of a number that is typed it was said when its field was looked up.
            boolean isTyped =
                    measure.kind() instanceof Measure.TypedNumber
                            || measure.kind() instanceof Measure.Calculated;
            if (feeds.isEmpty() && !isTyped) {
                id.wrong(
                        "no step of the donning feeds the measure '" + measure.id() + "'",
                        "name it in 'feeds' of a step 'exercises' or 'trials', or delete it");
            }
            if (!feeds.isEmpty() && measure.compared().isPresent()) {
                fedForAll(id, feeds, conditions);
            }
            fedOnce(measure, feeds, conditions);
        }
    }

    private static void fedForAll(
            Value<String> id, List<Known.Feed> feeds, List<Condition> conditions) {
        conditions.stream()
                .map(Condition::id)
                .filter(condition -> feeds.stream().noneMatch(feed -> feed.applies().to(condition)))
                .findFirst()
                .ifPresent(
                        condition ->
                                id.wrong(
                                        "no step feeds the measure '"
                                                + id.get()
                                                + "' for the condition '"
                                                + condition
                                                + "'",
                                        "add the condition to 'only-for' of the step, or delete"
                                                + " that line"));
    }

    private static void fedOnce(
            Measure measure, List<Known.Feed> feeds, List<Condition> conditions) {
        conditions.stream()
                .map(
                        condition ->
                                feeds.stream()
                                        .filter(feed -> feed.applies().to(condition.id()))
                                        .toList())
                .filter(here -> here.size() > 1)
                .findFirst()
                .ifPresent(
                        here ->
                                here.get(1)
                                        .measure()
                                        .wrong(
                                                "a second step feeds the measure '"
                                                        + measure.id()
                                                        + "'",
                                                here.get(0).measure() == here.get(1).measure()
                                                        ? "let each condition meet this step's"
                                                                + " group once, or put the step"
                                                                + " outside the group"
                                                        : "give this step a measure of its own, or"
                                                                + " join the two steps"));
    }
}
