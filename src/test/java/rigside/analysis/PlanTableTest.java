package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rigside.decide.FixedDesign;
import rigside.protocol.Measure.Compared;
import rigside.protocol.Plan;

class PlanTableTest {

    private static final double BAND = Math.log(1.1);
    private static final String BOTH =
            " both when nothing differs and when the difference is twice the meaningful one";

    /**
     * The file operating_characteristics.json of the tests of {@code decide} (2e6 campaigns a row;
     * NumPy 1.24.2): 3 to 10 pairs, exponent 2, 10 % matters, spread 0.10 of a round's log ratio.
     */
    @Test
    void theTableIsThatOfTheReference() {
        PlanTable table =
                PlanTable.of(
                        terms(3, 10, 0.10, Compared.Matters.EITHER, Plan.Design.ROUNDS), 0.8, 1);
        assertEquals(14.857, table.looks().get(0).critical(), 5e-4);
        assertEquals(2.688, table.looks().get(7).critical(), 5e-4);
        assertEquals(0.0045, table.looks().get(0).nominalP(), 1e-12);
        assertEquals(10, table.looks().get(7).round());
        PlanTable.Outcome none = table.outcomes().get(0);
        assertEquals(1, none.truth());
        assertEquals(1, none.meaningful() + none.noMeaningful() + none.unsettled(), 1e-12);
        // Four standard errors of 100 000 campaigns.
        assertEquals(0.95, none.coverage(), 4 * 0.0007);
        PlanTable.Outcome twice = at(table, 2);
        assertEquals(1.21, twice.truth(), 1e-12);
        assertTrue(twice.meaningful() > 0.6 && twice.meaningful() < 0.75, twice.toString());
        // On the edge half of alpha is claimed, as the reference says.
        assertEquals(0.025, at(table, 1).meaningful(), 0.002);
        assertTrue(none.benchSeconds().isEmpty());
        assertEquals(
                List.of(0.0, 0.5, 1.0, 1.5, 2.0, 3.0),
                table.outcomes().stream().map(PlanTable.Outcome::multiple).toList());
    }

    @Test
    void theSameSeedGivesTheSameTableAndAnotherNearlyTheSame() {
        PlanTerms terms = terms(3, 5, 0.05, Compared.Matters.EITHER, Plan.Design.ROUNDS);
        assertEquals(PlanTable.of(terms, 0.8, 7), PlanTable.of(terms, 0.8, 7));
        double one = PlanTable.of(terms, 0.8, 7).outcomes().get(0).unsettled();
        double other = PlanTable.of(terms, 0.8, 8).outcomes().get(0).unsettled();
        assertEquals(one, other, 4 * Math.sqrt(2) * 0.0016);
    }

    @Test
    void whereTheDirectionMattersBothSignsAreTried() {
        PlanTable table =
                PlanTable.of(
                        terms(3, 6, 0.05, Compared.Matters.DECREASE, Plan.Design.ROUNDS), 0.8, 1);
        assertEquals(11, table.outcomes().size());
        assertTrue(at(table, -2).meaningful() > 0.8);
        assertTrue(at(table, 2).noMeaningful() > 0.99);
        assertTrue(table.advice().get(0).contains("twice the meaningful one"));
    }

    @Test
    void aWrongClaimIsBoundedByAlphaOrInOneDirectionByHalfOfIt() {
        String words = "whatever the truth, a wrong claim comes in at most about ";
        for (Compared.Matters matters : Compared.Matters.values()) {
            PlanTable table = PlanTable.of(terms(3, 5, 0.05, matters, Plan.Design.ROUNDS), 0.8, 1);
            String most = matters == Compared.Matters.EITHER ? "5 %" : "2.5 %";
            assertTrue(
                    table.advice().contains(words + most + " of such comparisons"),
                    table.advice().toString());
        }
    }

    @Test
    void aPlanThatHardlyEverSettlesIsToldSo() {
        List<String> advice =
                PlanTable.of(
                                terms(3, 10, 0.20, Compared.Matters.EITHER, Plan.Design.ROUNDS),
                                0.8,
                                1)
                        .advice();
        assertTrue(
                advice.get(0).matches("this plan settles hardly ever \\((1 %|less than 1 %)\\).*"),
                advice.get(0));
        assertTrue(
                advice.get(1)
                        .matches(
                                "with looks from round 3 on no plan of up to 50 rounds settles in 8 of 10 cases both"
                                        + " when nothing differs and .*"));
    }

    @Test
    void theLengthNamedSettlesAsOftenAsWishedAndOneLessDoesNot() {
        PlanTerms terms = terms(3, 10, 0.10, Compared.Matters.EITHER, Plan.Design.ROUNDS);
        String advice = PlanTable.of(terms, 0.8, 1).advice().get(1);
        assertEquals("with 16 rounds it settles in 8 of 10 cases" + BOTH, advice);
        // The search plays 10 000 campaigns, which is good to 0.004; neighbours differ by 0.03.
        assertTrue(settles(16) > 0.79, "16 rounds");
        assertTrue(settles(15) < 0.81, "15 rounds");
    }

