package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.decide.Limits;
import rigside.decide.Verdict;
import rigside.session.Event;
import rigside.session.Look;
import rigside.session.Place;
import rigside.session.Stage;

class AnalysisTest {

    private static final Map<String, Verdict> VERDICTS =
            Map.of(
                    "meaningful", Verdict.MEANINGFUL_DIFFERENCE,
                    "no meaningful", Verdict.NO_MEANINGFUL_DIFFERENCE,
                    "difference", Verdict.DIFFERENCE_SIZE_UNSETTLED,
                    "open", Verdict.NOT_SETTLED);

    /**
     * Sequences made with NumPy and the quadrature of the reference scripts; source in the file.
     */
    static Stream<Named<JsonNode>> workedSequences() throws IOException {
        try (InputStream in =
                AnalysisTest.class.getResourceAsStream("/rigside/decide/worked_sequences.json")) {
            List<JsonNode> entries = new ArrayList<>();
            new ObjectMapper().readTree(in).get("entries").forEach(entries::add);
            return entries.stream()
                    .map(
                            each ->
                                    Named.of(
                                            each.get("kind").textValue()
                                                    + " "
                                                    + each.get("n_min")
                                                    + " to "
                                                    + each.get("n_max")
                                                    + ", "
                                                    + each.get("ratio"),
                                            each));
        }
    }

    @ParameterizedTest
    @MethodSource("workedSequences")
    void aWholeSessionGivesEveryLookOfAWorkedSequence(JsonNode entry) {
        Bench bench =
                Bench.with(
                        Map.of(
                                "fewest: 3\n  most: 10",
                                plan(entry),
                                "meaningful: 10 %",
                                "meaningful: " + entry.get("ratio") + " times"));
        int look = 0;
        boolean settled = false;
        for (int round = 1; round <= entry.get("n_max").intValue(); round++) {
            bench.round(
                    round,
                    entry.get("A").get(round - 1).doubleValue(),
                    entry.get("B").get(round - 1).doubleValue());
            Comparison comparison = bench.comparison("inhalation");
            if (round < entry.get("n_min").intValue()) {
                assertEquals(Verdict.TOO_FEW_ROUNDS, comparison.verdict());
                assertTrue(comparison.interval().isEmpty());
                continue;
            }
            JsonNode expected = entry.get("looks").get(look++);
            // The file has 10 digits of estimate and standard error and 7 of c, which carries its
            // own quadrature error of 4.1e-7 relative.
            assertEquals(
                    expected.get("ratio").doubleValue(), comparison.estimate().orElseThrow(), 1e-8);
            Limits limits = comparison.interval().orElseThrow();
            assertEquals(1, limits.low() / expected.get("ratio_lower").doubleValue(), 1e-6);
            assertEquals(1, limits.high() / expected.get("ratio_upper").doubleValue(), 1e-6);
            assertEquals(
                    1, comparison.critical().orElseThrow() / expected.get("c").doubleValue(), 1e-6);
            Verdict verdict = VERDICTS.get(expected.get("verdict").textValue());
            assertEquals(verdict, comparison.present());
            if (!settled) {
                assertEquals(verdict, comparison.verdict());
            }
            settled |= verdict.settled();
            assertEquals(settled, bench.state().captured().lastLook().orElseThrow().enough());
        }
        assertTrue(bench.state().captured().lastLook().orElseThrow().planUsedUp());
        assertEquals(entry.get("looks").size(), look);
    }

    private static String plan(JsonNode entry) {
        return "fewest: "
                + entry.get("n_min")
                + "\n  most: "
                + entry.get("n_max")
                + "\n  confidence: "
                + Math.round(100 * (1 - entry.get("alpha").doubleValue()))
                + " %"
                + "\n  exponent: "
                + entry.get("rho")
                + (entry.get("kind").textValue().equals("paired") ? "" : "\n  design: independent");
    }

    @Test
    void theSameSessionGivesTheSameAnalysis() {
        Bench bench = Bench.plain().round(1, 5, 5.4).round(2, 5.2, 5.7).round(3, 4.9, 5.6);
        assertEquals(bench.analysis(), bench.analysis());
        assertTrue(bench.comparison("inhalation").forecast().settlesWithinPlan().isPresent());
    }

