package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
        double[] crossed = Crossings.of(plan.schedule(), critical);
        double[] spent = CriticalValues.spent(plan.schedule(), plan.alpha(), plan.exponent());
        assertArrayEquals(spent, crossed, 1e-12);
        assertArrayEquals(plan.values("cumulative_alpha"), crossed, 5.1e-11, "10 decimals");
    }

    /** What the program does not do: t quantiles at the levels of the normal-theory boundary. */
    @ParameterizedTest
    @MethodSource("everyBalancedPlan")
    void borrowingTheKnownSpreadBoundaryCostsWhatTheReferenceSays(Case plan) {
        try (Answers borrowed =
                new Answers(plan.toString(), plan.entry().get("significance_level_approach"))) {
            List<Schedule.Look> looks = plan.schedule().looks();
            Schedule known =
                    Crossings.knownSpread(looks.stream().map(Schedule.Look::information).toList());
            double[] z = CriticalValues.of(known, plan.alpha(), plan.exponent());
            double[] level = CriticalValues.nominal(known, z);
            double[] c = new double[z.length];
            Arrays.setAll(
                    c, i -> StudentT.upperQuantile(level[i] / 2, looks.get(i).degreesOfFreedom()));
            double[] crossed = Crossings.of(plan.schedule(), c);
            double all = crossed[crossed.length - 1];
            // Six decimals, six digits, seven digits of a plan whose z have six, seven decimals.
            assertArrayEquals(borrowed.numbers("z_known_sigma"), z, 5.1e-7);
            assertRelative(borrowed.numbers("nominal_two_sided_p"), level, 5.1e-6);
            assertRelative(borrowed.numbers("c"), c, 5.1e-7);
            assertArrayEquals(borrowed.numbers("actual_cumulative_error"), crossed, 1.5e-7);
            assertEquals(borrowed.number("actual_overall_error"), all, 1.5e-7);
            crossings(borrowed.part("monte_carlo"), crossed);
        }
    }

    /** 4e7 paths simulated apart from all recursions, within four of their standard errors. */
    @ParameterizedTest
    @MethodSource("everyBalancedPlan")
    void criticalValuesAreCrossedAsOftenAsInTheSimulationOfTheReference(Case plan) {
        double[] critical = CriticalValues.of(plan.schedule(), plan.alpha(), plan.exponent());
        double[] crossed = Crossings.of(plan.schedule(), critical);
        try (Answers simulated = new Answers(plan.toString(), plan.entry().get("monte_carlo"))) {
            crossings(simulated, crossed);
        }
    }

    private static void crossings(Answers simulated, double[] crossed) {
        double[] fraction = simulated.numbers("first_crossing_fraction");
        double[] expected = simulated.numbers("expected");
        double[] error = simulated.numbers("standard_error");
        for (int i = 0; i < crossed.length; i++) {
            double first = crossed[i] - (i == 0 ? 0 : crossed[i - 1]);
            assertEquals(expected[i], first, 1.01e-7, "look " + i);
            assertEquals(fraction[i], first, 4 * error[i], "look " + i);
        }
        assertEquals(
                simulated.number("overall"),
                crossed[crossed.length - 1],
                4 * simulated.number("overall_standard_error"));
    }

    @ParameterizedTest
    @MethodSource("everyNaivePlan")
    void peekingWithThePlainIntervalMissesAsOftenAsTheReferenceSays(Case plan) {
        double[] crossed = Crossings.of(plan.schedule(), plan.values("c"));
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

    @Test
    void aLookThatIsNeverTakenLeavesTheOthersAsTheyWere() {
        Schedule three = Schedule.paired(List.of(3, 5, 8));
        double[] crossed = Crossings.of(three, new double[] {4, 1e300, 3});
        double[] without = Crossings.of(Schedule.paired(List.of(3, 8)), new double[] {4, 3});
        assertEquals(crossed[0], crossed[1], 1e-15);
        // Two short steps or one long one: the two roads share nothing but the first look.
        assertEquals(without[1], crossed[2], 1e-9);
    }

    /** One long step or many short ones, of which the looks between are never taken. */
    @ParameterizedTest(name = "{0} and {1} pairs")
    @CsvSource({"10, 20", "20, 60", "50, 100", "50, 150", "100, 200"})
    void aLongStepIsManyShortOnes(int first, int last) {
        double[] hurried =
                Crossings.of(Schedule.paired(List.of(first, last)), new double[] {2.2, 2.1});
        double[] between = new double[last - first + 1];
        Arrays.fill(between, 1e300);
        between[0] = 2.2;
        between[last - first] = 2.1;
        double[] unhurried = Crossings.of(Schedule.paired(first, last), between);
        assertEquals(unhurried[last - first], hurried[1], 1e-12);
    }

    /**
     * Each trial a value of its own, fifty a donning: both arms grow by fifty from look to look.
     */
    @Test
    void manyTrialsADonningAreOneLongStepInEachArm() {
        List<Schedule.Arms> rounds = new ArrayList<>();
        List<Schedule.Arms> singly = new ArrayList<>();
        for (int round = 1; round <= 3; round++) {
            rounds.add(new Schedule.Arms(50 * round, 50 * round));
        }
        for (int n = 50; n <= 150; n++) {
            singly.add(new Schedule.Arms(n, n));
        }
        double[] c = CriticalValues.of(Schedule.independent(rounds), 0.05, 2);
        double[] between = new double[101];
        Arrays.fill(between, 1e300);
        for (int round = 0; round < 3; round++) {
            between[50 * round] = c[round];
        }
        double[] crossed = Crossings.of(Schedule.independent(singly), between);
        assertEquals(0.05 / 9, crossed[0], 1e-12);
        assertEquals(0.05 * 4 / 9, crossed[50], 1e-12);
        assertEquals(0.05, crossed[100], 1e-12);
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
        double[] unhurried = Crossings.of(slow, new double[] {3, 1e300, 1e300, 2.5});
        double[] hurried = Crossings.of(quick, new double[] {3, 2.5});
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
        double[][] wrong = {
            {0.02}, {0.02, 0.02}, {0.03, 0.02}, {0, 0.02}, {0.02, 1}, {0.02, 0.0 / 0}
        };
        for (double[] spent : wrong) {
            assertThrows(IllegalArgumentException.class, () -> CriticalValues.spending(two, spent));
        }
        assertThrows(
                IllegalArgumentException.class,
                () -> CriticalValues.nominal(two, new double[] {2}));
    }

    private static void assertRelative(double[] expected, double[] actual, double tolerance) {
        assertEquals(expected.length, actual.length);
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], actual[i], tolerance * expected[i], "look " + i);
        }
    }
}
