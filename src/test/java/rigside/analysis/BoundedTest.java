package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import rigside.decide.Forecast;
import rigside.decide.Verdict;

/** Fit factors the counter only bounds; the detection limit is 2 /cm3, ambient 4000. */
class BoundedTest {

    @Test
    void aMaskAtTheDetectionLimitGivesAtLeast() {
        Bench bench = Bench.plain().start(1, "bare").exercises(1, 8).trials(5, 5).effort(300);
        DonningValue value = bench.complete().measure("fit").values().get(0);
        assertTrue(value.bounded());
        assertFalse(value.unresolved());
        // Penetrations at most 2/4000 and 8/4000: mean 1/800; halved only where bounded: 1/888.9.
        assertEquals(800, value.value().orElseThrow(), 1e-9);
        assertEquals(4000 / 4.5, value.halved().orElseThrow(), 1e-9);
        assertTrue(value.parts().get(0).bounded());
        assertFalse(value.parts().get(1).bounded());
        ConditionSummary bare = bench.measure("fit").conditions().get(0);
        assertTrue(bare.atLeast(), "a mean of lower bounds is one");
        assertFalse(bench.measure("inhalation").conditions().get(0).atLeast());
    }

    @Test
    void aVerdictNeedsBothReadingsOfTheBoundToAgree() {
        // Fit factors near 95 against at least 240, at most 8 % more: either way more than twice.
        Bench agreed = Bench.plain();
        for (int round = 1; round <= 4; round++) {
            agreed.donning(round, "bare", 40.5 + round, 5, 300);
            agreed.start(round, "disc")
                    .exercises(1, 30 + round)
                    .trials(5, 5)
                    .effort(300)
                    .complete();
        }
        Comparison both = agreed.comparison("fit");
        assertTrue(both.boundedAgrees());
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, both.verdict());
        assertTrue(
                Bench.says(both.remarks(), "and at half (a convention), the verdict is the same"));
    }

    @Test
    void atLeastAgainstAtLeastSettlesNothing() {
        Bench bench = Bench.plain();
        for (int round = 1; round <= 4; round++) {
            double ambient = 4000 + 13 * round;
            bench.start(round, "bare").sampled(ambient, 1, 1).trials(5, 5).effort(300).complete();
            bench.start(round, "disc")
                    .sampled(ambient + 31, 1, 1)
                    .trials(5, 5)
                    .effort(300)
                    .complete();
        }
        Comparison comparison = bench.comparison("fit");
        assertFalse(comparison.boundedAgrees());
        assertEquals(Verdict.NOT_SETTLED, comparison.verdict());
        assertTrue(Bench.says(comparison.remarks(), "so their ratio is open"));
    }

    @Test
    void aVerdictReachedBeforeStaysWhenTheCounterResolvesNothingLater() {
        Bench bench = Bench.plain();
        double[] disc = {6.1, 6.3, 6.2, 6.15};
        for (int round = 1; round <= 4; round++) {
            bench.donning(round, "bare", 40 + 0.5 * round, 5, 300);
            bench.donning(round, "disc", disc[round - 1], 5, 300).look();
        }
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, bench.comparison("fit").verdict());
        bench.donning(5, "bare", 1, 5, 300).donning(5, "disc", 1, 5, 300).look();
        Comparison later = bench.comparison("fit");
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, later.verdict());
        assertTrue(later.sentence().startsWith("Settled after 3 rounds as a meaningful increase"));
        assertTrue(later.boundedAgrees());
    }

    @Test
    void whereTheReadingsDisagreeNothingIsSettled() {
        // Fit factors near 950 against at least 2000: meaningful at a factor of 2 only when what is
        // bounded is taken as better than stated.
        Bench bench = Bench.with(Map.of("meaningful: 2 times", "meaningful: 3 times"));
        double[] bare = {4.2, 4.3, 4.1, 4.25, 4.2, 4.15};
        double[] disc = {2.02, 1, 2.04, 1, 2.03, 1};
        for (int round = 1; round <= 6; round++) {
            bench.donning(round, "bare", bare[round - 1], 5, 300);
            bench.donning(round, "disc", disc[round - 1], 5, 300);
        }
        Comparison comparison = bench.comparison("fit");
        assertEquals(Verdict.NO_MEANINGFUL_DIFFERENCE, comparison.present());
        assertFalse(comparison.boundedAgrees());
        assertEquals(Verdict.NOT_SETTLED, comparison.verdict());
        assertTrue(Bench.says(comparison.remarks(), "only known as \"at least\""));
        assertTrue(comparison.next().contains("more ambient particles"), comparison.next());
        assertTrue(
                Bench.says(
                        bench.measure("fit").remarks(),
                        "Donning 4: every exercise was at or below the detection limit"));
    }

    @Test
    void readingsOfTheBoundThatDisagreeOnTheDirectionSettleNothing() {
        // The reference is at least 2000 (4000 with half the bound), the other 2830 as its air is
        // richer: 1.41 times as high or 0.71 times, both beyond 1.1 times.
        Bench bench = Bench.with(Map.of("meaningful: 2 times", "meaningful: 1.1 times"));
        double[] disc = {2.82, 2.83, 2.81, 2.84, 2.85};
        for (int round = 1; round <= 5; round++) {
            double ambient = 4000 + 3 * round;
            bench.start(round, "bare").sampled(ambient, 1, 1).trials(5, 5).effort(300).complete();
            bench.start(round, "disc")
                    .sampled(8000, disc[round - 1], disc[round - 1])
                    .trials(5, 5)
                    .effort(300)
                    .complete();
        }
        Comparison comparison = bench.comparison("fit");
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, comparison.present());
        assertFalse(comparison.boundedAgrees());
        assertEquals(Verdict.NOT_SETTLED, comparison.verdict());
        assertEquals(Forecast.SILENT, comparison.forecast());
    }
}
