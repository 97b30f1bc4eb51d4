package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines, spreads, days and charts over sessions, against {@code across.R} (R 4.2.2). */
class AcrossSessionsTest {
    private static final JsonNode VALUES = Reference.read("across.json");

    private static double[] numbers(String set, String name) {
        return Reference.doubles(VALUES.get(set).get(name));
    }

    private static double number(String set, String name) {
        return VALUES.get(set).get(name).doubleValue();
    }

    private static void near(String set, String name, double actual) {
        double expected = number(set, name);
        assertEquals(expected, actual, 1e-9 * Math.max(Math.abs(expected), 1e-3), name);
    }

    /** rma(y, v, mods = ~ x, method = "PM", test = "knha"). */
    @Test
    void aLineThroughSessionsIsWhatMetaforGives() {
        RandomLine line =
                RandomLine.of(
                        numbers("line", "x"), numbers("unequal", "y"), numbers("unequal", "v"));
        near("line", "tau2", line.between());
        near("line", "slope", line.slope().estimate());
        near("line", "se", line.slope().standardError());
        near("line", "p", line.slope().p());
        near("line", "low", line.interval(0.95).lower());
        near("line", "high", line.interval(0.95).upper());
        near("line", "at_ten", line.at(10));
    }

    /** lm and confint, whatever the equal variances are. */
    @ParameterizedTest
    @CsvSource({"0.003", "1e-9", "100"})
    void withEqualVariancesItIsTheOrdinaryLine(double variance) {
        double[] variances = {variance, variance, variance, variance};
        RandomLine line = RandomLine.of(numbers("plain", "x"), numbers("equal", "y"), variances);
        near("plain", "slope", line.slope().estimate());
        near("plain", "low", line.interval(0.95).lower());
        near("plain", "high", line.interval(0.95).upper());
    }

    @Test
    void aLineNeedsThreeSessionsInTwoPlaces() {
        double[] three = {1, 2, 3};
        double[] ones = {1, 1, 1};
        assertThrows(
                IllegalArgumentException.class,
                () -> RandomLine.of(new double[] {1, 2}, new double[] {1, 2}, new double[] {1, 1}));
        assertThrows(IllegalArgumentException.class, () -> RandomLine.of(ones, three, ones));
        assertThrows(
                IllegalArgumentException.class,
                () -> RandomLine.of(three, three, new double[] {1, 0, 1}));
    }

    /** bartlett.test, anova(lm) and qchisq on R's InsectSprays. */
    @Test
    void aSpreadOfGroupsAndItsLimitsAreThoseOfR() {
        double[] counts = numbers("sprays", "counts");
        List<double[]> groups = new ArrayList<>();
        for (int spray = 0; spray < 6; spray++) {
            groups.add(Arrays.copyOfRange(counts, 12 * spray, 12 * spray + 12));
        }
        PooledSpread spread = PooledSpread.of(groups);
        near("sprays", "sd", spread.sd());
        near("sprays", "df", spread.freedom());
        near("sprays", "bartlett", spread.bartlett());
        near("sprays", "p", spread.unlike());
        near("sprays", "low", spread.limits(0.95).low());
        near("sprays", "high", spread.limits(0.95).high());
        near("sprays", "upper80", spread.upper(0.8));
    }

    @Test
    void groupsOfOneValueTellNothingOfASpread() {
        PooledSpread spread =
                PooledSpread.of(List.of(new double[] {4}, new double[] {1, 3}, new double[0]));
        assertEquals(1, spread.groups());
        assertEquals(Math.sqrt(2), spread.sd(), 1e-15);
        assertTrue(Double.isNaN(spread.unlike()));
        assertThrows(
                IllegalArgumentException.class, () -> PooledSpread.of(List.of(new double[] {4})));
        // One group that does not vary: its logarithm has no bottom.
        assertTrue(
                Double.isNaN(
                        PooledSpread.of(List.of(new double[] {2, 2}, new double[] {1, 3}))
                                .unlike()));
    }

    /** t.test(two, one); over days by the formulas written out in the script. */
    @Test
    void theDifferenceOfTwoDaysIsThatOfR() {
        Summary one = Summary.of(numbers("days", "one"));
        Summary two = Summary.of(numbers("days", "two"));
        Interval welch = TwoMeans.apart(one, two, 0.95);
        near("days", "welch_df", welch.degreesOfFreedom());
        near("days", "welch_low", welch.lower());
        near("days", "welch_high", welch.upper());
        Interval days = TwoMeans.overDays(one, two, Summary.of(numbers("days", "days")), 0.95);
        near("days", "df", days.degreesOfFreedom());
        near("days", "low", days.lower());
        near("days", "high", days.upper());
        assertThrows(
                IllegalArgumentException.class,
                () -> TwoMeans.overDays(one, two, Summary.of(1), 0.95));
        assertThrows(
                IllegalArgumentException.class, () -> TwoMeans.apart(one, Summary.of(1), 0.95));
    }