    @Test
    void eachMeasureHasItsValuesInItsOwnUnit() {
        Bench bench = Bench.plain().start(1, "bare").exercises(20, 80).trials(4, 9).effort(310);
        bench.complete();
        // Harmonic mean of 200 and 50; geometric mean of 4 s and 9 s.
        assertEquals(80, value(bench, "fit"), 1e-9);
        assertEquals(6, value(bench, "inhalation"), 1e-12);
        assertEquals(310, value(bench, "effort"));
        DonningValue fit = bench.measure("fit").values().get(0);
        assertEquals(200, fit.parts().get(0).value().orElseThrow(), 1e-9);
        assertEquals(Level.REACHED, fit.parts().get(0).level());
        assertEquals(Level.MISSED, fit.parts().get(1).level());
        assertEquals(Level.MISSED, fit.level());
    }

    private static double value(Bench bench, String measure) {
        return bench.measure(measure).values().get(0).value().orElseThrow();
    }

    @Test
    void anOpenDonningIsThereButDoesNotCount() {
        Bench bench = Bench.plain().start(1, "bare").exercises(20).trial(0, 5);
        DonningValue open = bench.measure("inhalation").values().get(0);
        assertEquals(Standing.OPEN, open.standing());
        assertEquals(5, open.value().orElseThrow(), 1e-12);
        assertEquals(List.of("trial 2: not captured yet"), open.missing());
        assertEquals(0, bench.measure("inhalation").conditions().get(0).n());
    }

    @Test
    void aFitFactorWithoutOneOfItsExercisesHasNoValueAndSaysWhy() {
        Bench bench = Bench.plain().start(1, "bare").exercises(20).trials(5, 5).effort(300);
        bench.voided(3).complete();
        DonningValue value = bench.measure("fit").values().get(0);
        assertEquals(Standing.WITHOUT_VALUE, value.standing());
        assertEquals(List.of("Head up and down: struck out: the mask moved"), value.missing());
        assertTrue(bench.measure("inhalation").values().get(0).counts());
    }

    @Test
    void aRoundWithoutAValueIsLeftOutAndSaid() {
        Bench bench = Bench.plain().round(1, 5, 5.5);
        bench.start(2, "bare").exercises(20).trials(5, 5).complete();
        bench.donning(2, "disc", 20, 5.5, 300).round(3, 5.1, 5.6);
        Comparison effort = bench.comparison("effort");
        assertEquals(2, effort.n());
        assertEquals(Verdict.TOO_FEW_ROUNDS, effort.verdict());
        assertTrue(Bench.says(effort.remarks(), "round 2"), effort.remarks().toString());
        assertEquals(3, bench.comparison("inhalation").n());
    }

    @Test
    void conditionsAreSummarisedOnTheScaleTheyAreComparedOn() {
        Bench bench = Bench.plain().round(1, 4, 5).round(2, 9, 5);
        ConditionSummary bare = bench.measure("inhalation").conditions().get(0);
        assertEquals(List.of(4.0, 9.0), bare.values().stream().map(AnalysisTest::to9).toList());
        assertEquals(6, bare.mean().orElseThrow(), 1e-12);
        // ln 9 - ln 4 = 0.8109302162; standard deviation of two values: difference / sqrt 2.
        double sd = 0.8109302162163288 / Math.sqrt(2);
        assertEquals(Math.exp(sd), bare.spread().orElseThrow(), 1e-12);
        assertEquals(Math.sqrt(Math.expm1(sd * sd)), bare.variation().orElseThrow(), 1e-12);
        ConditionSummary effort = bench.measure("effort").conditions().get(0);
        assertFalse(effort.geometric());
        assertEquals(300, effort.mean().orElseThrow());
        assertEquals(0, effort.spread().orElseThrow());
    }

    private static double to9(double value) {
        return Math.rint(value * 1e9) / 1e9;
    }

    @Test
    void threeConditionsShareTheError() {
        Bench bench = threeConditions();
        for (int round = 1; round <= 4; round++) {
            bench.donning(round, "bare", 20, 5 + round * 0.1, 300)
                    .donning(round, "disc", 20, 6 + round * 0.13, 300)
                    .donning(round, "felt", 20, 5 + round * 0.11, 300)
                    .look();
        }
        List<Comparison> both = bench.measure("inhalation").comparisons();
        assertEquals(List.of("disc", "felt"), both.stream().map(Comparison::condition).toList());
        // sequential_t_paired.json has no alpha of .025; two-sided t quantile of the error accrued
        // at the third round of ten, 0.025 * 0.3^2 = 0.00225: R 4.x, qt(1 - 0.00225/2, 2) from the
        // closed form of two degrees of freedom, t = (1 - p) sqrt(2 / (p (2 - p))).
        double p = 0.025 * 0.3 * 0.3;
        Bench three = threeConditions();
        for (int round = 1; round <= 3; round++) {
            three.donning(round, "bare", 20, 5 + round * 0.1, 300)
                    .donning(round, "disc", 20, 6 + round * 0.13, 300)
                    .donning(round, "felt", 20, 5 + round * 0.11, 300);
        }
        assertEquals(
                (1 - p) * Math.sqrt(2 / (p * (2 - p))),
                three.comparison("inhalation").critical().orElseThrow(),
                1e-7);
        assertEquals(3, bench.measure("inhalation").conditions().size());
        assertTrue(bench.measure("inhalation").promise().contains("both comparisons"));
    }

