package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A small share of the studies behind the tables of DEVELOPERS.md. */
class StudyTest {

    private static final int CAMPAIGNS = 20_000;

    private static final List<CoverageStudy.Design> DESIGNS = CoverageStudy.designs();

    /** Every eighth design of the reference, and all of our own. */
    static IntStream places() {
        return IntStream.range(0, DESIGNS.size())
                .filter(i -> i % 8 == 1 || i >= DESIGNS.size() - CoverageStudy.own().size());
    }

    @ParameterizedTest
    @MethodSource("places")
    void thePromiseIsKeptAndPeekingBreaksIt(int place) {
        CoverageStudy.Design design = DESIGNS.get(place);
        long[] counts = CoverageStudy.counts(design, place, CAMPAIGNS);
        double alpha = design.alpha();
        String name = design.name();
        double missed = CoverageStudy.z(counts[PromisePlayer.MISSED], alpha, CAMPAIGNS);
        double above = CoverageStudy.z(counts[PromisePlayer.MISSED_ABOVE], alpha / 2, CAMPAIGNS);
        assertEquals(0, missed, 4, name);
        assertEquals(0, above, 4, name + ", above");
        assertTrue(CoverageStudy.z(counts[PromisePlayer.PEEKING], alpha, CAMPAIGNS) > 4, name);
    }

    /** A spread of 0.15 steps: the floor of rounding alone lets ten times the promise through. */
    @Test
    void coarseReadingKeepsThePromiseOnlyWithAStepAdded() {
        double[] worst = RoundingStudy.worst(RoundingStudy.PLANS.get(0), 0.15, 1000);
        assertTrue(worst[RoundingStudy.FLOOR] > 0.2, "floor: " + worst[RoundingStudy.FLOOR]);
        assertTrue(worst[RoundingStudy.RULE] < 0.025, "rule: " + worst[RoundingStudy.RULE]);
    }

    /**
     * Armitage, McPherson and Rowe 1969, table 2 (from memory, recomputed by integration): nominal
     * 5 % tests of a normal mean at equal steps. 100 values a step make t nearly normal: the third
     * decimal stays.
     */
    @ParameterizedTest
    @CsvSource({"1, 0.05000", "2, 0.08312", "3, 0.10726", "5, 0.14169", "10, 0.19336"})
    void repeatedTestsErrAsOftenAsPublished(int looks, double published) {
        Schedule schedule =
                Schedule.paired(IntStream.rangeClosed(1, looks).map(i -> 100 * i).boxed().toList());
        long[] counts =
                Blocks.count(
                        CoverageStudy.SEED,
                        CAMPAIGNS,
                        PromisePlayer.KINDS,
                        () -> new PromisePlayer(schedule, 0.05, 2));
        double missed = CoverageStudy.z(counts[PromisePlayer.PEEKING], published, CAMPAIGNS);
        assertEquals(0, missed, 4);
    }

    @Test
    void allDesignsOfTheReferenceAreStudied() {
        assertEquals(84 + 5, DESIGNS.size());
    }

    @Test
    void theRuleForStruckEntriesKeepsThePromiseAndLookingAgainDoesNot() {
        StrikingStudy.Plan plan = StrikingStudy.PLANS.get(0);
        long[] counts = StrikingStudy.counts(plan, 0, CAMPAIGNS);
        double half = plan.alpha() / 2;
        assertEquals(0, CoverageStudy.z(counts[StrikingStudy.HONEST], half, CAMPAIGNS), 4);
        for (int kept : List.of(StrikingStudy.ONCE_WITH_RULE, StrikingStudy.ALWAYS_WITH_RULE)) {
            assertTrue(CoverageStudy.z(counts[kept], half, CAMPAIGNS) < 4);
        }
        assertTrue(CoverageStudy.z(counts[StrikingStudy.ONCE_WITHOUT_RULE], half, CAMPAIGNS) > 4);
        assertTrue(
                counts[StrikingStudy.ALWAYS_WITHOUT_RULE]
                        > counts[StrikingStudy.ONCE_WITHOUT_RULE]);
    }

    /** Whoever amends at will claims nearly always; by the rule no more often than honestly. */
    @Test
    void theRuleForAmendedEntriesKeepsThePromiseAndTheValueBeforeAloneDoesNot() {
        StrikingStudy.Plan plan = StrikingStudy.PLANS.get(0);
        long[] counts = AmendingStudy.counts(plan, 0, CAMPAIGNS);
        assertEquals(
                0, CoverageStudy.z(counts[AmendingStudy.HONEST], plan.alpha() / 2, CAMPAIGNS), 4);
        assertTrue(counts[AmendingStudy.FIRST_LOOKED_AT] <= counts[AmendingStudy.HONEST]);
        assertTrue(counts[AmendingStudy.WITHOUT_RULE] > CAMPAIGNS / 2);
        assertTrue(counts[AmendingStudy.VALUE_BEFORE] > 4 * counts[AmendingStudy.HONEST]);
    }

    @Test
    void anObviousDifferenceCostsFewerRoundsThanTheFixedDesignAsSure() {
        EfficiencyStudy.Setting easy = EfficiencyStudy.SETTINGS.get(8);
        EfficiencyStudy.Result result = EfficiencyStudy.result(easy, 8, CAMPAIGNS);
        assertTrue(result.settles() > 0.99);
        assertTrue(result.rounds() >= easy.fewest() && result.rounds() < easy.most());
        // 6.14 against 8.4 and more, in the table.
        assertTrue(result.saved(result.enough()) > 0.2);
        assertTrue(result.fixed() >= result.enough());
    }
}
