package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import rigside.protocol.BenchTime;
import rigside.protocol.Plan;

/** What to make of a plan, and what would be a better one. */
final class PlanAdvice {

    /** A chance below it is said in percent: one case in ten would be too much said. */
    private static final double RARE = 0.08;

    /** A first look this wide settles hardly anything. */
    private static final double HOPELESS = 30;

    private final PlanTerms terms;
    private final List<PlanTable.Outcome> outcomes;
    private final PlanSearch search;

    PlanAdvice(PlanTerms terms, List<PlanTable.Outcome> outcomes, double settle, long seed) {
        this.terms = terms;
        this.outcomes = outcomes;
        this.search = new PlanSearch(terms, settle, seed);
    }

    /** All of it, the chance to settle first. */
    List<String> all() {
        List<String> all = new ArrayList<>();
        all.add(
                "this plan settles "
                        + chance(settled(0))
                        + " when nothing differs, and "
                        + chance(settled(search.twice()))
                        + " when the difference is twice the meaningful one");
        Optional<PlanSearch.Found> enough = search.shortest();
        all.add(enough.map(this::length).orElseGet(this::noLength));
        enough.flatMap(this::lookedAtOnce).ifPresent(all::add);
        all.add(
                "a true difference of just the meaningful size settles "
                        + chance(settled(search.twice() / 2))
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

    private String noLength() {
        return "no plan of up to "
                + PlanSentences.counted(terms.setting(), Plan.MOST_ROUNDS)
                + " settles "
                + wished()
                + " when nothing differs: a smaller spread is needed, or a difference that matters"
                + " only when larger";
    }

    private String length(PlanSearch.Found enough) {
        int most = terms.setting().plan().most();
        String rounds = PlanSentences.counted(terms.setting(), enough.most());
        if (enough.most() == most) {
            return "a shorter plan would not settle " + wished();
        }
        String what =
                enough.most() > most
                        ? "with " + rounds + " it settles " + wished()
                        : "a plan of at most " + rounds + " would settle " + wished() + " already";
        return terms.roundSeconds().isPresent() ? what + ", in " + time(enough) : what;
    }

    /** What looking costs: the fixed number of rounds that would settle as often. */
    private Optional<String> lookedAtOnce(PlanSearch.Found enough) {
        OptionalInt fixed = search.lookedAtOnce();
        return fixed.isEmpty() || enough.terms().rules().schedule().looks().size() == 1
                ? Optional.empty()
                : Optional.of(
                        "decided beforehand and looked at only once, "
                                + PlanSentences.counted(terms.setting(), fixed.getAsInt())
                                + " would settle as often as at most "
                                + enough.most()
                                + " looked at after each, which take "
                                + String.format(Locale.ROOT, "%.1f", enough.none().meanRounds())
                                + " on average when nothing differs");
    }

    /** The cheapest rounds and trials a donning, when what they cost and bring is known. */
    private Optional<String> trials() {
        return terms.trials()
                .flatMap(known -> search.cheapest())
                .map(
                        found ->
                                "cheapest plan found that settles "
                                        + wished()
                                        + ": at most "
                                        + PlanSentences.counted(terms.setting(), found.most())
                                        + " with "
                                        + Figures.count(
                                                found.terms().trials().orElseThrow().perDonning(),
                                                "trial",
                                                "trials")
                                        + " a donning, "
                                        + time(found));
    }

    private static String time(PlanSearch.Found found) {
        return "about " + BenchTime.words(found.seconds()) + " at the bench when nothing differs";
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

    private double settled(double multiple) {
        return 1
                - outcomes.stream()
                        .filter(each -> each.multiple() == multiple)
                        .findFirst()
                        .orElseThrow()
                        .unsettled();
    }

    /** The wished chance as it was said: of ten cases, or in percent between tenths. */
    private String wished() {
        double tenths = 10 * search.settle();
        return Math.abs(tenths - Math.rint(tenths)) < 1e-9
                ? "in " + Math.round(tenths) + " of 10 cases"
                : "in " + Figures.confidence(search.settle()) + " of cases";
    }

    /** A chance as cases in ten, or in words at the ends, and in percent. */
    private static String chance(double share) {
        String words =
                share < RARE
                        ? "hardly ever"
                        : share >= 1 - RARE
                                ? "nearly always"
                                : "in " + Math.round(10 * share) + " of 10 cases";
        return words + " (" + Figures.percent(share) + ")";
    }
}
