package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import rigside.decide.Conclusion;
import rigside.decide.Verdict;
import rigside.session.Event;

/** Amending before and after a look. */
class AmendedTest {
    private static final double[][] TIMES = {
        {12.1, 14.6}, {11.4, 13.5}, {12.8, 15.2}, {12.0, 12.9}
    };

    /** Four rounds with a look after each; the times of the last disc are given. */
    private static Bench rounds(double last) {
        Bench bench = Bench.plain();
        for (int at = 0; at < TIMES.length; at++) {
            bench.round(at + 1, TIMES[at][0], at == 3 ? last : TIMES[at][1]);
        }
        return bench;
    }

    private static Comparison found(Bench bench) {
        return bench.comparison("inhalation");
    }

    @Test
    void amendedBeforeItsLookItIsAsIfItHadBeenTypedSo() {
        Bench bench = rounds(12.9).donning(5, "bare", 20, 11.7, 300);
        bench.start(5, "disc").exercises(20).trials(9, 9).effort(300);
        bench.amended(10, 0, 13.8).amended(10, 1, 13.8).complete().look();
        Bench typed = rounds(12.9).round(5, 11.7, 13.8);
        assertEquals(found(typed), found(bench));
    }

    @Test
    void amendedAfterItsLookTheNumbersAreThoseTypedAndTheVerdictNeedsBoth() {
        Bench bench = rounds(12.9).amended(8, 0, 14.7).amended(8, 1, 14.7).look();
        Comparison typed = found(rounds(14.7));
        Comparison comparison = found(bench);
        assertEquals(typed.estimate(), comparison.estimate());
        assertEquals(typed.interval(), comparison.interval());
        assertEquals(typed.critical(), comparison.critical());
        assertEquals(typed.looks(), comparison.looks());
        assertEquals(typed.entries(), comparison.entries());
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, typed.verdict());
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, comparison.present());
        assertEquals(Verdict.NOT_SETTLED, comparison.verdict());
        assertTrue(comparison.dependsOnStruck());
        assertFalse(bench.state().captured().lastLook().orElseThrow().enough());
        assertTrue(comparison.forecast().settlesWithinPlan().isEmpty());
    }

    @Test
    void itIsSaidWhichEntryWithBothValuesAndWhatTheVerdictWouldBe() {
        Bench bench = rounds(12.9).amended(8, 0, 14.7).look();
        Comparison comparison = found(bench);
        String entry = "entry " + bench.entry(8, 0) + " (time of trial 1, donning 8)";
        assertEquals(
                "Not settled: it depends on an amended entry. As amended and as the look before"
                        + " had it, the verdict differs.",
                comparison.remarks().get(0));
        assertEquals(
                "E"
                        + entry.substring(1)
                        + " was amended from 12.9 s to 14.7 s (misread), after a look: with 12.9 s"
                        + " the verdict would be not settled.",
                comparison.remarks().get(1));
        assertEquals(
                "As amended the verdict would be a difference of unsettled size, with what was"
                        + " there before not settled; it settles once both ways settle alike.",
                comparison.words().change());
        assertTrue(
                bench.measure("inhalation").method().stream()
                        .anyMatch(
                                each ->
                                        each.startsWith("What was amended after a look is analysed")
                                                && each.endsWith(
                                                        entry
                                                                + " was amended from 12.9 s to 14.7"
                                                                + " s (misread).")));
    }

    @Test
    void whatChangesNothingIsSaidTooAndTheVerdictStands() {
        Bench bench = rounds(14.7).amended(8, 0, 14.6).look();
        Comparison comparison = found(bench);
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, comparison.verdict());
        assertFalse(comparison.dependsOnStruck());
        assertTrue(Bench.says(comparison.remarks(), "with 14.7 s the verdict is the same."));
    }

    @Test
    void amendedBackTheFirstVerdictHolds() {
        Bench bench = rounds(14.7);
        Comparison first = found(bench);
        bench.amended(8, 0, 9).look();
        assertEquals(Verdict.NOT_SETTLED, found(bench).verdict());
        bench.amended(8, 0, 14.7).look();
        assertEquals(first, found(bench));
    }

    @Test
    void takenBackTheFirstVerdictHolds() {
        Bench bench = rounds(14.7);
        Comparison first = found(bench);
        bench.amended(8, 0, 9).look();
        bench.take(new Event.AmendmentWithdrawn(bench.entry(8, 0))).look();
        assertEquals(first, found(bench));
    }

    /** Trying values until one settles gains nothing: what the first look had has to agree. */
    @Test
    void amendedAgainAndAgainItIsTheFirstLooksValueThatHasToAgree() {
        Bench bench = rounds(12.9);
        for (double seconds : new double[] {13.5, 14, 14.5, 14.7}) {
            bench.amended(8, 0, seconds).amended(8, 1, seconds).look();
            assertEquals(Verdict.NOT_SETTLED, found(bench).verdict());
        }
        assertTrue(Bench.says(found(bench).remarks(), "from 12.9 s to 14.7 s"));
    }

    @Test
    void amendedAndThenStruckOutItIsTheFirstLooksValueThatIsTakenBackIn() {
        Bench bench = rounds(12.9).amended(8, 0, 14.7).amended(8, 1, 14.7).look();
        bench.voided(bench.entry(8, 0)).look();
        Comparison comparison = found(bench);
        assertEquals(Verdict.NOT_SETTLED, comparison.verdict());
        assertEquals(
                "Not settled: it depends on a struck or an amended entry. As it is and as the look"
                        + " before had it, the verdict differs.",
                comparison.remarks().get(0));
    }

    @Test
    void amendedBeforeTheFewestRoundsCostsNothing() {
        Bench bench = Bench.plain().round(1, 12.1, 9).amended(2, 0, 14.6).amended(2, 1, 14.6);
        bench.look().round(2, 11.4, 13.5).round(3, 12.8, 15.2).round(4, 12.0, 14.7);
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, found(bench).verdict());
        assertFalse(found(bench).dependsOnStruck());
    }

    /**
     * Random amendments after random looks: a verdict settles only if the session as its looks
     * first had it concludes the same, and the numbers are always those of the values as they are.
     */
    @Test
    void aSettledVerdictIsThatOfTheValuesFirstLookedAtToo() {
        Random random = new Random(20_261_128);
        int fewest = Bench.plain().state().protocol().plan().fewest();
        int settled = 0;
        for (int session = 0; session < 30; session++) {
            Bench amended = Bench.plain();
            double[][] now = new double[5][2];
            double[][] looked = new double[5][2];
            for (int round = 1; round <= 5; round++) {
                for (int turn = 0; turn < 2; turn++) {
                    now[round - 1][turn] = 12 + 2.7 * turn + random.nextInt(4) / 10.0;
                    looked[round - 1][turn] = now[round - 1][turn];
                }
                amended.round(round, now[round - 1][0], now[round - 1][1]);
                if (random.nextBoolean()) {
                    int donning = random.nextInt(2 * round);
                    double other = 11 + 3 * (donning % 2) + random.nextInt(15) / 10.0;
                    amended.amended(donning + 1, 0, other).amended(donning + 1, 1, other).look();
                    now[donning / 2][donning % 2] = other;
                    if (round < fewest) {
                        looked[donning / 2][donning % 2] = other;
                    }
                }
            }
            Comparison typed = found(rounds(now));
            assertEquals(typed.interval(), found(amended).interval());
            if (found(amended).isSettled()) {
                settled++;
                Conclusion claimed = found(amended).settledAt().orElseThrow().conclusion();
                assertEquals(claimed, typed.settledAt().orElseThrow().conclusion());
                assertEquals(claimed, found(rounds(looked)).settledAt().orElseThrow().conclusion());
            }
        }
        assertTrue(settled > 5, "only " + settled);
    }

    private static Bench rounds(double[][] times) {
        Bench bench = Bench.plain();
        for (int at = 0; at < times.length; at++) {
            bench.round(at + 1, times[at][0], times[at][1]);
        }
        return bench;
    }
}
