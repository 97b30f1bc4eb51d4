package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.decide.OrderEffect;
import rigside.decide.TTest;

/**
 * What is worn later in a round against what is worn earlier, whichever condition it is; by the
 * order in which the donnings that count were really begun.
 */
record Orders(Watched watched) {

    /** Fewer rounds of one order say nothing of it: own judgement. */
    private static final int FEWEST_EACH = 2;

    List<Flag> all() {
        List<Flag> flags = new ArrayList<>();
        watched.others().forEach(each -> of(each).ifPresent(flags::add));
        return List.copyOf(flags);
    }

    private Optional<Flag> of(String condition) {
        List<Watched.Pair> pairs =
                watched.pairs(condition).stream()
                        .filter(pair -> pair.reference().donning() > 0)
                        .toList();
        List<Watched.Pair> early =
                pairs.stream()
                        .filter(pair -> pair.reference().donning() < pair.other().donning())
                        .toList();
        List<Watched.Pair> late = pairs.stream().filter(pair -> !early.contains(pair)).toList();
        if (Math.min(early.size(), late.size()) < FEWEST_EACH) {
            return Optional.empty();
        }
        TTest order =
                OrderEffect.of(
                        Watched.numbers(early, watched::difference),
                        Watched.numbers(late, watched::difference),
                        Watched.roundingOfPairs(pairs));
        return order.flagged(Watched.ALPHA)
                ? Optional.of(flag(condition, order, early.size(), late.size()))
                : Optional.empty();
    }

    private Flag flag(String condition, TTest order, int early, int late) {
        Wording wording = watched.wording(condition);
        return new Flag(
                Flag.Kind.ORDER,
                "In what is worn second in a round "
                        + wording.change(watched.setting().scale().outward(order.estimate()))
                        + (watched.setting().scale().isRatio() ? " as" : " than")
                        + " in what is worn first, whichever condition it is, "
                        + Watched.chance(order.p())
                        + ". "
                        + (early == late
                                ? "Each came first equally often, so it cancels out"
                                : wording.opening(wording.reference())
                                        + " came first in "
                                        + early
                                        + " rounds and second in "
                                        + late
                                        + ", so it does not quite cancel out")
                        + "; longer rests between donnings may help.",
                List.of(),
                List.of());
    }
}
