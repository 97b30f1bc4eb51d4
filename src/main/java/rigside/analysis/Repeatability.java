package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.decide.ExactLimits;
import rigside.decide.Limits;
import rigside.decide.Summary;
import rigside.decide.VarianceParts;
import rigside.protocol.Measure;
import rigside.protocol.Plan;

/**
 * How far one measure spreads when one condition is put on again and again: what a method can tell
 * at best. Nothing is compared and nothing decided. Spreads are standard deviations on the scale of
 * the analysis: of natural logarithms for ratios, in the measure's unit for differences.
 *
 * @param measure the measure
 * @param confidence of all limits, two-sided; each holds by itself
 * @param n the donnings whose values count
 * @param mean as people read it, geometric for ratios; empty without a value
 * @param spread of a donning's value; empty below two values, and where they do not tell it
 * @param limits of that spread, exact for values that spread normally; empty with it
 * @param parts what comes from trials within donnings and what from the donnings; empty without
 *     donnings of several trials
 * @param trialsPerDonning on average; 0 without trials
 * @param later what the spread means for later comparisons; empty with it
 * @param bounded whether some values are only known as "at least"
 * @param untold why the spread is not told although there are values, in words; empty otherwise
 */
public record Repeatability(
        Measure measure,
        double confidence,
        int n,
        OptionalDouble mean,
        OptionalDouble spread,
        Optional<Limits> limits,
        Optional<VarianceParts> parts,
        double trialsPerDonning,
        List<LaterPlan> later,
        boolean bounded,
        Optional<String> untold) {

    /** A spread below this many times what rounding alone gives is not told by the values. */
    private static final double AMPLE = 2;

    public Repeatability {
        later = List.copyOf(later);
    }

    /**
     * From the values of one condition.
     *
     * @param values one a donning; those that do not count are passed over
     */
    static Repeatability of(Measure measure, Plan plan, List<DonningValue> values) {
        List<DonningValue> counting = values.stream().filter(DonningValue::counts).toList();
        Scale scale = Scale.of(measure);
        Summary summary =
                Summary.of(
                        counting.stream()
                                .mapToDouble(each -> scale.inward(each.value().orElseThrow()))
                                .toArray());
        OptionalDouble mean =
                counting.isEmpty()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(scale.outward(summary.mean()));
        Optional<String> untold = untold(counting, summary.sd());
        boolean known = counting.size() > 1 && untold.isEmpty();
        Optional<VarianceParts> parts =
                known && measure.kind() instanceof Measure.TimedInhalation
                        ? KindOfRepeat.parts(measure, counting)
                        : Optional.empty();
        return new Repeatability(
                measure,
                plan.confidence(),
                counting.size(),
                mean,
                known ? OptionalDouble.of(summary.sd()) : OptionalDouble.empty(),
                known
                        ? Optional.of(
                                ExactLimits.standardDeviation(
                                        summary.sd(), counting.size() - 1, plan.confidence()))
                        : Optional.empty(),
                parts,
                parts.isPresent() ? KindOfRepeat.trialsPerDonning(measure, counting) : 0,
                known
                        ? LaterPlan.all(
                                scale,
                                summary.sd(),
                                ExactLimits.standardDeviation(
                                                summary.sd(),
                                                counting.size() - 1,
                                                plan.confidence())
                                        .high())
                        : List.of(),
                counting.stream().anyMatch(DonningValue::bounded),
                untold);
    }

    private static Optional<String> untold(List<DonningValue> counting, double sd) {
        if (counting.stream().anyMatch(DonningValue::bounded)) {
            return Optional.of(
                    "Some values are only known as \"at least\", so how far they spread is not"
                            + " known: use more ambient particles or sample longer.");
        }
        double rounding = Watched.rounding(counting);
        return counting.size() > 1 && !(sd > AMPLE * rounding)
                ? Optional.of(
                        rounding > 0
                                ? "The values differ by no more than rounding explains, so how far"
                                        + " they spread is not known: read them more finely."
                                : "The values do not differ at all, so how far they spread is not"
                                        + " known: read them more finely.")
                : Optional.empty();
    }

    /** What it says in plain words, the most important first; none without a value. */
    public List<String> sentences() {
        return new RepeatabilityWords(this).all();
    }

    /** Whether values are compared as ratios, their spread taken of natural logarithms. */
    public boolean isRatio() {
        return Scale.of(measure).isRatio();
    }

    /** Whether trials and donnings are told apart. */
    public boolean hasParts() {
        return parts.isPresent();
    }

    /** Its numbers as one would publish them; empty without a spread. */
    public Optional<String> technical() {
        return limits.map(each -> RepeatabilityWords.technical(this, each));
    }

    /** A spread as a protocol's expected-spread takes it: 5.2 %, 1.8 times, 12 Pa. */
    public String words(double size) {
        return RepeatabilityWords.size(Scale.of(measure), measure.unit(), size);
    }

    /** The same of the spread seen; empty with it. */
    public List<String> expectedSpreads() {
        List<String> all = new ArrayList<>();
        spread.ifPresent(size -> all.add(words(size)));
        limits.ifPresent(each -> all.add(words(each.high())));
        return List.copyOf(all);
    }
}
