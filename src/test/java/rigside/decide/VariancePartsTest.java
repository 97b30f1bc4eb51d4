package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class VariancePartsTest {

    record Case(String name, List<List<double[]>> conditions, JsonNode expected) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Case> everyNestedSet() {
        List<Case> cases = new ArrayList<>();
        JsonNode sets = Reference.read("nested.json").get("nested");
        sets.fieldNames()
                .forEachRemaining(
                        name -> {
                            JsonNode set = sets.get(name);
                            for (String scale : List.of("raw", "log")) {
                                if (set.has(scale)) {
                                    cases.add(
                                            new Case(
                                                    name + ", " + scale,
                                                    trials(set.get("data"), scale.equals("log")),
                                                    set.get(scale)));
                                }
                            }
                        });
        JsonNode one = Reference.read("nested.json").at("/one_condition/six_donnings_three_trials");
        JsonNode donnings = one.get("data");
        cases.add(
                new Case(
                        "one condition",
                        List.of(Reference.list(donnings).stream().map(Reference::doubles).toList()),
                        one.get("raw")));
        return cases.stream();
    }

    private static List<List<double[]>> trials(JsonNode data, boolean log) {
        List<List<double[]>> conditions = new ArrayList<>();
        data.forEach(
                condition ->
                        conditions.add(
                                Reference.list(condition).stream()
                                        .map(Reference::doubles)
                                        .map(d -> log ? logs(d) : d)
                                        .toList()));
        return conditions;
    }

    private static double[] logs(double[] values) {
        return Arrays.stream(values).map(Math::log).toArray();
    }

    /** R 4.2.2, 12 digits; the sums lose at most three of double's sixteen. */
    @ParameterizedTest
    @MethodSource("everyNestedSet")
    void momentEstimatesAreThoseOfTheReference(Case set) {
        VarianceParts parts = VarianceParts.of(set.conditions());
        JsonNode anova = set.expected().get("anova");
        JsonNode moment = set.expected().get("moment");
        double size = moment.get("trial").doubleValue();
        assertClose(anova.at("/donning_within_condition/df"), parts.donningDf(), 0);
        assertClose(anova.at("/donning_within_condition/ms"), parts.donningMeanSquare(), 1e-11);
        assertClose(anova.at("/trial_within_donning/df"), parts.trialDf(), 0);
        assertClose(anova.at("/trial_within_donning/ms"), parts.trial(), 1e-11);
        assertClose(set.expected().get("n0"), parts.trialsPerDonning(), 1e-11);
        assertClose(moment.get("trial"), parts.trial(), 1e-11);
        assertEquals(moment.get("donning").doubleValue(), parts.donning(), 1e-11 * (1 + size));
        assertEquals(
                moment.get("donning_untruncated").doubleValue(),
                parts.donningUntruncated(),
                1e-11 * (1 + size));
        assertEquals(moment.get("icc").doubleValue(), parts.donningShare(), 1e-10);
        for (JsonNode best : set.expected().get("best_trials_per_donning")) {
            assertEquals(
                    best.get("best_integer_1_to_50").intValue(),
                    parts.bestTrials(
                            best.get("cost_donning_over_cost_trial").doubleValue(), 1, 50));
        }
    }

    /**
     * SciPy 1.17.1 chi2.ppf on the mean squares of the reference, see nested_limits.py; 11 digits,
     * of which the difference of mean squares and small degrees of freedom cost some.
     */
    @ParameterizedTest
    @MethodSource("everyNestedSet")
    void limitsAreThoseOfChiSquareAndSatterthwaite(Case set) {
        VarianceParts parts = VarianceParts.of(set.conditions());
        List<String[]> rows =
                Reference.csv("nested_limits.csv").stream()
                        .filter(row -> row[0].equals(set.name().replace(", ", " ")))
                        .toList();
        assertEquals(2, rows.size());
        for (String[] row : rows) {
            double confidence = Double.parseDouble(row[1]);
            assertLimits(row[2], row[3], parts.trialLimits(confidence));
            assertLimits(row[4], row[5], parts.donningLimits(confidence));
        }
    }

    private static void assertLimits(String low, String high, Limits limits) {
        assertEquals(Double.parseDouble(low), limits.low(), 1e-9 * Double.parseDouble(low));
        assertEquals(Double.parseDouble(high), limits.high(), 1e-9 * Double.parseDouble(high));
    }

    /** Satterthwaite's formula by hand: MS 12 on 3, 2 on 4; (12-2)^2 / (144/3 + 4/4) = 100/49. */
    @Test
    void theDonningVarianceHasFewDegreesOfFreedom() {
        VarianceParts parts = new VarianceParts(2, 5, 5, 2, 12, 3, 4);
        assertEquals(100.0 / 49, parts.donningSatterthwaite(), 1e-15);
        assertEquals(0, new VarianceParts(2, 0, -0.5, 2, 1, 3, 4).donningSatterthwaite());
    }

    @Test
    void withoutDonningVarianceAsManyTrialsAsAllowedAreBest() {
        VarianceParts parts = new VarianceParts(2, 0, -0.5, 2, 1, 3, 4);
        assertEquals(7, parts.bestTrials(5, 1, 7));
        assertEquals(1, parts.bestTrials(0, 1, 7));
    }

    @Test
    void bestTrialsAreThoseOfTheTwoVariancesAlone() {
        VarianceParts parts = new VarianceParts(2, 5, 5, 2, 12, 3, 4);
        assertEquals(parts.bestTrials(20, 1, 50), VarianceParts.bestTrials(5, 2, 20, 1, 50));
        // sqrt(cost ratio * trial / donning) = sqrt(20 * 2 / 5) = 2.83.
        assertEquals(3, VarianceParts.bestTrials(5, 2, 20, 1, 50));
        assertEquals(1, VarianceParts.bestTrials(5, 0, 20, 1, 50));
        assertThrows(
                IllegalArgumentException.class, () -> VarianceParts.bestTrials(-1, 2, 20, 1, 50));
    }

    @Test
    void emptyDonningsArePassedOver() {
        List<double[]> two = List.of(new double[] {1, 2}, new double[] {3, 5});
        List<double[]> withEmpty = List.of(new double[] {1, 2}, new double[0], new double[] {3, 5});
        assertEquals(
                VarianceParts.of(List.of(two)), VarianceParts.of(List.of(withEmpty, List.of())));
    }

    @Test
    void tooFewValuesAreRefused() {
        assertRefused(List.of(List.of(new double[] {1, 2, 3})));
        assertRefused(List.of(List.of(new double[] {1}, new double[] {2})));
        assertRefused(List.of());
        assertRefused(List.of(List.of(new double[] {1, 2}, new double[] {2, Double.NaN})));
        assertThrows(
                IllegalArgumentException.class,
                () -> new VarianceParts(1, 1, 1, 1, 1, 1, 1).bestTrials(1, 0, 5));
    }

    private static void assertRefused(List<List<double[]>> conditions) {
        assertThrows(IllegalArgumentException.class, () -> VarianceParts.of(conditions));
    }

    private static void assertClose(JsonNode expected, double actual, double relative) {
        double value = expected.doubleValue();
        assertEquals(value, actual, relative * Math.abs(value));
    }
}
