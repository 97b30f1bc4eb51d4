package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ForecastsTest {

    private static final OptionalDouble NO_SPREAD = OptionalDouble.empty();
    private static final Band BAND = Bands.symmetric(Math.log(1.1));

    private static RandomGenerator random() {
        return new SplittableRandom(20260101);
    }

    @Test
    void withoutSpreadNothingIsSaid() {
        Rules rules = paired(3, 10);
        assertEquals(
                Forecast.SILENT,
                Forecasts.paired(rules, new double[0], OptionalDouble.of(0.1), random()));
        assertEquals(
                Forecast.SILENT, Forecasts.paired(rules, new double[] {0.2}, NO_SPREAD, random()));
        Rules independent = rules(Schedule.independent(3, 10), Matters.EITHER);
        double[] one = {1};
        assertEquals(
                Forecast.SILENT, Forecasts.independent(independent, one, one, NO_SPREAD, random()));
        assertEquals(
                Forecast.SILENT,
                Forecasts.independent(independent, new double[0], one, NO_SPREAD, random()));
        assertEquals(
                Forecast.SILENT,
                Forecasts.independent(independent, one, new double[0], NO_SPREAD, random()));
    }

    @Test
    void oneRoundAndAnExpectedSpreadGiveAForecast() {
        Forecast forecast =
                Forecasts.paired(
                        paired(3, 10), new double[] {0.5}, OptionalDouble.of(0.03), random());
        assertTrue(forecast.settlesWithinPlan().getAsDouble() > 0.99);
        assertTrue(forecast.meaningful() > 0.99);
    }

    /**
     * With one value and a known spread, one look at two values: the second difference d2 decides.
     * Mean (d1+d2)/2 and half width c |d1-d2|/2 are above the band from d2 = d1 down to the root of
     * the lower limit, and up to the other root; d2 is normal about d1 with variance 2 sigma^2.
     */
    @Test
    void oneValueAndAKnownSpreadAgreeWithTheNormalPredictive() {
        Rules rules = paired(2, 2);
        double d1 = 1;
        double sigma = 0.02 * Math.sqrt(2);
        double c = StudentT.upperQuantile(0.025, 1);
        double high = Math.log(1.1);
        // Below d1: (d1+d2)/2 - c (d1-d2)/2 > high; above: (d1+d2)/2 - c (d2-d1)/2 > high.
        double from = (2 * high - d1 + c * d1) / (1 + c);
        double to = (d1 + c * d1 - 2 * high) / (c - 1);
        double sd = Math.sqrt(2) * sigma;
        double exact =
                StudentT.upperTail((from - d1) / sd, 1e9) - StudentT.upperTail((to - d1) / sd, 1e9);
        Forecast forecast =
                Forecasts.paired(rules, new double[] {d1}, OptionalDouble.of(0.02), random());
        assertBinomial(exact, forecast.settlesWithinPlan().getAsDouble());
    }

    /**
     * One look, one value short of it: which next values settle is found by scanning, and the next
     * value is mean + s sqrt(1 + 1/n) t(n-1).
     */
    @ParameterizedTest(name = "estimate near {0}, spread {1}, {2} matters")
    @CsvSource({
        "0.3, 0.05, EITHER",
        "0.0, 0.04, EITHER",
        "0.12, 0.05, INCREASE",
        "-0.3, 0.1, DECREASE",
        "0.05, 0.01, EITHER",
        "-0.2, 0.1, INCREASE"
    })
    void oneLookAwayTheChanceIsThatOfThePredictiveT(double centre, double size, Matters matters) {
        double[] shape = {-1, 0.3, 1.2, -0.5};
        double[] d = Arrays.stream(shape).map(x -> centre + size * x).toArray();
        Rules rules = rules(Schedule.paired(List.of(5)), matters);
        double mean = Sample.mean(d);
        double scale = Math.sqrt(Sample.squares(d) / 3) * Math.sqrt(1 + 1.0 / 4);
        int steps = 200_000;
        double exact = 0;
        for (int i = 0; i < steps; i++) {
            // Cells of equal predictive probability; the edge cells carry the error, 1e-5.
            double t = StudentTTable.AT[i];
            double[] next = Arrays.copyOf(d, 5);
            next[4] = mean + scale * t;
            if (Sequential.paired(rules, next).verdict().settled()) {
                exact += 1.0 / steps;
            }
        }
        Forecast forecast = Forecasts.paired(rules, d, NO_SPREAD, random());
        assertBinomial(exact, forecast.settlesWithinPlan().getAsDouble());
        assertEquals(
                forecast.settlesWithinPlan().getAsDouble(),
                forecast.meaningful() + forecast.noMeaningful(),
                1e-12);
    }

    /** Medians of 200 000 cells of equal probability under t with 3 degrees of freedom. */
    private static final class StudentTTable {
        static final double[] AT = at(200_000);

        private static double[] at(int steps) {
            // t3 has a closed distribution function: 1/2 + (x + sin x cos x)/pi, x = atan(t/sqrt3).
            double[] at = new double[steps];
            double x = -Math.PI / 2;
            for (int i = 0; i < steps; i++) {
                double wanted = ((i + 0.5) / steps - 0.5) * Math.PI;
                double low = x;
                double high = Math.PI / 2;
                for (int k = 0; k < 60; k++) {
                    double middle = (low + high) / 2;
                    if (middle + Math.sin(middle) * Math.cos(middle) < wanted) {
                        low = middle;
                    } else {
                        high = middle;
                    }
                }
                x = low;
                at[i] = Math.sqrt(3) * Math.tan(x);
            }
            return at;
        }
    }

    /**
     * Half of many values seen, one look at the end: the power formula for a known spread. The
     * final mean is normal about the present one with variance sigma^2 / n_final when half is seen
     * (predictive power; Jennison and Turnbull 2000, chapter 10, from memory). Not knowing sigma
     * moves it by less than 0.003.
     */
    @ParameterizedTest(name = "mean {0} above the edge in final standard errors, {1} matters")
    @CsvSource({"2.5, INCREASE", "1.0, INCREASE", "-1.5, INCREASE", "-2.5, DECREASE", "0, EITHER"})
    void halfWayThroughManyValuesTheChanceIsThatOfThePowerFormula(
            double distance, Matters matters) {
        int seen = 200;
        int all = 2 * seen;
        double error = 1 / Math.sqrt(all);
        Rules rules =
                new Rules(Schedule.paired(List.of(all)), 0.05, 2, Bands.symmetric(1), matters, 0);
        double edge = matters == Matters.DECREASE ? -1 : 1;
        double[] d = new double[seen];
        // Mean and standard deviation exactly as wished.
        double size = Math.sqrt((seen - 1.0) / seen);
        Arrays.setAll(d, i -> edge + distance * error + (i % 2 == 0 ? size : -size));
        double c = rules.criticalValues()[0];
        double above = NoncentralT.normalUpper(c - distance);
        double below = NoncentralT.normalUpper(c + distance);
        Forecast forecast = Forecasts.paired(rules, d, NO_SPREAD, random());
        double exact = above + below;
        assertEquals(
                exact,
                forecast.settlesWithinPlan().getAsDouble(),
                4 * Math.sqrt(exact * (1 - exact) / 10_000) + 0.003);
        double meaningful = matters == Matters.DECREASE ? below : above;
        assertEquals(
                meaningful,
                forecast.meaningful(),
                4 * Math.sqrt(meaningful * (1 - meaningful) / 10_000) + 0.003);
    }

    @Test
    void aSettledQuestionNeedsNothingMore() {
        double[] d = {0.3, 0.301, 0.299};
        Forecast forecast = Forecasts.paired(paired(3, 10), d, NO_SPREAD, random());
        assertEquals(
                new Forecast(
                        OptionalDouble.of(1),
                        OptionalDouble.of(1),
                        OptionalInt.of(0),
                        OptionalInt.of(0),
                        OptionalInt.of(0),
                        1,
                        0,
                        OptionalInt.empty()),
                forecast);
    }

    @Test
    void aPlanUsedUpSaysWhatANewOneWouldNeed() {
        double[] d = {0.3, 0.05, 0.3, 0.15};
        Forecast forecast = Forecasts.paired(paired(3, 4), d, NO_SPREAD, random());
        assertEquals(0, forecast.settlesWithinPlan().getAsDouble());
        assertEquals(OptionalInt.empty(), forecast.median());
        assertTrue(forecast.needed().getAsInt() > 4);
    }

    /** The change seen stands so near the edge that it would take more rounds than a plan has. */
    @Test
    void moreRoundsThanAPlanMayHaveAreNotNamed() {
        double[] d = {0.2, 0.0, 0.25, 0.1};
        Forecast forecast = Forecasts.paired(paired(3, 4), d, NO_SPREAD, random());
        assertEquals(OptionalInt.empty(), forecast.needed());
    }

    @Test
    void aLookThatLostRoundsPutOutOfReachSettlesNothing() {
        double[] d = {0.25, 0.22, 0.28};
        Forecast all = Forecasts.paired(paired(3, 10), d, NO_SPREAD, random());
        Forecast fewer = Forecasts.paired(paired(3, 10), d, 5, NO_SPREAD, random());
        Forecast none = Forecasts.paired(paired(3, 10), d, 3, NO_SPREAD, random());
        assertEquals(all.nextLook(), fewer.nextLook());
        assertTrue(fewer.settlesWithinPlan().getAsDouble() < all.settlesWithinPlan().getAsDouble());
        assertTrue(fewer.settlesWithinPlan().getAsDouble() > fewer.nextLook().getAsDouble());
        assertEquals(OptionalDouble.of(0), none.settlesWithinPlan());
        assertEquals(OptionalInt.empty(), none.median());
    }

    @Test
    void ofManyLooksTheNextOneHasItsOwnChance() {
        double[] d = {0.25, 0.22, 0.28};
        Forecast all = Forecasts.paired(paired(3, 10), d, NO_SPREAD, random());
        Forecast two = Forecasts.paired(paired(3, 4), d, NO_SPREAD, random());
        assertEquals(
                two.settlesWithinPlan().getAsDouble(), two.nextLook().getAsDouble(), "one look");
        assertTrue(all.nextLook().getAsDouble() < all.settlesWithinPlan().getAsDouble());
        assertTrue(all.nextLook().getAsDouble() > 0);
    }

    @Test
    void figuresBeyondThePlanAreEmpty() {
        double[] d = {0.1, 0.3, 0.22};
        Forecast forecast = Forecasts.paired(paired(3, 6), d, NO_SPREAD, random());
        double settles = forecast.settlesWithinPlan().getAsDouble();
        assertTrue(settles > 0.1 && settles < 0.9, "settles " + settles);
        assertTrue(forecast.low().isPresent());
        assertTrue(forecast.high().isEmpty());
    }

    @Test
    void furtherRoundsAreCountedFromTheRoundsThereAre() {
        // Fewest 5: with two tight rounds at least three more are needed.
        Forecast forecast =
                Forecasts.paired(
                        paired(5, 20),
                        new double[] {0.5, 0.5001},
                        OptionalDouble.empty(),
                        random());
        assertEquals(OptionalInt.of(3), forecast.low());
        assertEquals(OptionalInt.of(3), forecast.median());
    }

    @Test
    void theLikelyVerdictIsTheOneMostCampaignsEndWith() {
        double[] d = {0.001, -0.004, 0.005, 0.02, -0.02, 0.04};
        Forecast forecast =
                Forecasts.paired(
                        new Rules(
                                Schedule.paired(List.of(7, 8, 9, 10)),
                                0.05,
                                2,
                                BAND,
                                Matters.EITHER,
                                0),
                        d,
                        NO_SPREAD,
                        random());
        assertTrue(forecast.noMeaningful() > 0.9);
    }

    @ParameterizedTest
    @EnumSource(Matters.class)
    void independentArmsForecastToo(Matters matters) {
        double[] a = {1.0, 1.1, 0.95};
        double[] b = {2.0, 2.05, 2.1, 1.9};
        Rules rules = rules(Schedule.independent(5, 10), matters);
        Forecast forecast = Forecasts.independent(rules, a, b, NO_SPREAD, random());
        assertEquals(OptionalInt.of(2), forecast.low());
        assertTrue(forecast.settlesWithinPlan().getAsDouble() > 0.95);
    }

    @Test
    void theSameSeedGivesTheSameForecast() {
        double[] d = {0.1, 0.3, 0.22};
        assertEquals(
                Forecasts.paired(paired(3, 10), d, NO_SPREAD, random()),
                Forecasts.paired(paired(3, 10), d, NO_SPREAD, random()));
    }

    /** A promise of "about": the plan it names is played with the truth it was told. */
    @ParameterizedTest(name = "true difference {0}, spread {1}, {2}")
    @CsvSource({
        "0.25, 0.15, PAIRED",
        "0.0, 0.1, PAIRED",
        "-0.3, 0.3, PAIRED",
        "0.2, 0.1, INDEPENDENT"
    })
    void theRoundsNeededSettleAboutEightOfTen(double truth, double spread, Schedule.Design design) {
        boolean paired = design == Schedule.Design.PAIRED;
        Rules present = paired ? paired(3, 8) : rules(Schedule.independent(3, 8), Matters.EITHER);
        int needed = new Needed(present, truth, spread).rounds(0.8).getAsInt();
        Rules longer =
                paired ? paired(3, needed) : rules(Schedule.independent(3, needed), Matters.EITHER);
        Campaign campaign = new Campaign(longer, new double[0], new double[0], truth);
        RandomGenerator random = random();
        int settled = 0;
        for (int i = 0; i < 4000; i++) {
            campaign.play(0, truth, spread, false, random);
            settled += campaign.settledAt() >= 0 ? 1 : 0;
        }
        assertEquals(0.8, settled / 4000.0, 0.06, needed + " rounds");
    }

    private static Rules paired(int fewest, int most) {
        return rules(Schedule.paired(fewest, most), Matters.EITHER);
    }

    private static Rules rules(Schedule schedule, Matters matters) {
        return new Rules(schedule, 0.05, 2, BAND, matters, 0);
    }

    /** Within four standard errors of 10 000 campaigns. */
    private static void assertBinomial(double exact, double simulated) {
        assertEquals(exact, simulated, 4 * Math.sqrt(exact * (1 - exact) / 10_000) + 1e-5);
    }
}
