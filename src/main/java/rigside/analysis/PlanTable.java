package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import rigside.decide.CriticalValues;
import rigside.decide.Outlook;
import rigside.decide.Planning;
import rigside.decide.Rules;
import rigside.decide.Schedule;
import rigside.protocol.Measure;

/**
 * What a plan can be expected to bring, before any donning.
 *
 * @param terms what was asked, in sentences
 * @param looks in order
 * @param outcomes one a true difference, rising
 * @param advice sentences, the most important first; at least one
 */
public record PlanTable(
        List<String> terms, List<Look> looks, List<Outcome> outcomes, List<String> advice) {

    /** Campaigns played for each true difference: shares are good to 0.0016 (one sigma). */
    static final int CAMPAIGNS = 100_000;

    /** True differences tried, as multiples of the meaningful one. */
    private static final List<Double> MULTIPLES = List.of(0.0, 0.5, 1.0, 1.5, 2.0, 3.0);

    public PlanTable {
        terms = List.copyOf(terms);
        looks = List.copyOf(looks);
        outcomes = List.copyOf(outcomes);
        advice = List.copyOf(advice);
    }

    /**
     * One look.
     *
     * @param round after which it is taken
     * @param critical the interval is estimate &plusmn; this many standard errors
     * @param nominalP the two-sided p this has at one look by itself
     */
    public record Look(int round, double critical, double nominalP) {}

    /**
     * What the plan brings if this is the true difference; shares are of simulated campaigns.
     *
     * @param truth as people read it: a ratio, or a difference in the measure's unit
     * @param multiple the same in meaningful differences: 0 for none, -1 the meaningful decrease
     * @param meaningful share settled on a meaningful difference
     * @param noMeaningful share settled on no meaningful difference
     * @param unsettled share not settled when the plan is used up
     * @param meanRounds rounds used on average
     * @param ninetiethRounds rounds that nine of ten campaigns do not exceed
     * @param benchSeconds time at the bench on average; empty when no cost is known
     * @param coverage share in which all intervals hold the truth together
     */
    public record Outcome(
            double truth,
            double multiple,
            double meaningful,
            double noMeaningful,
            double unsettled,
            double meanRounds,
            int ninetiethRounds,
            OptionalDouble benchSeconds,
            double coverage) {}

    /**
     * Plays the plan.
     *
     * @param settle the wished chance to settle, in (0, 1)
     * @param seed the same seed gives the same table
     */
    public static PlanTable of(PlanTerms terms, double settle, long seed) {
        List<Outcome> outcomes =
                multiples(terms).stream().map(each -> outcome(terms, each, seed)).toList();
        return new PlanTable(
                PlanSentences.terms(terms),
                looks(terms),
                outcomes,
                new PlanAdvice(terms, outcomes, settle, seed).all());
    }

    /**
     * How often the plan settles where it should: when nothing differs, and when twice what matters
     * does, whichever is rarer. The same share as in the table.
     */
    static double settledAtLeast(PlanTerms terms, long seed) {
        return multiples(terms).stream()
                .filter(multiple -> multiple == 0 || Math.abs(multiple) == 2)
                .mapToDouble(multiple -> 1 - outcome(terms, multiple, seed).unsettled())
                .min()
                .orElse(1);
    }

    /**
     * What the plan brings if one true difference holds.
     *
     * @param truth on the analysis scale
     * @param seed the same seed gives the same figures
     */
    public static Outcome at(PlanTerms terms, double truth, long seed) {
        Measure.Compared compared = terms.setting().compared();
        double multiple = truth / (truth < 0 ? -compared.bandLow() : compared.bandHigh());
        return outcome(terms, truth, multiple, seed);
    }

    private static List<Look> looks(PlanTerms terms) {
        Rules rules = terms.rules();
        double[] critical = rules.criticalValues();
        double[] nominal = CriticalValues.nominal(rules.schedule(), critical);
        List<Look> looks = new ArrayList<>();
        for (int i = 0; i < critical.length; i++) {
            Schedule.Arms arms = rules.schedule().looks().get(i).arms();
            looks.add(new Look(arms.other() / terms.setting().perRound(), critical[i], nominal[i]));
        }
        return looks;
    }

    /** Both directions unless they are mirror images, then increases only. */
    private static List<Double> multiples(PlanTerms terms) {
        List<Double> multiples = new ArrayList<>();
        for (int i = MULTIPLES.size() - 1; i > 0 && !terms.isMirrored(); i--) {
            multiples.add(-MULTIPLES.get(i));
        }
        multiples.addAll(MULTIPLES);
        return multiples;
    }

    /** Every true difference is played with the same random numbers. */
    private static Outcome outcome(PlanTerms terms, double multiple, long seed) {
        return outcome(terms, terms.setting().trueDifference(multiple), multiple, seed);
    }

    private static Outcome outcome(PlanTerms terms, double truth, double multiple, long seed) {
        Outlook outlook =
                Planning.outlook(
                        terms.rules(),
                        truth,
                        terms.spread(),
                        CAMPAIGNS,
                        new SplittableRandom(seed));
        int perRound = terms.setting().perRound();
        double rounds = outlook.meanRounds() / perRound;
        return new Outcome(
                terms.setting().scale().outward(truth),
                multiple,
                outlook.meaningful(),
                outlook.noMeaningful(),
                outlook.unsettled(),
                rounds,
                outlook.ninetiethRounds() / perRound,
                terms.roundSeconds().isPresent()
                        ? OptionalDouble.of(rounds * terms.roundSeconds().getAsDouble())
                        : OptionalDouble.empty(),
                outlook.coverage());
    }
}
