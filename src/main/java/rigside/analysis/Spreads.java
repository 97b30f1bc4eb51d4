package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.decide.PairedSpread;
import rigside.decide.SpreadRatio;
import rigside.decide.Summary;

/**
 * A condition that spreads more than the reference: by sums and differences of pairs when the
 * values of a round go together, by the ratio of variances when they do not. Where a value stands
 * apart that is told by itself, and the spread it makes is not told again.
 *
 * @param far what stands apart
 */
record Spreads(Worn worn, List<Flag> far) {

    List<Flag> all() {
        List<Flag> flags = new ArrayList<>();
        if (far.isEmpty()) {
            worn.others().forEach(each -> of(each).ifPresent(flags::add));
        }
        return List.copyOf(flags);
    }

    private Optional<Flag> of(String condition) {
        if (worn.setting().isPaired()) {
            List<Worn.Pair> pairs = worn.pairs(condition);
            return of(
                    condition,
                    Worn.numbers(pairs, pair -> worn.inward(pair.reference())),
                    Worn.numbers(pairs, pair -> worn.inward(pair.other())),
                    Worn.roundingOfPairs(pairs) / Math.sqrt(2));
        }
        return of(
                condition,
                values(worn.reference()),
                values(condition),
                Worn.rounding(worn.values()));
    }

    /** What the verdict rests on: trials where each stands for itself. */
    private double[] values(String condition) {
        List<DonningValue> values = worn.of(condition);
        return worn.setting().isByTrial()
                ? values.stream()
                        .flatMap(each -> each.parts().stream())
                        .flatMapToDouble(part -> part.value().stream())
                        .map(worn.setting().scale()::inward)
                        .toArray()
                : Worn.numbers(values, worn::inward);
    }

    private Optional<Flag> of(
            String condition, double[] reference, double[] other, double rounding) {
        if (Math.min(reference.length, other.length) < Worn.FEWEST) {
            return Optional.empty();
        }
        double one = Math.max(Summary.of(reference).sd(), rounding);
        double two = Math.max(Summary.of(other).sd(), rounding);
        double p = chance(reference, other, one, two, rounding);
        if (!(p < Worn.ALPHA)) {
            return Optional.empty();
        }
        boolean more = two > one;
        Wording wording = worn.wording(condition);
        return Optional.of(
                new Flag(
                        Flag.Kind.SPREAD,
                        Figures.sentence(more ? wording.condition() : wording.reference())
                                + " spreads "
                                + Figures.two(more ? two / one : one / two)
                                + " times as much as "
                                + (more ? wording.reference() : wording.condition())
                                + " ("
                                + size(Math.max(one, two))
                                + " against "
                                + size(Math.min(one, two))
                                + "), "
                                + Worn.chance(p)
                                + ". "
                                + (worn.setting().isPaired()
                                        ? "The verdict rests on the differences within rounds and"
                                                + " holds all the same"
                                        : "The interval takes both to spread alike: read it with"
                                                + " care")
                                + "; look at what varied there.",
                        List.of(),
                        List.of()));
    }

    /** Where rounding is all the spread one of them has, its values go with no others. */
    private double chance(
            double[] reference, double[] other, double one, double two, double rounding) {
        if (worn.setting().isPaired() && Math.min(one, two) > rounding) {
            return PairedSpread.of(reference, other).test().p();
        }
        return one > 0 && two > 0
                ? new SpreadRatio(
                                two * two / (one * one), other.length - 1.0, reference.length - 1.0)
                        .p()
                : 1;
    }

    private String size(double sd) {
        return worn.setting().scale().isRatio()
                ? Figures.two(100 * Math.sqrt(Math.expm1(sd * sd))) + " %"
                : worn.wording(worn.others().get(0)).withUnit(Figures.two(sd));
    }
}
