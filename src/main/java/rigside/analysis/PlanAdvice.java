package rigside.analysis;

import java.util.ArrayList;
import java.util.Comparator;
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
        Optional<PlanSearch.Found> enough = search.shortest();
        OptionalInt once = search.lookedAtOnce();
        Optional<PlanSearch.Found> cheapest = terms.trials().flatMap(known -> search.cheapest());
        int worse = worse();
        List<String> all = new ArrayList<>();
        all.add(
                "this plan settles "
                        + chance(settled(0))
                        + " when nothing differs, and "
                        + chance(settled(PlanSearch.TWICE * worse))
                        + " when the difference is twice the "
                        + meaningful(worse));
        boolean hopeless = enough.isEmpty() && once.isEmpty() && cheapest.isEmpty();
        all.add(enough.map(this::length).orElseGet(() -> noLength(hopeless)));
        once.ifPresent(count -> lookedAtOnce(enough, count).ifPresent(all::add));
        all.add(
                "a true difference of just the meaningful size settles "
                        + chance(settled(worse))
                        + ": it lies on the edge, and no honest plan settles it often");
        all.add(
                "whatever the truth, a wrong claim comes in at most about "
                        + Phrases.error(wrong())
                        + " of such comparisons");
        cheapest.map(this::cheapest).ifPresent(all::add);
        all.addAll(cautions());
        return all;
    }

    /** The sign of a difference that matters of which twice the meaningful one settles less. */
    private int worse() {
        return terms.signs().stream()
                .min(Comparator.comparingDouble(sign -> settled(PlanSearch.TWICE * sign)))
                .orElseThrow();
    }

    private String meaningful(int sign) {
        if (terms.signs().size() == 1) {
            return "meaningful one";
        }
        return sign < 0
                ? "meaningful decrease (an increase settles no less often)"
                : "meaningful increase (a decrease settles no less often)";
    }

    /** With a narrow band both edges can be claimed wrongly, half of alpha each. */
    private double wrong() {
        double alpha = terms.setting().alpha();
        return switch (terms.setting().compared().matters()) {
            case EITHER -> alpha;
            case INCREASE, DECREASE -> alpha / 2;
        };
    }

    private String noLength(boolean hopeless) {
        return searched()
                + " no plan of up to "
                + PlanSentences.counted(terms.setting(), Plan.MOST_ROUNDS)
                + " settles "
                + wishedOfBoth()
                + (hopeless
                        ? ", nor does one looked at only once: a smaller spread is needed, or a"
                                + " difference that matters only when larger"
                        : "");
    }

    private String length(PlanSearch.Found enough) {
        int most = terms.setting().plan().most();
        String rounds = PlanSentences.counted(terms.setting(), enough.most());
        if (enough.most() == most) {
            return most == search.least()
                    ? "this plan settles "
                            + wishedOfBoth()
                            + "; with looks only from its end on no shorter one was tried"
                    : searched() + " a shorter plan would not settle " + wishedOfBoth();
        }
        String what =
                enough.most() > most
                        ? "with " + rounds + " it settles " + wishedOfBoth()
                        : "a plan of at most " + rounds + " would already settle " + wishedOfBoth();
        return terms.roundSeconds().isPresent() ? what + ", in " + time(enough) : what;
    }

    /** What was held fixed while lengths were tried. */
    private String searched() {
        return looks()
                + terms.trials()
                        .map(each -> " and " + trials(each.perDonning()) + " a donning")
                        .orElse("");
    }

    private String looks() {
        int fewest = terms.setting().plan().fewest();
        return "with looks from "
                + (terms.setting().isPaired()
                        ? "round " + fewest
                        : PlanSentences.counted(terms.setting(), fewest))
                + " on";
    }

    /** What looking costs: the fixed number of rounds that would settle as often. */
    private Optional<String> lookedAtOnce(Optional<PlanSearch.Found> enough, int count) {
        String once =
                "decided beforehand and looked at only once, "
                        + PlanSentences.counted(terms.setting(), count)
                        + " would settle ";
        if (enough.isEmpty()) {
            return Optional.of(once + "that often");
        }
        PlanSearch.Found found = enough.get();
        if (found.terms().rules().schedule().looks().size() == 1) {
            return count < found.most() ? Optional.of(once + "that often") : Optional.empty();
        }
        return Optional.of(
                once
                        + "as often as at most "
                        + found.most()
                        + " looked at after each, which take "
                        + String.format(Locale.ROOT, "%.1f", found.none().meanRounds())
                        + " on average when nothing differs");
    }

    /** The cheapest rounds and trials a donning, when what they cost and bring is known. */
    private String cheapest(PlanSearch.Found found) {
        return "cheapest plan found that settles that often "
                + looks()
                + ": at most "
                + PlanSentences.counted(terms.setting(), found.most())
                + " with "
                + trials(found.terms().trials().orElseThrow().perDonning())
                + " a donning, "
                + time(found);
    }

    private static String trials(int count) {
        return Phrases.count(count, "trial", "trials");
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
                            + Digits.three(first)
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
                : "in " + Phrases.confidence(search.settle()) + " of cases";
    }

    private String wishedOfBoth() {
        return wished()
                + " both when nothing differs and when the difference is twice the meaningful one"
                + (terms.signs().size() == 1 ? "" : " in either direction");
    }

    /** A chance as cases in ten, or in words at the ends, and in percent. */
    private static String chance(double share) {
        String words =
                share < RARE
                        ? "hardly ever"
                        : share >= 1 - RARE
                                ? "nearly always"
                                : "in " + Math.round(10 * share) + " of 10 cases";
        return words + " (" + simulated(share) + ")";
    }

    /** Of simulated campaigns none or all is not never or always. */
    private static String simulated(double share) {
        return Digits.percent(Math.min(Math.max(share, 1e-9), 1 - 1e-9));
    }
}
