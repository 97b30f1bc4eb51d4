package rigside.analysis;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import rigside.decide.FixedDesign;
import rigside.decide.Outlook;
import rigside.decide.Planning;
import rigside.decide.Rules;
import rigside.protocol.Plan;

/**
 * Looks for plans that settle as often as wished, both with nothing different and with twice the
 * meaningful difference in every direction that matters.
 *
 * @param terms of the plan as it is
 * @param settle the wished chance to settle, in (0, 1)
 * @param seed of the campaigns
 */
record PlanSearch(PlanTerms terms, double settle, long seed) {

    /** The difference that is to be settled as often as none, in meaningful ones. */
    static final int TWICE = 2;

    /** More trials than this in one donning are no longer the same wearer: own judgement. */
    static final int MOST_TRIALS = 10;

    /** Campaigns behind each plan tried: its chance is good to 0.005 (one sigma). */
    private static final int CAMPAIGNS = 10_000;

    /**
     * A plan that settles as often as wished.
     *
     * @param terms of this plan
     * @param none what it brings when nothing differs
     */
    record Found(PlanTerms terms, Outlook none) {

        int most() {
            return terms.setting().plan().most();
        }

        /** Rounds on average when nothing differs. */
        double rounds() {
            return none.meanRounds() / terms.setting().perRound();
        }

        /** Time at the bench on average when nothing differs, in seconds. */
        double seconds() {
            return rounds() * terms.roundSeconds().orElseThrow();
        }
    }

    /** The shortest plan, with looks and trials as they are. */
    Optional<Found> shortest() {
        return shortest(terms);
    }

    /** The cheapest rounds and trials a donning, with looks as they are. */
    Optional<Found> cheapest() {
        int planned = terms.trials().orElseThrow().perDonning();
        return IntStream.concat(IntStream.rangeClosed(1, MOST_TRIALS), IntStream.of(planned))
                .distinct()
                .mapToObj(terms::withTrials)
                .flatMap(plan -> shortest(plan).stream())
                .reduce((best, next) -> next.seconds() < best.seconds() ? next : best);
    }

    /** The fewest rounds that settle as often when looked at only once, at the end. */
    OptionalInt lookedAtOnce() {
        return Planning.fewestOf(
                Plan.LEAST_ROUNDS,
                Plan.MOST_ROUNDS,
                count -> {
                    Rules rules = terms.withRounds(count, count).rules();
                    return truths().allMatch(
                                    truth ->
                                            FixedDesign.of(rules, truth, terms.spread()).settles()
                                                    >= settle);
                });
    }

    /** The shortest plan that looks as they are leave room for. */
    int least() {
        return Math.max(terms.setting().plan().fewest(), terms.setting().perRound());
    }

    private Optional<Found> shortest(PlanTerms plan) {
        int fewest = plan.setting().plan().fewest();
        OptionalInt enough =
                Planning.fewestOf(
                        least(),
                        Plan.MOST_ROUNDS,
                        most -> {
                            Rules rules = plan.withRounds(fewest, most).rules();
                            return truths().allMatch(truth -> settles(rules, plan, truth));
                        });
        return enough.isEmpty()
                ? Optional.empty()
                : Optional.of(found(plan.withRounds(fewest, enough.getAsInt())));
    }

    private boolean settles(Rules rules, PlanTerms plan, double truth) {
        return Planning.settles(rules, truth, plan.spread(), CAMPAIGNS, new SplittableRandom(seed))
                >= settle;
    }

    private Found found(PlanTerms plan) {
        return new Found(
                plan,
                Planning.outlook(
                        plan.rules(), 0, plan.spread(), CAMPAIGNS, new SplittableRandom(seed)));
    }

    private DoubleStream truths() {
        return DoubleStream.concat(
                DoubleStream.of(0),
                terms.signs().stream()
                        .mapToDouble(sign -> terms.setting().trueDifference(TWICE * sign)));
    }
}