    /** Exact, and beside it one round fewer: what the fixed design is worth. */
    @Test
    void theFixedNumberThatSettlesAsOftenIsNamed() {
        PlanTerms terms = terms(3, 10, 0.10, Compared.Matters.EITHER, Plan.Design.ROUNDS);
        String advice = PlanTable.of(terms, 0.8, 1).advice().get(2);
        assertTrue(
                advice.matches(
                        "decided beforehand and looked at only once, 14 rounds would settle as"
                                + " often as at most 16 looked at after each, which take 13\\.\\d on"
                                + " average when nothing differs"),
                advice);
        assertTrue(
                FixedDesign.of(terms.withRounds(14, 14).rules(), 0, terms.spread()).settles()
                        >= 0.8);
        assertTrue(
                FixedDesign.of(terms.withRounds(13, 13).rules(), 0, terms.spread()).settles()
                        < 0.8);
    }

    @Test
    void whereCostsAreKnownTheLengthIsGivenInTimeToo() {
        PlanTerms plan = terms(3, 10, 0.10, Compared.Matters.EITHER, Plan.Design.ROUNDS);
        PlanTerms terms = costing(plan, new PlanTerms.Costs(360, 60, 4));
        PlanTable table = PlanTable.of(terms, 0.8, 1);
        assertTrue(table.terms().contains("a round takes about 10 min"), table.terms().toString());
        // About 13 rounds of ten minutes.
        assertTrue(
                table.advice()
                        .get(1)
                        .matches(
                                "with 16 rounds it settles in 8 of 10 cases"
                                        + BOTH
                                        + ", in about 2 h 1\\d min at the bench when nothing"
                                        + " differs"),
                table.advice().get(1));
        PlanTable.Outcome none = at(table, 0);
        assertEquals(600 * none.meanRounds(), none.benchSeconds().orElseThrow(), 1e-9);
    }

    @Test
    void aWishBetweenTenthsIsSaidInPercent() {
        PlanTerms terms = terms(3, 6, 0.03, Compared.Matters.EITHER, Plan.Design.ROUNDS);
        String advice = PlanTable.of(terms, 0.85, 1).advice().get(1);
        assertTrue(advice.contains(" in 85 % of cases"), advice);
    }

    private static double settles(int most) {
        PlanTerms terms = terms(3, most, 0.10, Compared.Matters.EITHER, Plan.Design.ROUNDS);
        return 1 - PlanTable.of(terms, 0.8, 2).outcomes().get(0).unsettled();
    }

    @Test
    void spreadsTooLargeForAnyPlanGetAWordInsteadOfANumber() {
        List<String> advice =
                PlanTable.of(terms(3, 4, 1, Compared.Matters.EITHER, Plan.Design.ROUNDS), 0.8, 1)
                        .advice();
        assertEquals(
                "with looks from round 3 on no plan of up to 50 rounds settles in 8 of 10 cases"
                        + BOTH
                        + ", nor does one looked at only once: a smaller spread is needed, or a"
                        + " difference that matters only when larger",
                advice.get(1));
    }

    @Test
    void whatAllSimulatedCampaignsDidIsNotSaidToBeCertain() {
        PlanTable table =
                PlanTable.of(
                        terms(3, 6, 0.001, Compared.Matters.EITHER, Plan.Design.ROUNDS), 0.8, 1);
        assertEquals(0, table.outcomes().get(0).unsettled());
        assertEquals(
                "this plan settles nearly always (more than 99 %) when nothing differs, and nearly"
                        + " always (more than 99 %) when the difference is twice the meaningful"
                        + " one",
                table.advice().get(0));
    }

    /** Exact, by the fixed design: what the looks cost is not laid to the rounds. */
    @Test
    void whereOnlyTheLooksAreTooManyTheOneLookThatSettlesIsNamed() {
        PlanTerms terms = terms(3, 50, 0.2, Compared.Matters.EITHER, Plan.Design.ROUNDS);
        List<String> advice = PlanTable.of(terms, 0.8, 1).advice();
        assertEquals(
                "with looks from round 3 on no plan of up to 50 rounds settles in 8 of 10 cases"
                        + BOTH,
                advice.get(1));
        assertTrue(
                advice.get(2)
                        .matches(
                                "decided beforehand and looked at only once, (49|50|4\\d) rounds"
                                        + " would settle that often"),
                advice.get(2));
    }

    @Test
    void aPlanLookedAtOnlyAtItsEndIsNotCalledTheShortest() {
        PlanTerms terms = terms(50, 50, 0.2, Compared.Matters.EITHER, Plan.Design.ROUNDS);
        List<String> advice = PlanTable.of(terms, 0.8, 1).advice();
        assertTrue(advice.stream().noneMatch(each -> each.contains("a shorter plan")));
        assertTrue(advice.get(1).contains("no shorter one was tried"), advice.get(1));
    }

