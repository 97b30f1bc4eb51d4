package rigside.analysis;

import java.util.ArrayList;
import java.util.Arrays;
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
record Spreads(Watched watched, List<Flag> far) {

    List<Flag> all() {
        List<Flag> flags = new ArrayList<>();
        if (far.isEmpty()) {
            watched.others().forEach(each -> of(each).ifPresent(flags::add));
        }
        return List.copyOf(flags);
    }

    private Optional<Flag> of(String condition) {
        if (watched.setting().isPaired()) {
            List<Watched.Pair> pairs = watched.pairs(condition);
            return of(
                    condition,
                    Watched.numbers(pairs, pair -> watched.inward(pair.reference())),
                    Watched.numbers(pairs, pair -> watched.inward(pair.other())),
                    Watched.roundingOfPairs(pairs) / Math.sqrt(2));
        }
        return of(
                condition,
                values(watched.reference()),
                values(condition),
                Watched.rounding(watched.values()));
    }

    /** What the verdict rests on: trials where each stands for itself. */
    private double[] values(String condition) {
        List<DonningValue> values = watched.of(condition);
        return watched.setting().isByTrial()
                ? values.stream()
                        .flatMap(each -> each.parts().stream())
                        .flatMapToDouble(part -> part.value().stream())
                        .map(watched.setting().scale()::inward)
                        .toArray()
                : Watched.numbers(values, watched::inward);
    }

    private Optional<Flag> of(
            String condition, double[] reference, double[] other, double rounding) {
        if (Math.min(reference.length, other.length) < Watched.FEWEST) {
            return Optional.empty();
        }
        double one = Math.max(Summary.of(reference).sd(), rounding);
        double two = Math.max(Summary.of(other).sd(), rounding);
        double p = chance(reference, other, one, two, rounding);
        if (!(p < Watched.ALPHA)) {
            return Optional.empty();
        }
        boolean more = two > one;
        boolean varies = isVaried(reference) && isVaried(other);
        Wording wording = watched.wording(condition);
        return Optional.of(
                new Flag(
                        Flag.Kind.SPREAD,
                        wording.opening(more ? wording.condition() : wording.reference())
                                + " spreads "
                                + (varies
                                        ? Digits.two(more ? two / one : one / two)
                                                + " times as much as "
                                                + (more ? wording.reference() : wording.condition())
                                                + " ("
                                                + size(Math.max(one, two))
                                                + " against "
                                                + size(Math.min(one, two))
                                                + "), "
                                        : "by "
                                                + size(Math.max(one, two))
                                                + " while "
                                                + (more ? wording.reference() : wording.condition())
                                                + " does not vary, ")
                                + Watched.chance(p)
                                + ". "
                                + (watched.setting().isPaired()
                                        ? "The verdict rests on the differences within rounds and"
                                                + " holds all the same"
                                        : "The interval takes both to spread alike: read it with"
                                                + " care")
                                + "; look at what varied there.",
                        List.of(),
                        List.of()));
    }

    private static boolean isVaried(double[] values) {
        return Arrays.stream(values).distinct().count() > 1;
    }

    /** Where rounding is all the spread one of them has, its values go with no others. */
    private double chance(
            double[] reference, double[] other, double one, double two, double rounding) {
        if (watched.setting().isPaired() && Math.min(one, two) > rounding) {
            return PairedSpread.of(reference, other).test().p();
        }
        return one > 0 && two > 0
                ? new SpreadRatio(
                                two * two / (one * one), other.length - 1.0, reference.length - 1.0)
                        .p()
                : 1;
    }

    private String size(double sd) {
        return watched.setting().scale().isRatio()
                ? Digits.two(100 * Math.sqrt(Math.expm1(sd * sd))) + " %"
                : watched.wording(watched.others().get(0)).withUnit(Digits.two(sd));
    }
}