    /**
     * Two days of a condition, a spread between days and one within. Within the days alone the
     * truth is missed far too often; with the spread of five other days at most as often as said.
     */
    @ParameterizedTest(name = "spread of days {0}: missed more than {1} within days alone")
    @CsvSource({"0, 0.03", "1, 0.25", "3, 0.6"})
    void overDaysTheTruthIsMissedAtMostAsOftenAsSaid(double ofDays, double alone) {
        SplittableRandom random = new SplittableRandom(9);
        int runs = 4_000;
        int withDays = 0;
        int within = 0;
        for (int run = 0; run < runs; run++) {
            double[] means = new double[5];
            Arrays.setAll(means, i -> Summary.of(day(ofDays, random)).mean());
            Summary one = Summary.of(day(ofDays, random));
            Summary two = Summary.of(day(ofDays, random));
            withDays += misses(TwoMeans.overDays(one, two, Summary.of(means), 0.95)) ? 1 : 0;
            within += misses(TwoMeans.apart(one, two, 0.95)) ? 1 : 0;
        }
        double share = (double) withDays / runs;
        assertTrue(share < 0.05 + 4 * Math.sqrt(0.05 * 0.95 / runs), "missed " + share);
        assertTrue(within > alone * runs, "missed " + within + " within days alone");
    }

    private static double[] day(double ofDays, SplittableRandom random) {
        double centre = ofDays * random.nextGaussian();
        double[] values = new double[4];
        Arrays.setAll(values, i -> centre + random.nextGaussian());
        return values;
    }

    private static boolean misses(Interval interval) {
        return interval.lower() > 0 || interval.upper() < 0;
    }

    /** The formulas in R, and predict(lm(x ~ 1), interval = "prediction") for what is expected. */
    @Test
    void aChartsLimitsAreThoseOfTheMovingRange() {
        Chart chart = Chart.of(numbers("chart", "values"));
        near("chart", "mean", chart.mean());
        near("chart", "spread", chart.spread());
        near("chart", "low", chart.limits().low());
        near("chart", "high", chart.limits().high());
        near("chart", "expected_low", chart.expected(6, 0.95).orElseThrow().lower());
        near("chart", "expected_high", chart.expected(6, 0.95).orElseThrow().upper());
        assertTrue(chart.beyond().isEmpty());
        assertTrue(chart.expected(1, 0.95).isEmpty());
    }

    /** d2 for ranges of two is printed as 1.128 in every table of chart constants. */
    @Test
    void theConstantOfTheMovingRangeIsTheTabledOne() {
        assertEquals(1.128, Chart.D2, 5e-4);
    }

    @Test
    void aValueFarOffAndARowOnOneSideAreSignals() {
        double[] values = {1, 2, 1, 2, 1, 2, 1, 2, 30};
        assertEquals(List.of(8), Chart.of(values).beyond());
        double[] shifted = {1, 2, 1, 2, 1, 2, 1, 2, 5, 6, 5, 6, 5, 6, 5, 6};
        assertEquals(List.of(7, 15), Chart.of(shifted).endsOfRuns());
        double[] flat = {3, 3, 3, 3, 3, 3, 3, 3, 3, 3};
        assertTrue(Chart.of(flat).endsOfRuns().isEmpty());
        assertTrue(Chart.of(flat).beyond().isEmpty());
        assertThrows(IllegalArgumentException.class, () -> Chart.of(1));
        assertThrows(IllegalArgumentException.class, () -> Chart.of(1, Double.NaN));
    }

    /**
     * Of three values none can lie beyond its own chart's limits: the farthest is two thirds of the
     * range away, three spreads are 3 / (2 d2) of it at least. A run needs eight values. With known
     * mean eight in a row on one side come in 2 / 2^8 of charts of eight.
     */
    @Test
    void falseAlarmsAreAsOftenAsChanceMakesThem() {
        assertEquals(0, Chart.FalseAlarms.of(3).beyond());
        assertEquals(0, Chart.FalseAlarms.of(7).run());
        Chart.FalseAlarms hundred = Chart.FalseAlarms.of(100);
        // 1 - 0.9973^100 = 0.24 with known limits; own limits of 100 values are near.
        assertEquals(0.24, hundred.beyond(), 0.05);
        assertTrue(hundred.run() > 0.2, "runs " + hundred.run());
    }

    /** Exact, so exactly as often as said, from the third value on. */
    @ParameterizedTest
    @CsvSource({"2", "3", "10"})
    void theNextValueIsOutsideWhatIsExpectedAsOftenAsSaid(int earlier) {
        SplittableRandom random = new SplittableRandom(5);
        int runs = 4_000;
        int outside = 0;
        for (int run = 0; run < runs; run++) {
            double[] values = new double[earlier + 1];
            Arrays.setAll(values, i -> 7 + 2 * random.nextGaussian());
            Interval expected = Chart.of(values).expected(earlier, 0.9).orElseThrow();
            outside +=
                    values[earlier] < expected.lower() || values[earlier] > expected.upper()
                            ? 1
                            : 0;
        }
        assertEquals(0.1, (double) outside / runs, 4 * Math.sqrt(0.09 / runs));
    }
}
