package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigside.decide.Conclusion;
import rigside.decide.Verdict;
import rigside.session.Event;
import rigside.session.Look;

/** Striking out after a look, and verdicts that stay. */
class StrikingTest {

    /** Not settled after four rounds, for the fourth spoils it. */
    private static Bench unsettled() {
        return Bench.plain()
                .round(1, 12.1, 14.6)
                .round(2, 11.4, 13.5)
                .round(3, 12.8, 15.2)
                .round(4, 12.0, 12.9);
    }

    /** The first worked sequence of the reference: meaningful after four rounds. */
    private static Bench settled() {
        return Bench.plain()
                .round(1, 12.1, 14.6)
                .round(2, 11.4, 13.5)
                .round(3, 12.8, 15.2)
                .round(4, 12.0, 14.7);
    }

    @Test
    void replacingAnEntryAfterItsLookCannotSettleTheQuestion() {
        Bench bench = unsettled();
        assertEquals(Verdict.NOT_SETTLED, bench.comparison("inhalation").present());
        bench.replaced(8, 0, 14.7).replaced(8, 1, 14.7).look();
        Comparison comparison = bench.comparison("inhalation");
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, comparison.present());
        assertEquals(Verdict.NOT_SETTLED, comparison.verdict());
        assertTrue(comparison.dependsOnStruck());
        assertFalse(bench.state().captured().lastLook().orElseThrow().enough());
        assertTrue(Bench.says(comparison.remarks(), "depends on a struck entry"));
        assertTrue(comparison.forecast().settlesWithinPlan().isEmpty());
    }

    @Test
    void theVerdictStandsAgainWhenBothWaysAgree() {
        Bench bench = unsettled().replaced(8, 0, 14.7).replaced(8, 1, 14.7).look();
        double[][] more = {
            {11.7, 13.8}, {12.5, 15.1}, {12.2, 14.5}, {11.9, 14.4}, {12.4, 14.8}, {12.0, 14.6}
        };
        for (int at = 0; at < more.length; at++) {
            bench.round(5 + at, more[at][0], more[at][1]);
        }
        Comparison comparison = bench.comparison("inhalation");
        assertFalse(comparison.dependsOnStruck());
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, comparison.verdict());
    }

    @Test
    void anEntryReplacedBeforeItsRoundsLookCostsNothing() {
        Bench bench = unsettled().donning(5, "bare", 20, 11.7, 300);
        bench.start(5, "disc").exercises(20).trials(9, 9).effort(300);
        bench.replaced(10, 0, 13.8).replaced(10, 1, 13.8).complete().look();
        assertFalse(bench.comparison("inhalation").dependsOnStruck());
    }

    @Test
    void anEntryReplacedBeforeTheFewestRoundsCostsNothing() {
        Bench bench = Bench.plain().round(1, 12.1, 9).replaced(2, 0, 14.6).replaced(2, 1, 14.6);
        bench.look().round(2, 11.4, 13.5).round(3, 12.8, 15.2).round(4, 12.0, 14.7);
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, bench.comparison("inhalation").verdict());
    }

    @Test
    void aStruckDonningIsAnalysedBothWaysToo() {
        Bench bench = unsettled();
        bench.take(new Event.DonningStruck(8, "the disc slipped"));
        bench.donning(4, "disc", 20, 14.7, 300).look();
        Comparison comparison = bench.comparison("inhalation");
        assertEquals(4, comparison.n());
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, comparison.present());
        assertEquals(Verdict.NOT_SETTLED, comparison.verdict());
        assertTrue(comparison.dependsOnStruck());
        DonningValue struck = bench.measure("inhalation").value(8).orElseThrow();
        assertEquals(Standing.STRUCK, struck.standing());
        assertTrue(struck.value().isPresent(), "kept, and shown as struck");
    }

    @Test
    void aSettledVerdictFallsWhenItNeedsAStruckEntry() {
        Bench bench = settled();
        assertEquals(
                Optional.of(
                        new Comparison.Settled(
                                4, new Conclusion(Verdict.MEANINGFUL_DIFFERENCE, 1))),
                bench.comparison("inhalation").settledAt());
        bench.replaced(8, 0, 12.9).replaced(8, 1, 12.9).look();
        assertEquals(Verdict.NOT_SETTLED, bench.comparison("inhalation").verdict());
        assertTrue(bench.comparison("inhalation").dependsOnStruck());
    }

    @Test
    void oneMeasureIsNotTroubledByWhatWasStruckOutOfAnother() {
        Bench bench = settled().voided(7).look();
        assertFalse(bench.comparison("inhalation").dependsOnStruck());
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, bench.comparison("inhalation").verdict());
    }

    @Test
    void aVerdictOnceReachedStaysWhenALaterLookByItselfDoesNotSettleIt() {
        Bench bench = settled().round(5, 11.7, 9.8);
        Comparison comparison = bench.comparison("inhalation");
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, comparison.verdict());
        assertEquals(Verdict.NOT_SETTLED, comparison.present());
        assertFalse(comparison.contradicted());
        assertTrue(
                comparison
                        .sentence()
                        .startsWith(
                                "Settled after 4 rounds as a meaningful increase (1.20), which stays."
                                        + " The latest look by itself does not settle it: The mask"
                                        + " with disc, compared with the bare mask: inhaling takes "),
                comparison.sentence());
        assertTrue(bench.analysis().isEnough());
    }

    @Test
    void theVerdictOnRecordStaysWhateverThisVersionWouldSay() {
        Bench bench = Bench.plain().round(1, 5, 5.5).round(2, 5.2, 5.4).round(3, 4.9, 5.6);
        Look last = bench.state().captured().lastLook().orElseThrow();
        Look.Line line = last.lines().get(1);
        Look.Line settled =
                new Look.Line(
                        line.measure(),
                        line.condition(),
                        line.n(),
                        line.entries(),
                        line.estimate(),
                        line.low(),
                        line.high(),
                        line.critical(),
                        "no-meaningful-difference",
                        true);
        bench.take(new Event.LookTaken(new Look(3, true, false, List.of(settled))));
        assertEquals(Verdict.NO_MEANINGFUL_DIFFERENCE, bench.comparison("inhalation").verdict());
    }
}
