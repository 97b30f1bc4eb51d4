package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import rigside.decide.Planning;
import rigside.decide.Rules;
import rigside.protocol.BenchTime;
import rigside.protocol.Measure;
import rigside.protocol.Plan;

/** What to make of a plan, and what would be a better one. */
final class PlanAdvice {

    /** More trials than this in one donning are no longer the same wearer: own judgement. */
    private static final int MOST_TRIALS = 20;

    /** Campaigns behind each plan tried: its chance is good to 0.005 (one sigma). */
    private static final int CAMPAIGNS = 10_000;

    /** A chance below it is said in percent: one case in ten would be too much said. */
    private static final double RARE = 0.08;

    /** A first look this wide settles hardly anything. */
    private static final double HOPELESS = 30;

    private final PlanTerms terms;
    private final List<PlanTable.Outcome> outcomes;
    private final double settle;
    private final long seed;

    PlanAdvice(PlanTerms terms, List<PlanTable.Outcome> outcomes, double settle, long seed) {
        this.terms = terms;
        this.outcomes = outcomes;
        this.settle = settle;
        this.seed = seed;
    }

    /** All of it, the chance to settle first. */
    List<String> all() {
        List<String> all = new ArrayList<>();
        all.add(
                "this plan settles "
                        + cases(settled(0))
                        + " when nothing differs, and "
                        + cases(settled(twice()))
                        + " when the difference is twice the meaningful one");
        all.add(length());
        all.add(
                "a true difference of just the meaningful size settles "
                        + cases(settled(twice() / 2))
                        + ": it lies on the edge, and no honest plan settles it often");
        all.add(
                "whatever the truth, a wrong claim comes in at most about "
                        + Figures.confidence(wrong())
                        + " of such comparisons");
        trials().ifPresent(all::add);
        all.addAll(cautions());
        return all;
    }

    /** With a narrow band both edges can be claimed wrongly, half of alpha each. */
    private double wrong() {
        double alpha = terms.setting().alpha();
        return switch (terms.setting().compared().matters()) {
            case EITHER -> alpha;
            case INCREASE, DECREASE -> alpha / 2;
        };
    }

    private String length() {
        int most = terms.setting().plan().most();
        int shortest = Math.max(terms.setting().plan().fewest(), terms.setting().perRound());
        OptionalInt enough = enough(terms, shortest);
        String wished = cases(settle);
        String units = " " + PlanSentences.units(terms.setting(), 2);
        if (enough.isEmpty()) {
            return "no plan of up to "
                    + Plan.MOST_ROUNDS
                    + units
                    + " settles "
                    + wished
                    + " when nothing differs: a smaller spread is needed, or a difference that"
                    + " matters only when larger";
        }
        int rounds = enough.getAsInt();
        if (rounds > most) {
            return "with " + rounds + units + " it settles " + wished;
        }
        return rounds == most
                ? "a shorter plan would not settle " + wished
                : "a plan of at most " + rounds + units + " would settle " + wished + " already";
    }

    /** The fewest rounds that settle as often as wished, with nothing and with twice too much. */
    private OptionalInt enough(PlanTerms plan, int shortest) {
        return Planning.fewestOf(
                shortest,
                Plan.MOST_ROUNDS,
                most -> {
                    Rules rules = plan.withMost(most).rules();
                    return settles(plan, rules, 0) >= settle
                            && settles(plan, rules, twice()) >= settle;
                });
    }

    private double settles(PlanTerms plan, Rules rules, double multiple) {
        return Planning.settles(
                rules,
                terms.setting().trueDifference(multiple),
                plan.spread(),
                CAMPAIGNS,
                new SplittableRandom(seed));
    }

    /**
     * @param trials a donning
     * @param rounds at most
     * @param seconds at the bench when nothing differs, on average
     */
    private record Choice(int trials, int rounds, double seconds) {}

    /** The cheapest rounds and trials a donning, when what they cost and bring is known. */
    private Optional<String> trials() {
        if (terms.trials().isEmpty()) {
            return Optional.empty();
        }
        Optional<Choice> best = Optional.empty();
        for (int count = 1; count <= MOST_TRIALS; count++) {
            Optional<Choice> next = choice(count);
            if (next.isPresent()
                    && (best.isEmpty() || next.get().seconds() < best.get().seconds())) {
                best = next;
            }
        }
        return best.map(
                choice ->
                        "cheapest plan found that settles "
                                + cases(settle)
                                + ": at most "
                                + PlanSentences.counted(terms.setting(), choice.rounds())
                                + " with "
                                + Figures.count(choice.trials(), "trial", "trials")
                                + " a donning, about "
                                + BenchTime.words(choice.seconds())
                                + " at the bench when nothing differs");
    }

    private Optional<Choice> choice(int count) {
        PlanTerms plan = terms.withTrials(count);
        OptionalInt most = enough(plan, plan.setting().plan().fewest());
        if (most.isEmpty()) {
            return Optional.empty();
        }
        double rounds =
                Planning.outlook(
                                plan.withMost(most.getAsInt()).rules(),
                                0,
                                plan.spread(),
                                CAMPAIGNS,
                                new SplittableRandom(seed))
                        .meanRounds();
        double seconds = rounds * plan.roundSeconds().orElseThrow();
        return Optional.of(new Choice(count, most.getAsInt(), seconds));
    }

    private List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        double first = terms.rules().criticalValues()[0];
        int fewest = terms.setting().plan().fewest();
        if (first > HOPELESS && fewest < terms.setting().plan().most()) {
            cautions.add(
                    "the look after "
                            + PlanSentences.counted(terms.setting(), fewest)
                            + " needs "
                            + Figures.three(first)
                            + " standard errors and settles hardly anything: begin looking one"
                            + " later");
        }
        if (terms.setting().isByTrial()) {
            cautions.add(
                    "trials of one donning are not donnings: the result speaks for these donnings"
                            + " only, not for the condition");
        }
        return cautions;
    }

    /** Twice the meaningful difference, in a direction that matters. */
    private double twice() {
        return terms.setting().compared().matters() == Measure.Compared.Matters.DECREASE ? -2 : 2;
    }

    private double settled(double multiple) {
        return 1
                - outcomes.stream()
                        .filter(each -> each.multiple() == multiple)
                        .findFirst()
                        .orElseThrow()
                        .unsettled();
    }

    /** A chance as cases in ten, or in words at the ends. */
    private static String cases(double share) {
        if (share < RARE) {
            return "hardly ever (" + Figures.percent(share) + ")";
        }
        return share >= 1 - RARE
                ? "nearly always (" + Figures.percent(share) + ")"
                : "in " + Math.round(10 * share) + " of 10 cases";
    }
}