    private static Bench threeConditions() {
        return Bench.with(
                Map.of(
                        "measures:\n",
                        """
                          - id: felt
                            title: the mask with felt
                            specimen: {piece: mask 1 and felt 1, worn-before: 0}
                            particle-reading: seal-only
                        measures:
                        """));
    }

    @Test
    void failedChecksAndBrokenOffDonningsStandBesideTheVerdict() {
        Bench bench = Bench.plain().start(1, "disc");
        bench.take(new Event.ItemFailed(new Place(Stage.DONNING, 1, 0), 0));
        bench.take(new Event.DonningAbandoned(1, "air at the chin"));
        bench.round(1, 5, 5.5);
        ConditionSummary disc = bench.measure("inhalation").conditions().get(1);
        assertEquals(List.of("donning 1: The seal check holds"), disc.failedChecks());
        assertEquals(List.of("donning 1: air at the chin"), disc.abandoned());
        assertEquals(1, disc.n());
        assertTrue(
                Bench.says(
                        bench.comparison("inhalation").remarks(),
                        "The mask with disc: 1 failed check and 1 donning broken off."));
    }

    @Test
    void oneRoundGivesNoIntervalAndNoForecast() {
        Comparison comparison = Bench.plain().round(1, 5, 5.5).comparison("inhalation");
        assertEquals(1.1, comparison.estimate().orElseThrow(), 1e-12);
        assertTrue(comparison.interval().isEmpty());
        assertTrue(comparison.forecast().settlesWithinPlan().isEmpty());
        assertEquals(
                "The mask with disc, compared with the bare mask: inhaling takes 1.10 times as long"
                        + " so far. Too few for an interval: 1 of at least 3 rounds.",
                comparison.sentence());
        assertEquals(
                "Too early to say, the first look comes after 2 more rounds.", comparison.next());
    }

    @Test
    void aLookCarriesTheNumbersOfEachComparison() {
        Bench bench = Bench.plain().round(1, 12.1, 14.6).round(2, 11.4, 13.5).round(3, 12.8, 15.2);
        Look look = bench.state().captured().lastLook().orElseThrow();
        assertEquals(3, look.round());
        assertFalse(look.enough());
        Look.Line line = look.lines().get(1);
        assertEquals("inhalation", line.measure());
        assertEquals("disc", line.condition());
        assertEquals(3, line.n());
        assertEquals("difference-size-unsettled", line.verdict());
        assertEquals(12, line.entries().size());
        Comparison comparison = bench.comparison("inhalation");
        assertEquals(comparison.interval().orElseThrow().low(), line.low().orElseThrow());
    }

