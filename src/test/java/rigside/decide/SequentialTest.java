package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SequentialTest {

    private static final Map<String, Verdict> VERDICTS =
            Map.of(
                    "meaningful", Verdict.MEANINGFUL_DIFFERENCE,
                    "no meaningful", Verdict.NO_MEANINGFUL_DIFFERENCE,
                    "difference", Verdict.DIFFERENCE_SIZE_UNSETTLED,
                    "open", Verdict.NOT_SETTLED);

    private static final Rules THREE_TO_TEN =
            new Rules(
                    Schedule.paired(3, 10),
                    0.05,
                    2,
                    Bands.symmetric(Math.log(1.1)),
                    Matters.EITHER,
                    0.01);

    static Stream<Named<JsonNode>> everyWorkedSequence() {
        return Reference.list(Reference.read("worked_sequences.json").get("entries")).stream()
                .map(
                        entry ->
                                Named.of(
                                        entry.get("kind").textValue()
                                                + " "
                                                + entry.get("n_min")
                                                + " to "
                                                + entry.get("n_max"),
                                        entry));
    }

    @ParameterizedTest
    @MethodSource("everyWorkedSequence")
    void everyLookOfEveryWorkedSequenceIsReproduced(JsonNode entry) {
        boolean paired = entry.get("kind").textValue().equals("paired");
        int fewest = entry.get("n_min").intValue();
        int most = entry.get("n_max").intValue();
        Rules rules =
                new Rules(
                        paired ? Schedule.paired(fewest, most) : Schedule.independent(fewest, most),
                        entry.get("alpha").doubleValue(),
                        entry.get("rho").doubleValue(),
                        Bands.symmetric(Math.log(entry.get("ratio").doubleValue())),
                        Matters.EITHER,
                        0);
        double[] a = logs(entry.get("A"));
        double[] b = logs(entry.get("B"));
        Course course =
                paired
                        ? Sequential.pairedCourse(rules, minus(b, a))
                        : Sequential.independentCourse(rules, a, b);
        List<JsonNode> looks = Reference.list(entry.get("looks"));
        assertEquals(looks.size(), course.looks().size());
        for (int i = 0; i < looks.size(); i++) {
            JsonNode look = looks.get(i);
            Finding finding = course.looks().get(i);
            Interval interval = finding.interval().orElseThrow();
            assertEquals(look.get("n").intValue(), finding.n());
            assertEquals(look.get("df").doubleValue(), interval.degreesOfFreedom());
            // Estimate and standard error have 10 digits, c 7; the limits carry the file's own
            // quadrature error of c, at most 4.1e-7 relative.
            double estimate = look.get("estimate").doubleValue();
            double se = look.get("standard_error").doubleValue();
            double slack = 4.1e-7 * look.get("c").doubleValue() * se;
            if (fewest > 2) {
                slack = 2e-9 * look.get("c").doubleValue() * se;
            }
            assertEquals(estimate, finding.estimate(), 5.1e-10 * Math.abs(estimate) + 1e-16);
            assertEquals(se, interval.standardError(), 5.1e-10 * se);
            assertLimit(look.get("lower").doubleValue(), interval.lower(), slack);
            assertLimit(look.get("upper").doubleValue(), interval.upper(), slack);
            assertEquals(VERDICTS.get(look.get("verdict").textValue()), finding.verdict());
            assertEquals(finding.n() == most, finding.planUsedUp());
            assertFalse(finding.atResolution());
        }
        assertEquals(
                entry.get("stops_at").isNull() ? 0 : entry.get("stops_at").intValue(),
                course.settling().map(Finding::n).orElse(0));
    }

    private static void assertLimit(double expected, double actual, double slack) {
        assertEquals(expected, actual, slack + 5.1e-10 * Math.abs(expected));
    }

    @Test
    void theLatestLookIsTheLastOfTheCourse() {
        double[] d = {0.1, 0.12, 0.07, 0.2, 0.11};
        Course course = Sequential.pairedCourse(THREE_TO_TEN, d);
        assertEquals(course.latest(), Sequential.paired(THREE_TO_TEN, d));
        for (int n = 3; n <= 5; n++) {
            assertEquals(
                    course.looks().get(n - 3),
                    Sequential.paired(THREE_TO_TEN, Arrays.copyOf(d, n)));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void fewerRoundsThanTheFewestGiveNoInterval(int n) {
        Finding finding = Sequential.paired(THREE_TO_TEN, Arrays.copyOf(new double[] {1, 3}, n));
        assertEquals(n, finding.n());
        assertEquals(Verdict.TOO_FEW_ROUNDS, finding.verdict());
        assertTrue(finding.interval().isEmpty());
        assertEquals(n == 0 ? Double.NaN : n == 1 ? 1 : 2, finding.estimate());
    }

    @Test
    void valuesBeyondThePlanAreNotUsed() {
        double[] ten = new Random(1).doubles(10).toArray();
        Finding finding = Sequential.paired(THREE_TO_TEN, Arrays.copyOf(ten, 11));
        assertEquals(Sequential.paired(THREE_TO_TEN, ten), finding);
        assertTrue(finding.planUsedUp());
    }

    @Test
    void aValueWithoutItsCounterpartWaitsForTheNextLook() {
        Rules rules = with(Schedule.independent(2, 5), 0);
        double[] a = {1, 2, 3, 9};
        double[] b = {2, 4, 3};
        assertEquals(
                Sequential.independent(rules, Arrays.copyOf(a, 3), b),
                Sequential.independent(rules, a, b));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.01})
    void equalDifferencesSettleNothing(double resolution) {
        Rules rules = with(Schedule.paired(3, 10), resolution);
        Finding finding = Sequential.paired(rules, new double[] {0.5, 0.5, 0.5, 0.5});
        assertTrue(finding.atResolution());
        assertEquals(Verdict.NOT_SETTLED, finding.verdict());
        assertTrue(finding.interval().orElseThrow().standardError() > 0);
    }

    @Test
    void differencesEqualButForArithmeticSettleNothing() {
        double[] d = new double[4];
        double[] reference = {10, 5, 7, 12.3};
        for (int i = 0; i < 4; i++) {
            d[i] = Math.log(reference[i] * 1.3) - Math.log(reference[i]);
        }
        Finding finding = Sequential.paired(with(Schedule.paired(3, 10), 0), d);
        assertTrue(finding.atResolution());
        assertEquals(Verdict.NOT_SETTLED, finding.verdict());
    }

    @Test
    void aSpreadBelowRoundingIsReplacedByThatOfRounding() {
        // Read to 0.1: each value has a rounding error of sd 0.1/sqrt(12), a difference sqrt(2)
        // times that, 0.0408248.
        Rules rules = with(Schedule.paired(3, 10), 0.1);
        Finding below = Sequential.paired(rules, new double[] {1.00, 1.04, 1.08});
        assertTrue(below.atResolution());
        assertEquals(
                0.1 / Math.sqrt(6) / Math.sqrt(3),
                below.interval().orElseThrow().standardError(),
                1e-15);
        Finding above = Sequential.paired(rules, new double[] {1.00, 1.042, 1.084});
        assertFalse(above.atResolution());
        assertEquals(0.042 / Math.sqrt(3), above.interval().orElseThrow().standardError(), 1e-15);
    }

    @Test
    void belowTwiceTheSpreadOfRoundingAStepIsAddedOnEachSide() {
        Rules rules = with(Schedule.paired(3, 10), 0.1);
        Interval coarse =
                Sequential.paired(rules, new double[] {1.00, 1.08, 1.16}).interval().orElseThrow();
        assertEquals(0.1, coarse.shift());
        assertEquals(
                coarse.critical() * coarse.standardError() + 0.1,
                coarse.upper() - coarse.estimate(),
                1e-14);
        assertEquals(coarse.upper() - 1.08, 1.08 - coarse.lower(), 1e-14);
        Interval ample =
                Sequential.paired(rules, new double[] {1.00, 1.082, 1.164})
                        .interval()
                        .orElseThrow();
        assertEquals(0, ample.shift());
    }

    @Test
    void independentValuesHaveTheRoundingOfOneValue() {
        Rules rules = with(Schedule.independent(2, 10), 0.1);
        Finding finding = Sequential.independent(rules, new double[] {5, 5}, new double[] {9, 9});
        assertEquals(0.1 / Math.sqrt(12), finding.interval().orElseThrow().standardError(), 1e-15);
        assertTrue(finding.atResolution());
    }

    @Test
    void aVerdictOnceReachedStaysAndTheContradictionShows() {
        double[] settledThenAdrift = {0.3, 0.301, 0.299, 0.3, -2, 2.5};
        Course course = Sequential.pairedCourse(with(Schedule.paired(3, 10), 0), settledThenAdrift);
        assertEquals(3, course.settling().orElseThrow().n());
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, course.standing());
        assertEquals(Verdict.NOT_SETTLED, course.latest().verdict());
        assertNotEquals(course.latest().conclusion(), course.conclusion());
    }

    @Test
    void aChangeOfUnitChangesNothingButTheUnit() {
        double[] d = {0.1, 0.12, 0.07, 0.2, 0.11};
        Rules pascal =
                new Rules(Schedule.paired(3, 10), 0.05, 2, Bands.symmetric(25), Matters.EITHER, 0);
        Rules millibar =
                new Rules(
                        Schedule.paired(3, 10), 0.05, 2, Bands.symmetric(0.25), Matters.EITHER, 0);
        Interval small = Sequential.paired(millibar, d).interval().orElseThrow();
        Interval large =
                Sequential.paired(pascal, Arrays.stream(d).map(x -> 100 * x).toArray())
                        .interval()
                        .orElseThrow();
        assertEquals(100 * small.lower(), large.lower(), 1e-13);
        assertEquals(100 * small.upper(), large.upper(), 1e-13);
    }

    @Test
    void swappingTheConditionsMirrorsTheInterval() {
        double[] a = {1, 2, 4, 3.5};
        double[] b = {2, 2.5, 3, 7};
        Rules rules = with(Schedule.independent(2, 10), 0);
        Interval there = Sequential.independent(rules, a, b).interval().orElseThrow();
        Interval back = Sequential.independent(rules, b, a).interval().orElseThrow();
        assertEquals(there.lower(), -back.upper(), 1e-15);
        assertEquals(there.upper(), -back.lower(), 1e-15);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void valuesThatAreNoNumbersAreRefused(double value) {
        assertThrows(
                IllegalArgumentException.class,
                () -> Sequential.paired(THREE_TO_TEN, new double[] {1, value, 2}));
    }

    @Test
    void hugeValuesNeverGiveAConfidentVerdict() {
        double[] d = {1e308, 1.5e308, 1.7e308, 1.2e308};
        assertEquals(
                Verdict.NOT_SETTLED,
                Sequential.paired(with(Schedule.paired(3, 10), 0), d).verdict());
    }

    @Test
    void theDesignIsNeverSwitched() {
        assertThrows(
                IllegalArgumentException.class,
                () -> Sequential.independent(THREE_TO_TEN, new double[3], new double[3]));
    }

    private static Rules with(Schedule schedule, double resolution) {
        return new Rules(
                schedule, 0.05, 2, Bands.symmetric(Math.log(1.1)), Matters.EITHER, resolution);
    }

    private static double[] logs(JsonNode values) {
        return Arrays.stream(Reference.doubles(values)).map(Math::log).toArray();
    }

    private static double[] minus(double[] b, double[] a) {
        double[] d = new double[a.length];
        Arrays.setAll(d, i -> b[i] - a[i]);
        return d;
    }
}
