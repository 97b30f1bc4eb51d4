package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws that hold for every plan a protocol may have, the extremes included. */
class CriticalValuesGridTest {

    /** Fewest and most rounds, from the least to the greatest a protocol allows. */
    private static final int[][] ROUNDS = {
        {2, 2}, {2, 3}, {2, 10}, {2, 50}, {3, 20}, {10, 12}, {25, 50}, {49, 50}, {50, 50}
    };

    /** Confidence 0.80 and 0.999, the latter also shared over nine comparisons; and 0.95. */
    private static final double[] ALPHAS = {0.2, 0.05, 0.001, 0.001 / 9};

    private static final double[] EXPONENTS = {0.5, 2, 5};

    static Stream<Schedule> everySchedule() {
        List<Schedule> all = new ArrayList<>();
        for (int[] rounds : ROUNDS) {
            all.add(Schedule.paired(rounds[0], rounds[1]));
            all.add(Schedule.independent(rounds[0], rounds[1]));
        }
        return all.stream();
    }

    @ParameterizedTest
    @MethodSource("everySchedule")
    void everyPlanSpendsItsErrorAndNoMore(Schedule schedule) {
        boolean isLong = schedule.looks().size() > 15;
        for (double alpha : isLong ? new double[] {0.2, 0.001 / 9} : ALPHAS) {
            for (double exponent : isLong ? new double[] {0.5, 5} : EXPONENTS) {
                String plan = "alpha " + alpha + ", exponent " + exponent;
                double[] c = CriticalValues.of(schedule, alpha, exponent);
                double[] spent = CriticalValues.spent(schedule, alpha, exponent);
                double[] crossed = Crossings.of(schedule, c);
                double[] nominal = CriticalValues.nominal(schedule, c);
                assertEquals(alpha, crossed[c.length - 1], 1e-9 * alpha, plan);
                double before = 0;
                for (int i = 0; i < c.length; i++) {
                    assertTrue(c[i] > 0 && c[i] < Double.POSITIVE_INFINITY, plan + ": " + c[i]);
                    assertEquals(spent[i], crossed[i], 1e-9 * spent[i], plan + ", look " + i);
                    // A look by itself errs as often as it may spend at least, the first exactly,
                    // and no oftener than the plan.
                    double share = spent[i] - before;
                    assertTrue(nominal[i] >= share * (1 - 1e-9), plan + ", look " + i);
                    assertTrue(nominal[i] <= alpha * (1 + 1e-9), plan + ", look " + i);
                    before = spent[i];
                }
                assertEquals(spent[0], nominal[0], 1e-10 * spent[0], plan);
            }
        }
    }

    /** Less to spend, or the same for longer, asks for more. */
    @ParameterizedTest
    @MethodSource("everySchedule")
    void aStricterPlanAsksForMore(Schedule schedule) {
        int last = schedule.looks().size() - 1;
        for (double exponent : last > 15 ? new double[] {2} : EXPONENTS) {
            for (int i = 1; i < ALPHAS.length; i++) {
                double[] loose = CriticalValues.of(schedule, ALPHAS[i - 1], exponent);
                double[] strict = CriticalValues.of(schedule, ALPHAS[i], exponent);
                for (int look = 0; look <= last; look++) {
                    assertTrue(strict[look] > loose[look], "look " + look);
                }
            }
        }
        if (last > 0) {
            for (int i = 1; i < EXPONENTS.length; i++) {
                double[] early = CriticalValues.of(schedule, 0.05, EXPONENTS[i - 1]);
                double[] late = CriticalValues.of(schedule, 0.05, EXPONENTS[i]);
                assertTrue(late[0] > early[0], "more is saved at first");
                assertTrue(late[last] < early[last], "more is left at last");
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"2, 3, 10", "3, 10, 50", "10, 12, 20", "40, 41, 50"})
    void aLongerPlanAsksForMoreAtEachLook(int fewest, int shorter, int longer) {
        for (double alpha : ALPHAS) {
            double[] less = CriticalValues.of(Schedule.paired(fewest, shorter), alpha, 2);
            double[] more = CriticalValues.of(Schedule.paired(fewest, longer), alpha, 2);
            for (int i = 0; i < less.length; i++) {
                assertTrue(more[i] > less[i], "look " + i);
            }
        }
    }

    /** Another quadrature, forwards instead of backwards, of three looks. */
    @ParameterizedTest(name = "{0} pairs first, alpha {1}, exponent {2}")
    @CsvSource({
        "2, 0.05, 2",
        "2, 0.2, 0.5",
        "2, 0.001, 5",
        "3, 0.05, 2",
        "3, 0.0001, 2",
        "10, 0.05, 1",
        "48, 0.05, 2",
        "48, 0.001, 5"
    })
    void anotherQuadratureFindsEachLookSpendingItsShare(int first, double alpha, double exponent) {
        Schedule schedule = Schedule.paired(first, first + 2);
        double[] spent = CriticalValues.spent(schedule, alpha, exponent);
        double[] crossed =
                new ForwardQuadrature(first, CriticalValues.of(schedule, alpha, exponent))
                        .crossings();
        assertEquals(spent[0], crossed[0], 1e-9 * spent[0]);
        assertEquals(spent[1] - spent[0], crossed[1], 1e-8 * (spent[1] - spent[0]));
        assertEquals(spent[2] - spent[1], crossed[2], 1e-8 * (spent[2] - spent[1]));
    }

    /** And so do raw normal values at the extremes: four standard errors. */
    @ParameterizedTest(name = "{0} to {1}, {2}, alpha {3}, exponent {4}")
    @CsvSource({
        "2, 2, PAIRED, 0.2, 2",
        "2, 50, PAIRED, 0.2, 0.5",
        "2, 50, PAIRED, 0.2, 5",
        "2, 50, INDEPENDENT, 0.2, 1",
        "49, 50, INDEPENDENT, 0.1, 5"
    })
    void rawValuesMissAsOftenAsPromisedAtTheExtremes(
            int fewest, int most, Schedule.Design design, double alpha, double exponent) {
        Schedule schedule =
                design == Schedule.Design.PAIRED
                        ? Schedule.paired(fewest, most)
                        : Schedule.independent(fewest, most);
        PromisePlayer player = new PromisePlayer(schedule, alpha, exponent);
        SplittableRandom random = new SplittableRandom(29);
        long[] counts = new long[PromisePlayer.KINDS];
        int campaigns = 10_000;
        for (int i = 0; i < campaigns; i++) {
            player.play(random, counts);
        }
        double share = counts[PromisePlayer.MISSED] / (double) campaigns;
        assertEquals(alpha, share, 4 * Math.sqrt(alpha * (1 - alpha) / campaigns));
    }
}