    @Test
    void measuresThatDoNotDecideDoNotKeepTheSessionGoing() {
        Bench bench = Bench.plain();
        bench.round(1, 12.1, 14.6).round(2, 11.4, 13.5).round(3, 12.8, 15.2).round(4, 12, 14.7);
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, bench.comparison("inhalation").verdict());
        assertFalse(bench.comparison("fit").isSettled());
        assertTrue(bench.analysis().isEnough());
    }

    @Test
    void equalDifferencesBelowTheResolutionSettleNothing() {
        Bench bench = Bench.plain().round(1, 5, 6).round(2, 5, 6).round(3, 5, 6);
        Comparison comparison = bench.comparison("inhalation");
        assertTrue(comparison.atResolution());
        assertEquals(Verdict.NOT_SETTLED, comparison.verdict());
        assertTrue(comparison.next().contains("read them finer"), comparison.next());
    }

    @Test
    void eachTrialStandsForItselfWhereThePlanSaysSo() {
        Bench bench =
                Bench.with(
                        Map.of(
                                "fewest: 3\n  most: 10",
                                "fewest: 3\n  most: 9\n  design: independent\n  replicates: trials"));
        bench.start(1, "bare").exercises(20).trials(5, 5.2).effort(300).complete();
        bench.start(1, "disc").exercises(20).trials(6, 6.3).effort(300).complete().look();
        assertEquals(Verdict.TOO_FEW_ROUNDS, bench.comparison("inhalation").verdict());
        bench.start(2, "bare").exercises(20).trials(5.1, 4.9).effort(300).complete();
        bench.start(2, "disc").exercises(20).trials(6.1, 5.8).effort(300).complete().look();
        Comparison comparison = bench.comparison("inhalation");
        assertEquals(4, comparison.n());
        assertTrue(comparison.interval().isPresent());
        assertTrue(Bench.says(comparison.remarks(), "these donnings only"));
        assertEquals(2, bench.comparison("effort").n(), "other measures count donnings");
        bench.round(3, 5, 6).round(4, 5, 6);
        assertTrue(
                bench.comparison("inhalation").planUsedUp(),
                "four rounds give eight values, a fifth would go beyond nine");
    }

    @Test
    void aLostTrialCostsItsOwnValueOnly() {
        Bench bench =
                Bench.with(
                        Map.of(
                                "fewest: 3\n  most: 10",
                                "fewest: 2\n  most: 8\n  design: independent\n  replicates: trials"));
        bench.start(1, "bare").exercises(20).trial(0, 5).effort(300).complete();
        bench.start(1, "disc").exercises(20).trials(6, 6.3).effort(300).complete().look();
        Comparison first = bench.comparison("inhalation");
        assertEquals(1, first.n());
        assertEquals(Math.sqrt(6 * 6.3) / 5, first.estimate().orElseThrow(), 1e-12);
        // 1 and 2 values where 2 and 2 of 8 and 8 were planned: a quarter of the information, so
        // 0.05 / 16 is spent. With 1 degree of freedom the quantile of t is
        // tan(pi / 2 (1 - alpha)), the Cauchy one.
        assertEquals(
                Math.tan(Math.PI / 2 * (1 - 0.05 / 16)),
                first.critical().orElseThrow(),
                1e-9 * first.critical().orElseThrow());
        bench.start(2, "bare").exercises(20).trials(5.1, 4.9).effort(300).complete();
        bench.start(2, "disc").exercises(20).trials(6.1, 5.8).effort(300).complete().look();
        Comparison second = bench.comparison("inhalation");
        assertEquals(3, second.n());
        assertEquals(
                Math.pow(6 * 6.3 * 6.1 * 5.8, 0.25) / Math.cbrt(5 * 5.1 * 4.9),
                second.estimate().orElseThrow(),
                1e-12);
        bench.round(3, 5, 6).round(4, 5, 6);
        assertEquals(7, bench.comparison("inhalation").n());
        assertTrue(bench.comparison("inhalation").planUsedUp());
    }

    @Test
    void noChangeInTheOneDirectionThatMattersNamesItsLimit() {
        String matters = "meaningful: 10 %\n    matters: ";
        Bench fall = Bench.with(Map.of("meaningful: 10 %", matters + "decrease"));
        Bench rise = Bench.with(Map.of("meaningful: 10 %", matters + "increase"));
        double[] disc = {5.02, 4.99, 5.03, 5.0, 4.98};
        for (int round = 1; round <= 5; round++) {
            fall.round(round, 5, disc[round - 1]);
            rise.round(round, 5, disc[round - 1]);
        }
        String sentence = fall.comparison("inhalation").sentence();
        assertTrue(sentence.endsWith(", all above 0.909): no meaningful decrease."), sentence);
        sentence = rise.comparison("inhalation").sentence();
        assertTrue(sentence.endsWith(", all below 1.10): no meaningful increase."), sentence);
    }

    @Test
    void noBoundFromTheSpreadIsGivenWhereAFitFactorIsOnlyBounded() {
        Bench bench = Bench.plain().round(1, 5, 5.5);
        bench.donning(2, "bare", 25, 5, 300).donning(3, "bare", 1, 5, 300);
        bench.take(new Event.RepeatsEnded("enough"));
        assertTrue(
                Bench.says(
                        bench.measure("fit").remarks(),
                        "The bare mask: no share by mean and spread, since some fit factors are only"
                                + " known as \"at least\"."),
                bench.measure("fit").remarks().toString());
    }

    @Test
    void moreInhalationsAreAdvisedAgainstWhenDonningsDiffer() {
        Bench bench = Bench.plain().round(1, 5, 5.5).round(2, 6, 5.9).round(3, 5.2, 6.2);
        assertTrue(
                Bench.says(
                        bench.comparison("inhalation").remarks(),
                        "More inhalations in this donning will not help"));
    }

    @Test
    void breathingAndSealAreReportedTogether() {
        Bench bench = Bench.plain().vitalCapacity(4.5).round(1, 9, 10);
        List<String> remarks = bench.measure("inhalation").remarks();
        // 4.5 L in 9 s are 30 L/min; 250 Pa over 0.5 L/s are 500 Pa s/L; 85 L/min then 708 Pa.
        assertTrue(
                Bench.says(
                        remarks,
                        "The bare mask: mean flow 30.0 L/min, resistance 500 Pa s/L; estimated"
                                + " pressure drop at 85 L/min 708 Pa (an estimate"),
                remarks.toString());
        // 4000 outside, 20 inside: fit factor 200.
        assertTrue(Bench.says(remarks, "up to about 0.500 %"), remarks.toString());
        assertFalse(Bench.says(remarks, "Warning"));
    }

    @Test
    void aLeakAboveTwoPercentIsWarnedOf() {
        Bench bench = Bench.plain().donning(1, "bare", 100, 9, 300);
        assertTrue(Bench.says(bench.measure("inhalation").remarks(), "2.50 %"));
        assertTrue(Bench.says(bench.measure("inhalation").remarks(), "Warning"));
    }

    @Test
    void aReadingThatHoldsTheFilterTooIsSaid() {
        assertTrue(
                Bench.says(
                        Bench.plain().measure("fit").remarks(),
                        "(the mask with disc): the fit factor then mixes seal and filter"));
    }

    @Test
    void donningsThatReachTheLevelAreCounted() {
        Bench bench =
                Bench.plain()
                        .donning(1, "bare", 20, 5, 300)
                        .donning(2, "bare", 80, 5, 300)
                        .donning(3, "bare", 30, 5, 300);
        assertTrue(
                Bench.says(
                        bench.measure("fit").remarks(),
                        "The bare mask: 2 of 3 donnings reach the required fit factor 100 in every"
                                + " exercise."));
    }

    @Test
    void howOftenTheLevelWouldBeReachedIsSaidAtTheEndOnly() {
        Bench bench = Bench.plain().round(1, 5, 5.5);
        bench.donning(2, "bare", 25, 5, 300).donning(3, "bare", 16, 5, 300);
        assertFalse(Bench.says(bench.measure("fit").remarks(), "for one look"));
        bench.take(new Event.RepeatsEnded("enough"));
        // 3 of 3: lower limit .05^(1/3) = .368. Fit factors 200, 160, 250: mean ln 5.2983,
        // sd ln .2231, factor for n = 3, 90 %, 95 %: 6.155 (ISO 16269-6, one-sided), so
        // exp(5.2983 - 6.155 * .2231) = 50.6. The level is t = 5.380 standard errors below the
        // mean;
        // the noncentral t with 2 degrees of freedom is below it with .95 at shift .8212, which
        // over
        // sqrt 3 is a share of .682 (SciPy 1.17.1 stats.nct).
        List<String> remarks = bench.measure("fit").remarks();
        for (String each :
                List.of(
                        "The bare mask: at least 37 % of donnings reach 100, by their count (95 %"
                                + " confidence).",
                        "The bare mask: at least 68 % of donnings reach an overall 100, by mean and"
                                + " spread (95 % confidence).",
                        "The bare mask: at least 90 % of donnings reach an overall 50.6, by mean and"
                                + " spread (95 % confidence).",
                        "Each of these shares of donnings holds by itself with its confidence, not"
                                + " all of them together, and for one look, not for looking after"
                                + " every round. Those by mean and spread take it that the"
                                + " logarithms of fit factors spread normally.")) {
            assertTrue(remarks.contains(each), remarks.toString());
        }
    }

    @Test
    void moreInhalationsAreAdvisedWhenTheyDifferWithinADonning() {
        Bench bench =
                Bench.with(
                        Map.of(
                                "most: 10",
                                "most: 10\n  donning-takes: 10 min\n  trial-takes: 1 min"));
        double[][] bare = {{5, 6.1}, {6, 5}, {5.1, 6}};
        double[][] disc = {{6, 7.4}, {6.9, 5.4}, {6.2, 7.9}};
        for (int round = 1; round <= 3; round++) {
            bench.start(round, "bare").exercises(20);
            bench.trials(bare[round - 1][0], bare[round - 1][1]).effort(300).complete();
            bench.start(round, "disc").exercises(20);
            bench.trials(disc[round - 1][0], disc[round - 1][1]).effort(300).complete().look();
        }
        assertTrue(
                Bench.says(
                        bench.comparison("inhalation").remarks(),
                        "a plan with more of them in each donning would settle sooner; for the time"
                                + " they take, as many trials a donning as do not tire, up to 10,"
                                + " would tell most"),
                bench.comparison("inhalation").remarks().toString());
    }
}
