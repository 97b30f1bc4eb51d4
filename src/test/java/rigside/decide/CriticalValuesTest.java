package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class CriticalValuesTest {

    /** A plan of a reference file. */
    record Case(String kind, JsonNode entry) {
        Schedule schedule() {
            int fewest = entry.get("n_min").intValue();
            int most = entry.get("n_max").intValue();
            return kind.equals("paired")
                    ? Schedule.paired(fewest, most)
                    : Schedule.independent(fewest, most);
        }

        double alpha() {
            return entry.get("alpha").doubleValue();
        }

        double exponent() {
            return entry.get("rho").doubleValue();
        }

        double[] values(String key) {
            return Reference.doubles(entry.get(key));
        }

        @Override
        public String toString() {
            return kind
                    + " "
                    + entry.get("n_min")
                    + " to "
                    + entry.get("n_max")
                    + ", alpha "
                    + entry.get("alpha")
                    + (entry.has("rho") ? ", exponent " + entry.get("rho") : "");
        }
    }

    static Stream<Case> everyBalancedPlan() {
        return plans("");
    }

    static Stream<Case> everyNaivePlan() {
        return plans("/naive_peeking");
    }

    private static Stream<Case> plans(String section) {
        return Stream.of("paired", "independent")
                .flatMap(
                        kind ->
                                Reference.list(
                                                Reference.read("sequential_t_" + kind + ".json")
                                                        .at(section + "/entries"))
                                        .stream()
                                        .map(entry -> new Case(kind, entry)));
    }

    /**
     * The files hold 8 digits. Their largest change on refining the quadrature is 4.1e-7, for pairs
     * from 2 on; for all others it is below the digits held. (Doubling all nodes here moves no
     * value by more than 1e-9.)
     */
    @ParameterizedTest
    @MethodSource("everyBalancedPlan")
    void criticalValuesAreThoseOfTheReference(Case plan) {
        double[] critical = CriticalValues.of(plan.schedule(), plan.alpha(), plan.exponent());
        boolean coarse =
                plan.kind().equals("paired")
                        && plan.schedule().looks().get(0).degreesOfFreedom() == 1;
        assertRelative(plan.values("c"), critical, coarse ? 4.1e-7 : 5.1e-8);
    }

    @ParameterizedTest
    @MethodSource("everyBalancedPlan")
    void theErrorSpentComesBackFromTheCriticalValues(Case plan) {
        double[] critical = CriticalValues.of(plan.schedule(), plan.alpha(), plan.exponent());
        double[] crossed = CriticalValues.crossing(plan.schedule(), critical);
        double[] spent = CriticalValues.spent(plan.schedule(), plan.alpha(), plan.exponent());
        assertArrayEquals(spent, crossed, 1e-12);
        assertArrayEquals(plan.values("cumulative_alpha"), crossed, 5.1e-11, "10 decimals");
    }

    @ParameterizedTest
    @MethodSource("everyBalancedPlan")
    void borrowingTheKnownSpreadBoundaryCostsWhatTheReferenceSays(Case plan) {
        JsonNode borrowed = plan.entry().get("significance_level_approach");
        double[] crossed =
                CriticalValues.crossing(plan.schedule(), Reference.doubles(borrowed.get("c")));
        // The file's critical values have 7 digits, its errors 7 decimals.
        assertArrayEquals(
                Reference.doubles(borrowed.get("actual_cumulative_error")), crossed, 1.5e-7);
    }

    @ParameterizedTest
    @MethodSource("everyNaivePlan")
    void peekingWithThePlainIntervalMissesAsOftenAsTheReferenceSays(Case plan) {
        double[] crossed = CriticalValues.crossing(plan.schedule(), plan.values("c"));
        // The file's critical values have 7 digits, its errors 7 decimals.
        assertArrayEquals(plan.values("actual_cumulative_error"), crossed, 1.5e-7);
    }

    static Stream<Named<JsonNode>> everyUnbalancedPlan() {
        return Reference.list(Reference.read("sequential_t_unbalanced.json").get("entries"))
                .stream()
                .map(
                        entry ->
                                Named.of(
                                        entry.get("name").textValue()
                                                + ", alpha "
                                                + entry.get("alpha")
                                                + ", exponent "
                                                + entry.get("rho"),
                                        entry));
    }

    /** The file is simulated with 2.4e7 paths; its standard errors are the tolerance. */
    @ParameterizedTest
    @MethodSource("everyUnbalancedPlan")
    void unequalArmsAgreeWithSimulation(JsonNode entry) {
        List<Schedule.Arms> arms =
                Reference.list(entry.get("looks")).stream()
                        .map(
                                look ->
                                        new Schedule.Arms(
                                                look.get(0).intValue(), look.get(1).intValue()))
                        .toList();
        double[] critical =
                CriticalValues.of(
                        Schedule.independent(arms),
                        entry.get("alpha").doubleValue(),
                        entry.get("rho").doubleValue());
        double[] simulated = Reference.doubles(entry.get("c"));
        double[] error = Reference.doubles(entry.get("c_standard_error"));
        for (int i = 0; i < critical.length; i++) {
            // The first look is a plain t quantile printed to 7 digits.
            double tolerance = i == 0 ? 5.1e-7 * critical[0] : 4 * error[i];
            assertEquals(simulated[i], critical[i], tolerance, "look " + i);
        }
    }

    static Stream<Named<JsonNode>> everyKnownSpreadPlan() {
        return Reference.list(Reference.read("group_sequential_known_sigma.json").get("entries"))
                .stream()
                .map(
                        entry ->
                                Named.of(
                                        entry.get("K") + " looks, alpha " + entry.get("alpha"),
                                        entry));
    }

    /** The file has 6 decimals. */
    @ParameterizedTest
    @MethodSource("everyKnownSpreadPlan")
    void withTheSpreadKnownTheClassicalBoundariesComeOut(JsonNode entry) {
        Schedule schedule = equallySpaced(entry.get("K").intValue());
        double alpha = entry.get("alpha").doubleValue();
        for (int rho = 1; rho <= 3; rho++) {
            assertArrayEquals(
                    Reference.doubles(entry.get("power_rho_" + rho).get("z")),
                    CriticalValues.of(schedule, alpha, rho),
                    5.1e-7);
        }
        assertArrayEquals(
                Reference.doubles(entry.get("lan_demets_obf_type_per_side").get("z")),
                CriticalValues.spending(schedule, likeOBrienFleming(schedule, alpha)),
                5.1e-7);
        double[] likePocock =
                times(schedule).map(t -> alpha * Math.log1p((Math.E - 1) * t)).toArray();
        assertArrayEquals(
                Reference.doubles(entry.get("lan_demets_pocock_type").get("z")),
                CriticalValues.spending(schedule, likePocock),
                5.1e-7);
    }

    /** Lan and DeMets 1983: each side spends 2 - 2 Phi(z / sqrt t), z the quantile of alpha/4. */
    private static double[] likeOBrienFleming(Schedule schedule, double alpha) {
        double df = schedule.last().degreesOfFreedom();
        double z = StudentT.upperQuantile(alpha / 4, df);
        return times(schedule).map(t -> 4 * StudentT.upperTail(z / Math.sqrt(t), df)).toArray();
    }

    private static DoubleStream times(Schedule schedule) {
        double all = schedule.last().information();
        return schedule.looks().stream().mapToDouble(look -> look.information() / all);
    }

    /** Pocock 1977 and O'Brien-Fleming 1979 constants, to the file's 6 decimals. */
    @ParameterizedTest
    @MethodSource("everyKnownSpreadPlan")
    void constantsOfPocockAndOfOBrienAndFlemingSpendTheirAlpha(JsonNode entry) {
        int k = entry.get("K").intValue();
        double alpha = entry.get("alpha").doubleValue();
        double[] pocock = new double[k];
        Arrays.fill(pocock, entry.get("pocock_constant").doubleValue());
        double[] brienFleming =
                IntStream.rangeClosed(1, k)
                        .mapToDouble(
                                i ->
                                        entry.get("obrien_fleming_constant").doubleValue()
                                                * Math.sqrt((double) k / i))
                        .toArray();
        // An error of 5e-7 in the constant moves alpha by less than 5e-7 times a density below .5.
        assertEquals(alpha, CriticalValues.crossing(equallySpaced(k), pocock)[k - 1], 3e-7);
        assertEquals(alpha, CriticalValues.crossing(equallySpaced(k), brienFleming)[k - 1], 3e-7);
    }

    /** Armitage, McPherson and Rowe 1969: repeated tests at 5 % with the spread known. */
    @Test
    void repeatedSignificanceTestsErrAsOftenAsPublished() {
        double[] z = DoubleStream.generate(() -> 1.959963984540054).limit(20).toArray();
        double[] crossed = CriticalValues.crossing(equallySpaced(20), z);
        int[] looks = {1, 2, 3, 4, 5, 10, 20};
        double[] published = {0.05, 0.08312, 0.10726, 0.12617, 0.14169, 0.19336, 0.24791};
        for (int i = 0; i < looks.length; i++) {
            assertEquals(published[i], crossed[looks[i] - 1], 6e-6, looks[i] + " looks");
        }
    }

    /** Four decimals: power family 2 of Kim and DeMets 1987 with five looks at alpha .05. */
    @Test
    void thePowerFamilyGivesItsPublishedBoundary() {
        assertArrayEquals(
                new double[] {3.0902, 2.7141, 2.4728, 2.2799, 2.1140},
                CriticalValues.of(equallySpaced(5), 0.05, 2),
                5.1e-5);
    }

    /** Four decimals: Lan and DeMets 1983, five looks at alpha .05. */
    @Test
    void anySpendingFunctionCanBeGiven() {
        Schedule five = equallySpaced(5);
        assertArrayEquals(
                new double[] {4.8769, 3.3570, 2.6803, 2.2898, 2.0310},
                CriticalValues.spending(five, likeOBrienFleming(five, 0.05)),
                5.1e-5);
    }

    @ParameterizedTest(name = "{0} to {1} at alpha {2}, exponent {3}")
    @CsvSource({
        "2, 2, 0.2, 1",
        "2, 50, 0.001, 3",
        "2, 50, 0.2, 0.5",
        "50, 50, 0.001, 2",
        "49, 50, 0.01, 8",
        "2, 20, 0.0001, 2",
        "7, 50, 0.05, 2"
    })
    void anyPlanSpendsItsErrorExactly(int fewest, int most, double alpha, double exponent) {
        for (Schedule schedule :
                List.of(Schedule.paired(fewest, most), Schedule.independent(fewest, most))) {
            double[] critical = CriticalValues.of(schedule, alpha, exponent);
            double[] crossed = CriticalValues.crossing(schedule, critical);
            assertRelative(CriticalValues.spent(schedule, alpha, exponent), crossed, 1e-9);
            // No look may be laxer than one plain interval at the whole of alpha.
            for (int i = 0; i < critical.length; i++) {
                double df = schedule.looks().get(i).degreesOfFreedom();
                assertTrue(critical[i] >= StudentT.upperQuantile(alpha / 2, df) * (1 - 1e-12));
            }
        }
    }

    @Test
    void aLookThatIsNeverTakenLeavesTheOthersAsTheyWere() {
        Schedule three = Schedule.paired(List.of(3, 5, 8));
        double[] crossed = CriticalValues.crossing(three, new double[] {4, 1e300, 3});
        double[] without =
                CriticalValues.crossing(Schedule.paired(List.of(3, 8)), new double[] {4, 3});
        assertEquals(crossed[0], crossed[1], 1e-15);
        // Two short steps or one long one: the two roads share nothing but the first look.
        assertEquals(without[1], crossed[2], 1e-9);
    }

    @Test
    void oneArmGrowingAloneThenTheOtherIsOneLongStep() {
        Schedule slow =
                Schedule.independent(
                        List.of(
                                new Schedule.Arms(3, 3),
                                new Schedule.Arms(4, 3),
                                new Schedule.Arms(5, 3),
                                new Schedule.Arms(5, 6)));
        Schedule quick =
                Schedule.independent(List.of(new Schedule.Arms(3, 3), new Schedule.Arms(5, 6)));
        double[] unhurried = CriticalValues.crossing(slow, new double[] {3, 1e300, 1e300, 2.5});
        double[] hurried = CriticalValues.crossing(quick, new double[] {3, 2.5});
        assertEquals(hurried[1], unhurried[3], 1e-9);
    }

    @Test
    void swappingTheArmsChangesNothing() {
        Schedule one =
                Schedule.independent(List.of(new Schedule.Arms(2, 4), new Schedule.Arms(5, 4)));
        Schedule other =
                Schedule.independent(List.of(new Schedule.Arms(4, 2), new Schedule.Arms(4, 5)));
        assertArrayEquals(
                CriticalValues.of(one, 0.05, 2), CriticalValues.of(other, 0.05, 2), 1e-13);
    }

    @Test
    void theSameQuestionGivesTheSameDigits() {
        double[] once = CriticalValues.of(Schedule.paired(3, 10), 0.05, 2);
        double[] spent = CriticalValues.spent(Schedule.paired(3, 10), 0.05, 2);
        assertArrayEquals(once, CriticalValues.spending(Schedule.paired(3, 10), spent), 0);
        once[0] = 0;
        assertEquals(14.857, CriticalValues.of(Schedule.paired(3, 10), 0.05, 2)[0], 5e-4);
    }

    @ParameterizedTest
    @CsvSource({"0, 2", "1, 2", "-0.1, 2", "NaN, 2", "0.05, 0", "0.05, -1", "0.05, NaN"})
    void impossibleErrorsAndExponentsAreRefused(double alpha, double exponent) {
        Schedule schedule = Schedule.paired(3, 10);
        assertThrows(
                IllegalArgumentException.class, () -> CriticalValues.of(schedule, alpha, exponent));
    }

    @Test
    void valuesThatDoNotFitTheScheduleAreRefused() {
        Schedule two = Schedule.paired(3, 4);
        assertThrows(
                IllegalArgumentException.class,
                () -> CriticalValues.crossing(two, new double[] {2}));
        assertThrows(
                IllegalArgumentException.class,
                () -> CriticalValues.crossing(two, new double[] {2, Double.NaN}));
        assertThrows(
                IllegalArgumentException.class,
                () -> CriticalValues.spending(two, new double[] {0.02, 0.02}));
    }

    private static Schedule equallySpaced(int looks) {
        return Schedule.knownSpread(
                IntStream.rangeClosed(1, looks).asDoubleStream().boxed().toList());
    }

    private static void assertRelative(double[] expected, double[] actual, double tolerance) {
        assertEquals(expected.length, actual.length);
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], actual[i], tolerance * expected[i], "look " + i);
        }
    }
}
