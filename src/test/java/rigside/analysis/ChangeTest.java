package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rigside.analysis.Tables.values;

import java.util.Arrays;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.analysis.Tables.Terms;
import rigside.decide.Forecast;
import rigside.protocol.Measure.Compared.Matters;
import rigside.session.Event;

class ChangeTest {

    private static final double[] PLAIN = {12.1, 11.4, 12.8, 12.0, 11.9, 12.3};

    private static double[] plain(int rounds) {
        return Arrays.copyOf(PLAIN, rounds);
    }

    /** Limits and figures are those of the sentence beside them, which other tests hold. */
    static Stream<Arguments> everyState() {
        Terms paired = Terms.PAIRED;
        Terms five = paired.rounds(3, 5);
        double[] between = values(14.6, 13.5, 13.2, 12.7, 12.8);
        return Stream.of(
                Arguments.of(
                        "one round",
                        paired.of(plain(1), values(14.6)),
                        "A first verdict comes with the first look, after 2 more rounds."),
                Arguments.of(
                        "one value an arm",
                        paired.independent().of(plain(1), values(14.6)),
                        "A first verdict comes with the first look, after 2 more values per"
                                + " condition."),
                Arguments.of(
                        "three values against one",
                        paired.independent().of(plain(3), values(14.6)),
                        "A first verdict comes with the first look, after 2 more values of disc."),
                Arguments.of(
                        "one value against two",
                        paired.independent().of(plain(1), values(14.6, 14.7)),
                        "A first verdict comes with the first look, after 2 more values of plain and"
                                + " 1 more value of disc."),
                Arguments.of(
                        "a difference of unsettled size",
                        paired.of(plain(3), values(14.6, 13.5, 15.2)),
                        "It would settle as no meaningful difference if the upper limit fell below"
                                + " 1.10 (now 1.30), as a meaningful increase if the lower limit rose"
                                + " above 1.10 (now 1.09)."
                                + " With the estimate where it is, the interval would have to be within 1.10 to 1.29:"
                                + " a spread at most 0.93 times as large would do that now."),
                Arguments.of(
                        "not settled, downwards",
                        paired.of(plain(3), values(11.9, 11.3, 12.4)),
                        "It would settle as no meaningful difference if the lower limit rose above"
                                + " 0.909 (now 0.888), as a meaningful decrease if the upper limit"
                                + " fell below 0.909 (now 1.08)."
                                + " With the estimate where it is, the interval would have to be within 0.909 to 1.06:"
                                + " a spread at most 0.76 times as large would do that now."),
                Arguments.of(
                        "both limits in the way, one beyond words",
                        paired.rounds(2, 6).of(plain(2), values(14.6, 9.5)),
                        "It would settle as no meaningful difference if the upper limit fell below"
                                + " 1.10 (now above 1000) and the lower limit rose above 0.909 (now"
                                + " below 0.001), as a meaningful increase if the lower limit rose"
                                + " above 1.10 (now below 0.001)."
                                + " With the estimate where it is, the interval would have to be within 0.914 to 1.10:"
                                + " a spread less than a hundredth as large would do that now."),
                Arguments.of(
                        "differences of independent values",
                        paired.difference("1").independent().of(plain(5), between),
                        "It would settle as no meaningful difference if the upper limit fell below"
                                + " 1.00 (now 2.81), as a meaningful increase if the lower limit rose"
                                + " above 1.00 (now -0.168)."
                                + " With the estimate where it is, the interval would have to be within 1.00 to 1.64:"
                                + " a spread at most 0.21 times as large would do that now."),
                Arguments.of(
                        "plan used up",
                        five.of(plain(5), between),
                        "Nothing changes it under this plan any more: it would have settled as no"
                                + " meaningful difference if the upper limit had fallen below 1.10"
                                + " (now 1.23), as a meaningful increase if the lower limit had risen"
                                + " above 1.10 (now 0.998)."
                                + " With the estimate where it is, the interval would have had to be within 1.10 to 1.12:"
                                + " a spread at most 0.077 times as large would have done that."),
                Arguments.of(
                        "only an increase matters",
                        paired.matters(Matters.INCREASE).of(plain(4), between(4)),
                        "It would settle as no meaningful increase if the upper limit fell"
                                + " below 1.10 (now 1.52), as a meaningful increase if the lower limit"
                                + " rose above 1.10 (now 0.822)."
                                + " With the estimate where it is, the interval would have to be within 1.10 to 1.14:"
                                + " a spread at most 0.051 times as large would do that now."),
                Arguments.of(
                        "only a decrease matters",
                        paired.matters(Matters.DECREASE).of(plain(4), between(4)),
                        "It would settle as no meaningful decrease if the lower limit rose"
                                + " above 0.909 (now 0.822), as a meaningful decrease if the upper"
                                + " limit fell below 0.909 (now 1.52)."
                                + " With the estimate where it is, the interval would have to be within 0.909 to 1.37:"
                                + " a spread at most 0.67 times as large would do that now."),
                Arguments.of(
                        "settled by all its rounds",
                        paired.of(plain(4), values(14.6, 13.5, 15.2, 14.7)),
                        "It stays under this plan, whatever further rounds show; only striking out"
                                + " or amending values could unsettle it. It needs every one of its"
                                + " rounds."),
                Arguments.of(
                        "settled and borne by no single round",
                        paired.of(plain(5), values(14.6, 13.6, 15.3, 14.4, 14.3)),
                        "It stays under this plan, whatever further rounds show; only striking out"
                                + " or amending values could unsettle it. Without any single one of"
                                + " its rounds it would be the same."),
                Arguments.of(
                        "settled, and a later look says otherwise",
                        paired.of(plain(5), values(14.6, 13.5, 15.2, 14.7, 9.8)),
                        "It stays under this plan, although the latest look by itself says not"
                                + " settled; only striking out or amending values could unsettle it."
                                + " It needs each of rounds 1, 2, 3 and 4."),
                Arguments.of(
                        "settled at the last look",
                        paired.rounds(3, 4).of(plain(4), values(14.6, 13.5, 15.2, 14.7)),
                        "It stays under this plan; only striking out or amending values could"
                                + " unsettle it. Without any single one of its rounds it would be"
                                + " the same."),
                Arguments.of(
                        "ratios at the last digit",
                        paired.of(values(5, 5, 5), values(6, 6, 6)),
                        "It could settle once the values are read finer: they spread by no more"
                                + " than the 0.754 % that rounding alone can explain."),
                Arguments.of(
                        "differences at the last digit when the plan is used up",
                        paired.rounds(2, 3).difference("1").of(values(5, 5, 5), values(6, 6, 6)),
                        "Nothing changes it under this plan any more: the values would have had to"
                                + " be read finer, since they spread by no more than the 0.0408 that"
                                + " rounding alone can explain."));
    }

