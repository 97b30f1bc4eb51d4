package rigside.report;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import rigside.analysis.ConditionSummary;
import rigside.analysis.Digits;
import rigside.analysis.DonningValue;
import rigside.analysis.MeasureResult;
import rigside.analysis.Standing;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.protocol.Measure.Compared.Scale;
import rigside.protocol.Protocol;

/**
 * One measure of a session, as its plots need it.
 *
 * @param protocol the session's
 * @param result what may be shown of the measure
 */
record Plotting(Protocol protocol, MeasureResult result) {

    Measure measure() {
        return result.measure();
    }

    /** Whether numbers are drawn by their logarithm, where that can be taken of all. */
    boolean isRatio() {
        return measure().scale() == Scale.RATIO;
    }

    boolean isLog(double[] numbers) {
        return isRatio() && Arrays.stream(numbers).allMatch(number -> number > 0);
    }

    List<String> conditions() {
        return protocol.conditions().stream().map(Condition::id).toList();
    }

    boolean isReference(String condition) {
        return protocol.reference().id().equals(condition);
    }

    String title(String condition) {
        return protocol.condition(condition).map(Condition::title).orElse(condition);
    }

    /** The sign of a condition wherever it stands beside the reference. */
    Mark.Shape shape(String condition) {
        return isReference(condition) ? Mark.Shape.RING : Mark.Shape.SQUARE;
    }

    /** The reference with each of the others; the only condition by itself. */
    List<List<String>> pairs() {
        List<String> all = conditions();
        return all.size() < 2
                ? List.of(all)
                : all.stream().skip(1).map(other -> List.of(all.get(0), other)).toList();
    }

    /** The level that fit factors have to reach, if the protocol names one. */
    OptionalDouble required() {
        return measure().kind() instanceof Measure.FitFactor fit && fit.required().isPresent()
                ? OptionalDouble.of(fit.required().get().value())
                : OptionalDouble.empty();
    }

    /** Finished donnings of a condition, whether they count or not. */
    List<DonningValue> finished(String condition) {
        return result.values().stream()
                .filter(each -> each.condition().equals(condition))
                .filter(each -> each.standing() != Standing.OPEN)
                .toList();
    }

    Optional<ConditionSummary> summary(String condition) {
        return result.conditions().stream()
                .filter(each -> each.condition().equals(condition))
                .findFirst();
    }

    /** How many rounds were begun, of which something finished. */
    int rounds() {
        return result.values().stream()
                .filter(each -> each.standing() != Standing.OPEN)
                .mapToInt(DonningValue::round)
                .max()
                .orElse(0);
    }

    /** All numbers that an axis of values has to hold. */
    double[] numbers() {
        return DoubleStream.concat(
                        result.values().stream()
                                .filter(each -> each.standing() != Standing.OPEN)
                                .flatMapToDouble(each -> each.value().stream()),
                        required().stream())
                .toArray();
    }

    /** What an axis shows: "Inhalation time (s), logarithmic scale". */
    String heading(boolean log) {
        String unit = measure().unit().symbol();
        return measure().title()
                + (unit.isEmpty() ? "" : " (" + unit + ")")
                + (log ? ", logarithmic scale" : "");
    }

    /** "geometric mean 326 of 6 donnings"; empty without a mean. */
    String mean(String condition) {
        return summary(condition)
                .filter(each -> each.mean().isPresent())
                .map(
                        each ->
                                (each.geometric() ? "geometric mean " : "mean ")
                                        + number(each.mean().getAsDouble(), each.atLeast())
                                        + " of "
                                        + each.n()
                                        + (each.n() == 1 ? " donning" : " donnings"))
                .orElse("");
    }

    /** A number with its unit, as people read it. */
    String number(double value, boolean atLeast) {
        String unit = measure().unit().symbol();
        return (atLeast ? "at least " + Digits.threeAtLeast(value) : Digits.three(value))
                + (unit.isEmpty() ? "" : " " + unit);
    }
}
