package rigside.analysis;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One measure in one condition.
 *
 * @param condition the condition's id
 * @param values the values of the donnings that count, in the order they were worn, on the scale
 *     people read
 * @param geometric whether mean and spread are geometric: for ratios
 * @param mean arithmetic or geometric mean; empty without a value
 * @param atLeast whether the counter only bounded one of the values, so that the mean is a lower
 *     bound as well
 * @param spread standard deviation, or geometric standard deviation factor (1 or more); empty below
 *     two values
 * @param variation coefficient of variation as a share of the mean, from the logarithms when
 *     geometric: sqrt(exp(s^2) - 1); empty below two values
 * @param reached how many donnings reach the required level
 * @param missed how many donnings miss it
 * @param failedChecks checklist items that were not so, each "donning 3: no air at the eyes"
 * @param abandoned donnings broken off, each "donning 4: strap slipped"
 * @param struck donnings struck out as a whole, each with its reason
 */
public record ConditionSummary(
        String condition,
        List<Double> values,
        boolean geometric,
        OptionalDouble mean,
        boolean atLeast,
        OptionalDouble spread,
        OptionalDouble variation,
        int reached,
        int missed,
        List<String> failedChecks,
        List<String> abandoned,
        List<String> struck) {
    public ConditionSummary {
        values = List.copyOf(values);
        failedChecks = List.copyOf(failedChecks);
        abandoned = List.copyOf(abandoned);
        struck = List.copyOf(struck);
    }

    /** How many values count. */
    public int n() {
        return values.size();
    }
}
