package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rigside.analysis.DonningValue;
import rigside.analysis.MeasureResult;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.protocol.Plan;

/**
 * The values a measure's comparisons rest on, as a table that the command {@code analyse} takes:
 * {@code round,condition,value}, the reference first.
 */
final class AgainTables {
    private AgainTables() {}

    /** A value that enters the comparisons. */
    record Used(int round, String condition, double value) {}

    /** One table for each measure that is compared, if its results are out. */
    static List<Resource<Used>> of(Told told) {
        return told.shown().measures().stream()
                .filter(each -> !each.comparisons().isEmpty())
                .map(each -> table(told, each))
                .toList();
    }

    static String name(Measure measure) {
        return "values-" + measure.id();
    }

    private static Resource<Used> table(Told told, MeasureResult result) {
        Measure measure = result.measure();
        return new Resource<>(
                name(measure),
                "Values compared: " + measure.title(),
                "The values of '"
                        + measure.title()
                        + "' that the comparisons rest on, one row for each"
                        + (isByTrial(told, measure)
                                ? " trial, numbered through for each condition."
                                : " complete round and condition.")
                        + " The command 'rigside analyse --values "
                        + name(measure)
                        + ".csv' reads it.",
                List.of(
                        Column.<Used>whole(
                                        "round",
                                        isByTrial(told, measure)
                                                ? "The number of the value."
                                                : "The round.",
                                        Used::round)
                                .always(),
                        Column.<Used>text("condition", "The condition worn.", Used::condition)
                                .always(),
                        Column.<Used>number(
                                        "value",
                                        measure.unit().symbol(),
                                        "The value.",
                                        each -> OptionalDouble.of(each.value()))
                                .always()),
                List.of("round", "condition"),
                List.of(Worn.CONDITION),
                told.state().protocol().conditions().stream()
                        .flatMap(condition -> used(told, result, condition))
                        .toList());
    }

    static boolean isByTrial(Told told, Measure measure) {
        return told.state().protocol().plan().design() == Plan.Design.INDEPENDENT_TRIALS
                && measure.kind() instanceof Measure.TimedInhalation;
    }

    private static Stream<Used> used(Told told, MeasureResult result, Condition condition) {
        List<Used> used = new ArrayList<>();
        for (int round : rounds(told, result)) {
            counting(result, round, condition.id())
                    .ifPresent(
                            value -> {
                                if (isByTrial(told, result.measure())) {
                                    value.parts().stream()
                                            .flatMap(part -> part.value().stream().boxed())
                                            .forEach(
                                                    each ->
                                                            used.add(
                                                                    new Used(
                                                                            used.size() + 1,
                                                                            condition.id(),
                                                                            each)));
                                } else {
                                    used.add(
                                            new Used(
                                                    round,
                                                    condition.id(),
                                                    value.value().orElseThrow()));
                                }
                            });
        }
        return used.stream();
    }

    /** The complete rounds: those in which every condition has a donning that is not replaced. */
    private static List<Integer> rounds(Told told, MeasureResult result) {
        List<String> conditions =
                told.state().protocol().conditions().stream().map(Condition::id).toList();
        return result.values().stream()
                .filter(AgainTables::isComplete)
                .map(DonningValue::round)
                .distinct()
                .sorted()
                .filter(
                        round ->
                                conditions.stream()
                                        .allMatch(
                                                each ->
                                                        result.values().stream()
                                                                .anyMatch(
                                                                        value ->
                                                                                isComplete(value)
                                                                                        && value
                                                                                                        .round()
                                                                                                == round
                                                                                        && value.condition()
                                                                                                .equals(
                                                                                                        each))))
                .toList();
    }

    private static boolean isComplete(DonningValue value) {
        return switch (value.standing()) {
            case COUNTS, WITHOUT_VALUE -> true;
            case OPEN, ABANDONED, STRUCK -> false;
        };
    }

    private static Optional<DonningValue> counting(
            MeasureResult result, int round, String condition) {
        return result.values().stream()
                .filter(
                        each ->
                                each.counts()
                                        && each.round() == round
                                        && each.condition().equals(condition))
                .findFirst();
    }
}
