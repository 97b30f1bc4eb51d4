package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import rigside.decide.Verdict;

/** What the last digit of a particle counter can hide in a fit factor. */
class FitResolutionTest {
    private static final String LIMIT = "detection-limit: 2 /cm3";

    @Test
    void aMaskThatAlwaysReadsOneDigitOrTwoSettlesNothing() {
        // 0.1 against 0.2 /cm3 with an ambient that wanders: twice, as far as one digit can tell.
        Bench bench =
                Bench.with(Map.of(LIMIT, "detection-limit: 0.01 /cm3", "2 times", "1.2 times"));
        for (int round = 1; round <= 5; round++) {
            double ambient = 4000 + 7 * (round % 3);
            sampled(bench, round, "bare", ambient, 0.1);
            sampled(bench, round, "disc", ambient + 5, 0.2);
        }
        Comparison comparison = bench.comparison("fit");
        assertTrue(comparison.atResolution());
        assertEquals(Verdict.NOT_SETTLED, comparison.verdict());
        // One step of 0.1 is all of 0.1 and half of 0.2.
        DonningValue first = bench.measure("fit").values().get(0);
        assertEquals(1, first.resolution(), 1e-12);
        assertEquals(0.5, bench.measure("fit").values().get(1).resolution(), 1e-12);
    }

    @Test
    void smallFitFactorsOfReadingsWithThreeDigitsSettle() {
        // Fit factors near 5 and 10, mask readings to the whole number: a step is 1 part in 400.
        Bench bench = Bench.with(Map.of("2 times", "1.2 times"));
        double[] bare = {801, 795, 803, 798, 806};
        double[] disc = {403, 398, 401, 397, 402};
        for (int round = 1; round <= 5; round++) {
            sampled(bench, round, "bare", 4000, bare[round - 1]);
            sampled(bench, round, "disc", 4000, disc[round - 1]);
        }
        Comparison comparison = bench.comparison("fit");
        assertFalse(comparison.atResolution());
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, comparison.verdict());
    }

    @Test
    void theStepTheProtocolDeclaresGoesBeforeTheLastDigit() {
        Bench bench = Bench.with(Map.of(LIMIT, LIMIT + "\n    resolution: 5 /cm3"));
        sampled(bench, 1, "bare", 4000, 40);
        assertEquals(5 / 40.0, bench.measure("fit").values().get(0).resolution(), 1e-12);
    }

    private static void sampled(
            Bench bench, int round, String condition, double ambient, double mask) {
        bench.start(round, condition)
                .sampled(ambient, mask, mask)
                .trials(5, 5)
                .effort(300)
                .complete();
    }
}
