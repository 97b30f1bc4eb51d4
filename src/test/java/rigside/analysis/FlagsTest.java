package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rigside.analysis.Tables.Terms;
import rigside.decide.Verdict;

class FlagsTest {

    private static final double[] BARE = {5, 5.12, 4.93, 5.04, 5.07, 4.97, 5.03};

    /** The fourth stands apart. */
    private static final double[] DISC = {5.6, 5.72, 5.51, 9.1, 5.63, 5.58, 5.66};

    private static final String PLAN = "fewest: 3\n  most: 10";

    private static Bench rounds(Bench bench, double[] bare, double[] disc) {
        for (int at = 0; at < bare.length; at++) {
            bench.donning(at + 1, "bare", 20, bare[at], 300)
                    .donning(at + 1, "disc", 20, disc[at], 300);
        }
        return bench;
    }

    private static List<Flag> inhalation(Bench bench) {
        return bench.measure("inhalation").flags();
    }

    private static List<Flag.Kind> kinds(List<Flag> flags) {
        return flags.stream().map(Flag::kind).toList();
    }

    private static Flag only(List<Flag> flags, Flag.Kind kind) {
        assertEquals(List.of(kind), kinds(flags), flags.toString());
        return flags.get(0);
    }

    @Test
    void aRoundThatStandsApartIsNamedWithItsWhatIf() {
        Bench bench = rounds(Bench.plain(), BARE, DISC);
        Flag flag = only(inhalation(bench), Flag.Kind.FAR_VALUE);
        // 9.1 / 5.04 = 1.806; the others from 5.51 / 4.93 = 1.118 to 5.63 / 5.07 = 1.110 and 1.125.
        assertEquals(
                "Round 4 stands apart: inhaling takes 1.81 times as long there, in the other rounds"
                        + " 1.11 to 1.13 times, which chance alone does less than once in 1000 times."
                        + " Look at the notes of donnings 7 and 8; the round counts all the same.",
                flag.reason());
        assertEquals(List.of(7, 8), flag.donnings());
        Flag.WhatIf whatIf = flag.whatIf().get(0);
        assertEquals("without round 4", whatIf.without());
        assertEquals(bench.comparison("inhalation"), whatIf.with());
        assertEquals(6, whatIf.then().n());
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, whatIf.then().present());
        assertEquals(
                "Only a view: a verdict reached by choosing values is none.", whatIf.then().next());
        assertFalse(whatIf.then().forecast().settlesWithinPlan().isPresent());
    }

    @Test
    void aWhatIfIsTheComparisonOfTheOtherRounds() {
        double[] bare = {5, 5.12, 4.93, 5.07, 4.97, 5.03};
        double[] disc = {5.6, 5.72, 5.51, 5.63, 5.58, 5.66};
        Comparison other = rounds(Bench.plain(), bare, disc).comparison("inhalation");
        Comparison then =
                inhalation(rounds(Bench.plain(), BARE, DISC)).get(0).whatIf().get(0).then();
        assertEquals(other.estimate(), then.estimate());
        assertEquals(other.interval(), then.interval());
        assertEquals(other.critical(), then.critical());
        assertEquals(other.looks(), then.looks());
    }

    @Test
    void aFlagNeverActs() {
        Bench bench = rounds(Bench.plain(), BARE, DISC);
        assertEquals(7, bench.comparison("inhalation").n());
        assertEquals(7, bench.measure("inhalation").conditions().get(1).n());
    }

    @Test
    void whereValuesStandForThemselvesOneDonningIsNamed() {
        Bench bench =
                rounds(Bench.with(Map.of(PLAN, PLAN + "\n  design: independent")), BARE, DISC);
        Flag flag = only(inhalation(bench), Flag.Kind.FAR_VALUE);
        assertEquals(
                "Donning 8 (the mask with disc) stands apart: 9.10 s, the others 5.51 to 5.72 s,"
                        + " which chance alone does less than once in 1000 times. Look at the notes"
                        + " of donning 8; the value counts all the same.",
                flag.reason());
        assertEquals(List.of(8), flag.donnings());
        assertEquals("without donning 8", flag.whatIf().get(0).without());
        // Seven values against six: the mean of the reference keeps its fourth.
        double reference = 0;
        for (double each : BARE) {
            reference += Math.log(each) / 7;
        }
        double others = 0;
        for (int at : new int[] {0, 1, 2, 4, 5, 6}) {
            others += Math.log(DISC[at]) / 6;
        }
        assertEquals(
                Math.exp(others - reference),
                flag.whatIf().get(0).then().estimate().orElseThrow(),
                1e-12);
    }

    @Test
    void whereTrialsStandForThemselvesOneTrialIsNamed() {
        Bench bench =
                Bench.with(
                        Map.of(
                                PLAN,
                                "fewest: 3\n  most: 20\n  design: independent\n  replicates: trials"));
        for (int at = 0; at < 7; at++) {
            bench.start(at + 1, "bare").exercises(20).trials(BARE[at], BARE[(at + 3) % 7]);
            bench.complete().start(at + 1, "disc").exercises(20).trials(5.6 + at * 0.013, DISC[at]);
            bench.complete();
        }
        Flag flag = only(inhalation(bench), Flag.Kind.FAR_TRIAL);
        assertTrue(flag.reason().startsWith("Trial 2 of donning 8 stands apart: 9.10 s, the"));
        assertEquals("without donning 8", flag.whatIf().get(0).without());
        assertEquals(12, flag.whatIf().get(0).then().n());
    }

    @Test
    void aTrialThatStandsApartInItsDonningIsNamed() {
        Bench bench = Bench.with(Map.of("trials: 2", "trials: 5"));
        for (int round = 1; round <= 2; round++) {
            for (String condition : List.of("bare", "disc")) {
                boolean slips = round == 2 && condition.equals("disc");
                bench.start(round, condition).exercises(20);
                bench.trial(0, 5.01).trial(1, 5.07).trial(2, slips ? 9.9 : 5.05);
                bench.trial(3, 4.97).trial(4, 5.0).effort(300).complete();
            }
        }
        Flag flag = only(inhalation(bench), Flag.Kind.FAR_TRIAL);
        assertEquals(
                "Trial 3 of donning 4 stands apart: 9.90 s, the others 4.97 to 5.07 s, which chance"
                        + " alone does less than once in 1000 times. Look at the notes of donning 4;"
                        + " the trial counts all the same.",
                flag.reason());
        assertEquals(List.of(), flag.whatIf());
    }

    @Test
    void aChangeThatDriftsOverTheRoundsIsSaid() {
        double[] up = {5.02, 5.31, 5.52, 5.83, 6.11, 6.32, 6.64};
        List<Flag> flags = inhalation(rounds(Bench.plain(), BARE, up));
        assertEquals(
                List.of(Flag.Kind.ROUND_TREND, Flag.Kind.ROUND_TREND, Flag.Kind.SPREAD),
                kinds(flags));
        // NumPy 2.4.6: polyfit of the log ratios over 1 to 7, at 1 and 7: 1.0029, 1.3274.
        assertEquals(
                "The effect of the mask with disc drifts over the rounds: it goes from 1.00 to 1.33"
                        + " times along a straight line, which chance alone does less than once in"
                        + " 1000 times. One figure for all rounds then says too little: ask what"
                        + " changed on the way, such as wear, tiredness or the room.",
                flags.get(0).reason());
        assertTrue(
                flags.get(1).reason().contains("drifts over the rounds: from 5.04 to 5.78 s along"),
                flags.get(1).reason());
        assertTrue(
                flags.get(2)
                        .reason()
                        .endsWith("and holds all the same; look at what varied there."),
                flags.get(2).reason());
    }

    @Test
    void aDriftCommonToTheRoundsLeavesTheDifferencesAlone() {
        double[] bare = {5, 5.21, 5.38, 5.62, 5.83, 6.0, 6.23};
        double[] disc = {5.9, 6.3, 6.38, 6.7, 7.03, 7.1, 7.5};
        Flag paired = only(inhalation(rounds(Bench.plain(), bare, disc)), Flag.Kind.ROUND_TREND);
        assertTrue(paired.reason().contains("Comparing within rounds takes that out"));
        Bench bench = Bench.with(Map.of(PLAN, PLAN + "\n  design: independent"));
        Flag apart = only(inhalation(rounds(bench, bare, disc)), Flag.Kind.ROUND_TREND);
        assertTrue(apart.reason().contains("That widens the interval"), apart.reason());
    }

    @Test
    void whatComesSecondIsToldByTheOrderReallyWorn() {
        Bench bench = Bench.plain();
        for (int at = 0; at < 8; at++) {
            if (at % 2 == 0) {
                bench.donning(at + 1, "bare", 20, 5 + 0.01 * at, 300);
                bench.donning(at + 1, "disc", 20, 6 + 0.023 * at, 319 + at % 4 * 2);
            } else {
                bench.donning(at + 1, "disc", 20, 5.5 + 0.01 * at, 301 + at % 4);
                bench.donning(at + 1, "bare", 20, 5.3, 317);
            }
        }
        assertTrue(kinds(inhalation(bench)).contains(Flag.Kind.ORDER));
        Flag order = only(bench.measure("effort").flags(), Flag.Kind.ORDER);
        // Means of the differences: 21 and -14, half of what they are apart 17.5.
        assertEquals(
                "In what is worn second in a round the effort is 17.5 Pa higher than in what is worn"
                        + " first, whichever condition it is, which chance alone does less than once"
                        + " in 1000 times. Each came first equally often, so it cancels out; longer"
                        + " rests between donnings may help.",
                order.reason());
    }

    @Test
    void anOrderThatIsNotBalancedIsSaidNotToCancelOut() {
        Bench bench = Bench.plain();
        for (int round = 1; round <= 7; round++) {
            if (round <= 5) {
                bench.donning(round, "bare", 20, 5, 300);
                bench.donning(round, "disc", 20, 6, 320 + round % 3);
            } else {
                bench.donning(round, "disc", 20, 6, 301 + round % 2);
                bench.donning(round, "bare", 20, 5, 317);
            }
        }
        List<Flag> flags = bench.measure("effort").flags();
        String order = flags.get(kinds(flags).indexOf(Flag.Kind.ORDER)).reason();
        assertTrue(
                order.endsWith(
                        "The bare mask came first in 5 rounds and second in 2, so it does not quite"
                                + " cancel out; longer rests between donnings may help."),
                order);
    }

    @Test
    void amongSeveralComparisonsTheFarOneIsNamed() {
        StringBuilder rows = new StringBuilder();
        for (int at = 0; at < BARE.length; at++) {
            rows.append(at + 1).append(",plain,").append(BARE[at]).append('\n');
            rows.append(at + 1).append(",felt,").append(BARE[(at + 2) % 7] + 0.4).append('\n');
            rows.append(at + 1).append(",disc,").append(DISC[at]).append('\n');
        }
        Flag flag = only(Terms.PAIRED.of(rows.toString()).flags(), Flag.Kind.FAR_VALUE);
        assertTrue(
                flag.reason().startsWith("Round 4 stands apart (disc against plain): the value is"),
                flag.reason());
        assertEquals(1, flag.whatIf().size());
        assertEquals("disc", flag.whatIf().get(0).then().condition());
    }

    @Test
    void tiringWithinDonningsIsPooledOverThem() {
        Bench bench = Bench.plain();
        for (int round = 1; round <= 4; round++) {
            for (String condition : List.of("bare", "disc")) {
                double slip = condition.equals("bare") ? 0.02 * (round % 2) : 0.03 * (round % 3);
                bench.start(round, condition).exercises(20).trials(5, 4.7 + slip).effort(300);
                bench.complete();
            }
        }
        Flag flag = only(inhalation(bench), Flag.Kind.TRIAL_TREND);
        // Mean of ln(second / first) over the eight donnings: -0.0575, so 5.6 % less.
        assertTrue(
                flag.reason()
                        .startsWith("Within donnings each inhalation takes about 5.6 % less than"),
                flag.reason());
    }

    @Test
    void fewValuesAndRoundedOnesAreLeftInPeace() {
        double[] three = {5, 5.1, 4.9};
        assertEquals(
                List.of(), inhalation(rounds(Bench.plain(), three, new double[] {5.6, 9.1, 5.5})));
        // One step of the last digit stands apart from equal values, whatever Grubbs says.
        double[] equal = {5, 5, 5, 5, 5, 5};
        double[] step = {5.5, 5.5, 5.5, 5.51, 5.5, 5.5};
        assertEquals(List.of(), inhalation(rounds(Bench.plain(), equal, step)));
        // On a line, each step one last digit.
        double[] steps = {5.5, 5.51, 5.51, 5.52};
        assertEquals(
                List.of(), inhalation(rounds(Bench.plain(), new double[] {5, 5, 5, 5}, steps)));
        assertEquals(List.of(), Bench.plain().measure("inhalation").flags());
    }

    @Test
    void aConditionThatDoesNotVaryGivesNoFactor() {
        StringBuilder rows = new StringBuilder();
        double[] other = {5.12, 6.34, 5.71, 7.02, 6.55, 5.93};
        for (int at = 0; at < other.length; at++) {
            rows.append(at + 1).append(",plain,5.0000\n");
            rows.append(at + 1).append(",disc,").append(other[at]).append('\n');
        }
        Flag flag = only(Terms.PAIRED.of(rows.toString()).flags(), Flag.Kind.SPREAD);
        // NumPy 2.4.6: standard deviation of the logarithms 0.1140, sqrt(expm1(s^2)) = 0.1144.
        assertTrue(
                flag.reason().startsWith("disc spreads by 11 % while plain does not vary, which"),
                flag.reason());
    }

    @Test
    void howOftenChanceDoesItIsRoundedToTheNearest() {
        assertEquals("which chance alone does about 4 times in 1000", Watched.chance(0.0041));
        assertEquals("which chance alone does about once in 1000", Watched.chance(0.0012));
        assertEquals(
                "which chance alone does less than once in 1000 times", Watched.chance(0.0009));
    }

    @Test
    void tablesAreFlaggedByTheirRounds() {
        StringBuilder rows = new StringBuilder();
        for (int at = 0; at < BARE.length; at++) {
            rows.append(at + 1).append(",plain,").append(BARE[at]).append('\n');
            rows.append(at + 1).append(",disc,").append(DISC[at]).append('\n');
        }
        Flag paired = only(Terms.PAIRED.of(rows.toString()).flags(), Flag.Kind.FAR_VALUE);
        assertTrue(
                paired.reason()
                        .endsWith(
                                "Look at how the values of round 4 came about; the round counts all"
                                        + " the same."),
                paired.reason());
        assertEquals(6, paired.whatIf().get(0).then().n());
        Flag apart =
                only(Terms.PAIRED.independent().of(rows.toString()).flags(), Flag.Kind.FAR_VALUE);
        assertTrue(
                apart.reason().startsWith("Round 4 of disc stands apart: 9.10, the others 5.51"));
        assertEquals("without round 4 of disc", apart.whatIf().get(0).without());
    }

    /**
     * Eight sound rounds (normal logarithms, rounds share a part, order alternates), two trials a
     * donning: each kind is flagged as often as it says, within four binomial standard errors.
     */
    @Test
    void soundValuesAreFlaggedAsRarelyAsPromised() {
        int sessions = 4_000;
        Setting setting =
                Sharing.setting(
                        Bench.plain().state().protocol(),
                        Bench.plain().state().protocol().measure("inhalation").orElseThrow());
        Random random = new Random(20261125);
        Map<Flag.Kind, Integer> flagged = new EnumMap<>(Flag.Kind.class);
        for (int session = 0; session < sessions; session++) {
            WhatIfs none = new WhatIfs(List.of(), (condition, left) -> null);
            for (Flag flag : Flags.of(sound(setting, random), none)) {
                flagged.merge(flag.kind(), 1, Integer::sum);
            }
        }
        double slack = 4 * Math.sqrt(Watched.ALPHA * (1 - Watched.ALPHA) / sessions);
        for (Flag.Kind kind :
                List.of(
                        Flag.Kind.FAR_VALUE,
                        Flag.Kind.TRIAL_TREND,
                        Flag.Kind.SPREAD,
                        Flag.Kind.ORDER)) {
            double share = (double) flagged.getOrDefault(kind, 0) / sessions;
            assertEquals(Watched.ALPHA, share, slack, kind.toString());
        }
        double trends = (double) flagged.get(Flag.Kind.ROUND_TREND) / sessions;
        assertEquals(
                2 * Watched.ALPHA, trends, slack * Math.sqrt(2), "of differences and of rounds");
    }

    private static Watched sound(Setting setting, Random random) {
        List<DonningValue> values = new ArrayList<>();
        for (int round = 1; round <= 8; round++) {
            double shared = 0.1 * random.nextGaussian();
            List<String> order = round % 2 == 0 ? List.of("bare", "disc") : List.of("disc", "bare");
            for (String condition : order) {
                double own = 2 + shared + 0.05 * random.nextGaussian();
                double first = own + 0.03 * random.nextGaussian();
                double second = own + 0.03 * random.nextGaussian();
                values.add(donning(values.size() + 1, round, condition, first, second));
            }
        }
        Map<String, String> titles = new LinkedHashMap<>();
        titles.put("bare", "the bare mask");
        titles.put("disc", "the mask with disc");
        return new Watched(setting, values, List.of(1, 2, 3, 4, 5, 6, 7, 8), titles);
    }

    private static DonningValue donning(
            int number, int round, String condition, double first, double second) {
        OptionalDouble value = OptionalDouble.of(Math.exp((first + second) / 2));
        return new DonningValue(
                number,
                round,
                condition,
                Standing.COUNTS,
                value,
                value,
                0,
                false,
                false,
                Level.NONE,
                List.of(trial(1, first), trial(2, second)),
                List.of(),
                List.of());
    }

    private static Part trial(int number, double time) {
        return new Part(
                "trial " + number,
                OptionalDouble.of(Math.exp(time)),
                false,
                true,
                Level.NONE,
                List.of(),
                "");
    }
}