    /** The smaller side of the band is the harder one: its row and the first sentence agree. */
    @Test
    void ofTwoDirectionsThatMatterTheWorseIsReportedAndSearchedBy() {
        PlanTerms terms = lopsided(3, 10, 0.1);
        PlanTable table = PlanTable.of(terms, 0.8, 1);
        double down = 1 - at(table, -2).unsettled();
        assertTrue(down < 0.3, at(table, -2).toString());
        assertTrue(1 - at(table, 2).unsettled() > 0.99);
        assertTrue(
                table.advice()
                        .get(0)
                        .endsWith(
                                "("
                                        + Math.round(100 * down)
                                        + " %) when the difference is twice the meaningful decrease"
                                        + " (an increase settles no less often)"),
                table.advice().get(0));
        String length = table.advice().get(1);
        assertTrue(length.endsWith(BOTH + " in either direction"), length);
        int most = Integer.parseInt(length.replaceAll("with (\\d+) rounds .*", "$1"));
        assertTrue(1 - at(PlanTable.of(lopsided(3, most, 0.1), 0.8, 2), -2).unsettled() > 0.79);
    }

    private static PlanTerms lopsided(int fewest, int most, double spread) {
        Compared compared =
                new Compared(
                        Compared.Scale.RATIO,
                        Math.log(0.95),
                        Math.log(2),
                        "0.95 to 2",
                        Compared.Matters.EITHER,
                        true,
                        OptionalDouble.empty());
        Plan plan = Plan.bare(fewest, most, 0.95, 2, Plan.Design.ROUNDS);
        return PlanTerms.of(compared, plan, spread, Optional.empty());
    }

    /** The spread of a round is that of a difference; of independent values that of one value. */
    @Test
    void theSpreadIsThatOfOneRound() {
        assertEquals(
                0.1 / Math.sqrt(2),
                terms(3, 10, 0.1, Compared.Matters.EITHER, Plan.Design.ROUNDS).spread());
        assertEquals(
                0.1,
                terms(3, 10, 0.1, Compared.Matters.EITHER, Plan.Design.INDEPENDENT_DONNINGS)
                        .spread());
    }

    /**
     * With nothing but trials spreading, halving their variance halves a donning's: the spread with
     * twice the trials is sqrt 2 smaller.
     */
    @Test
    void moreTrialsTakeAwayOnlyWhatTrialsBring() {
        PlanTerms.Trials trials = new PlanTerms.Trials(0.2, 4);
        assertEquals(0.1 / Math.sqrt(2), trials.spreadWith(8, 0.1 + 1e-12), 1e-9);
        assertEquals(0.5, trials.spreadWith(4, 0.5), 1e-15);
        PlanTerms plan = terms(3, 10, 0.1, Compared.Matters.EITHER, Plan.Design.ROUNDS);
        assertThrows(IllegalArgumentException.class, () -> plan.weighingTrials(0.01));
        PlanTerms known = costing(plan, new PlanTerms.Costs(1, 1, 4));
        assertEquals(Optional.empty(), known.weighingTrials(0.2));
        assertTrue(known.weighingTrials(0.1).isPresent());
    }

    @Test
    void whereTrialsAreCheapMoreOfThemAreAdvised() {
        String advice = cheapest(new PlanTerms.Costs(2000, 1, 1));
        int many = Integer.parseInt(advice.replaceAll(".* with (\\d+) trials? a donning.*", "$1"));
        String dear = cheapest(new PlanTerms.Costs(1, 2000, 1));
        int few = Integer.parseInt(dear.replaceAll(".* with (\\d+) trials? a donning.*", "$1"));
        assertTrue(many > 5, advice);
        assertEquals(1, few, dear);
    }

    private static String cheapest(PlanTerms.Costs costs) {
        PlanTerms plan = terms(3, 10, 0.1, Compared.Matters.EITHER, Plan.Design.ROUNDS);
        PlanTerms terms = costing(plan, costs).weighingTrials(0.065).orElseThrow();
        return PlanTable.of(terms, 0.8, 1).advice().stream()
                .filter(each -> each.startsWith("cheapest"))
                .findFirst()
                .orElseThrow();
    }

    private static PlanTerms costing(PlanTerms plan, PlanTerms.Costs costs) {
        return new PlanTerms(plan.setting(), plan.spread(), Optional.of(costs), Optional.empty());
    }

    private static PlanTable.Outcome at(PlanTable table, double multiple) {
        return table.outcomes().stream()
                .filter(each -> each.multiple() == multiple)
                .findFirst()
                .orElseThrow();
    }

    private static PlanTerms terms(
            int fewest, int most, double spread, Compared.Matters matters, Plan.Design design) {
        Plan plan = Plan.bare(fewest, most, 0.95, 2, design);
        Compared compared =
                new Compared(
                        Compared.Scale.RATIO,
                        -BAND,
                        BAND,
                        "10 %",
                        matters,
                        true,
                        OptionalDouble.empty());
        return PlanTerms.of(compared, plan, spread, Optional.empty());
    }
}