    private static double[] between(int rounds) {
        return Arrays.copyOf(values(14.6, 13.5, 13.2, 12.7, 12.8), rounds);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everyState")
    void whatWouldChangeAVerdictIsSaid(String state, Comparison comparison, String change) {
        assertEquals(change, comparison.words().change(), comparison.sentence());
    }

    /** Independent values: each is struck out by itself, the other of its round stays. */
    @Test
    void independentValuesAreTakenOutOneAtATime() {
        Terms terms = Terms.PAIRED.independent();
        double[] disc = values(17.6, 17.1, 18.2, 17.3);
        String stays =
                "It stays under this plan, whatever further rounds show; only striking out or"
                        + " amending values could unsettle it. ";
        assertEquals(
                stays + "Without any single one of its values it would be the same.",
                terms.of(plain(4), disc).words().change());
        String all = stays + "It needs every one of its values.";
        assertEquals(all, terms.of(plain(3), Arrays.copyOf(disc, 3)).words().change());
        assertEquals(
                stays
                        + "It needs each of the values of round 1 of disc, round 2 of disc and"
                        + " round 3 of disc.",
                terms.of(plain(4), Arrays.copyOf(disc, 3)).words().change());
        String plan = "fewest: 3\n  most: 10";
        Bench bench = Bench.with(Map.of(plan, plan + "\n  design: independent"));
        for (int round = 1; round <= 3; round++) {
            bench.round(round, PLAIN[round - 1], disc[round - 1]);
        }
        assertChange(all, bench);
    }

    private static Bench fourRounds(double last) {
        return Bench.plain()
                .round(1, 12.1, 14.6)
                .round(2, 11.4, 13.5)
                .round(3, 12.8, 15.2)
                .round(4, 12.0, last);
    }

    private static void assertChange(String change, Bench bench) {
        assertEquals(change, bench.comparison("inhalation").words().change());
    }

    @Test
    void aStruckEntryIsWeighedBothWays() {
        assertChange(
                "Without what was struck out the verdict would be a meaningful increase, with it"
                        + " taken back in not settled or a difference of unsettled size; it settles"
                        + " once both ways settle alike.",
                fourRounds(12.9).replaced(8, 0, 14.7).replaced(8, 1, 14.7).look());
    }

    @Test
    void endedRepeatsLeaveNothingToChange() {
        assertChange(
                "Nothing changes it under this plan any more: it would have settled as no meaningful"
                        + " difference if the upper limit had fallen below 1.10 (now 1.43), as a"
                        + " meaningful increase if the lower limit had risen above 1.10 (now 0.947)."
                        + " With the estimate where it is, the interval would have had to be within 1.10 to 1.23:"
                        + " a spread at most 0.26 times as large would have done that.",
                fourRounds(12.9).take(new Event.RepeatsEnded("tired")));
        assertChange(
                "Nothing changes it under this plan any more: it has too few: 1 of at least 3 rounds.",
                Bench.plain().round(1, 5, 6).take(new Event.RepeatsEnded("tired")));
    }

    /** What a new plan would need is still worth telling; what this one would bring is not. */
    @Test
    void nothingIsForecastOnceNoRoundIsToCome() {
        Bench bench = fourRounds(12.9);
        Forecast open = bench.comparison("inhalation").forecast();
        assertTrue(open.settlesWithinPlan().isPresent());
        bench.take(new Event.RepeatsEnded("tired"));
        assertEquals(open.withNoneToCome(), bench.comparison("inhalation").forecast());
        Forecast usedUp =
                Terms.PAIRED.rounds(3, 4).of(plain(4), values(18, 13, 15.2, 14)).forecast();
        assertEquals(OptionalDouble.empty(), usedUp.settlesWithinPlan());
        assertTrue(usedUp.needed().isPresent());
    }

    @Test
    void aSessionTellsItsDecisiveRoundsAsATableDoes() {
        Bench bench = fourRounds(14.7);
        assertChange(
                Terms.PAIRED.of(plain(4), values(14.6, 13.5, 15.2, 14.7)).words().change(), bench);
        bench.round(5, 12, 14.6);
        assertChange(
                "It stays under this plan, whatever further rounds show; only striking out or"
                        + " amending values could unsettle it. Without any single one of its rounds"
                        + " it would be the same.",
                bench);
    }

    @Test
    void boundedFitFactorsAreWeighedBothWays() {
        Bench bench = Bench.with(Map.of("meaningful: 2 times", "meaningful: 3 times"));
        double[] bare = {4.2, 4.3, 4.1, 4.25, 4.2, 4.15};
        double[] disc = {2.02, 1, 2.04, 1, 2.03, 1};
        for (int round = 1; round <= 6; round++) {
            bench.donning(round, "bare", bare[round - 1], 5, 300);
            bench.donning(round, "disc", disc[round - 1], 5, 300);
        }
        assertEquals(
                "With the bounded fit factors as stated the verdict would be no meaningful"
                        + " difference, at half their penetration a difference of unsettled size; it"
                        + " settles once both ways settle alike.",
                bench.comparison("fit").words().change());
    }

    @Test
    void atLeastAgainstAtLeastIsSaidToSettleNothing() {
        Bench bench = Bench.plain();
        for (int round = 1; round <= 4; round++) {
            bench.donning(round, "bare", 1, 5, 300).donning(round, "disc", 1, 5, 300);
        }
        assertEquals(
                "Nothing settles while donnings of both conditions have fit factors that are only"
                        + " known as \"at least\"; a new plan with more ambient particles or longer"
                        + " sampling could.",
                bench.comparison("fit").words().change());
    }
}
