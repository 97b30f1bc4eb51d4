package rigside.analysis;

import static java.util.stream.Collectors.toList;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rigside.decide.Summary;
import rigside.decide.VarianceParts;
import rigside.protocol.Plan;

/**
 * Whether more inhalations within a donning, or more donnings, would sharpen a comparison.
 *
 * <p>With within-donning variance w (of one trial, pooled over donnings, on the analysis scale) and
 * k trials a donning, trials explain w / k of the variance of a donning's value. The share of that
 * in the variance seen between donnings says how much more trials could help at best.
 */
final class KindOfRepeat {

    /** Up to this share more trials are not worth it, from the second on they are: convention. */
    private static final double LITTLE = 0.25;

    private static final double MUCH = 0.5;

    /** Donnings (rounds when paired) below which a spread between them says too little. */
    private static final int FEWEST = 3;

    /** More than that in one donning tires: own judgement. */
    private static final int MOST_TRIALS = 10;

    private KindOfRepeat() {}

    /**
     * The advice in words; empty when trials do not stand behind the values, or it is too early.
     *
     * @param values of the measure, one a donning
     */
    static Optional<String> advice(Setting setting, List<DonningValue> values, Rows rows) {
        List<List<double[]>> trials = trials(setting, values);
        boolean many = trials.stream().flatMap(List::stream).anyMatch(each -> each.length > 1);
        if (!many || setting.isByTrial() || rows.other().size() < FEWEST) {
            return Optional.empty();
        }
        VarianceParts parts = VarianceParts.of(trials);
        double perDonning =
                trials.stream()
                        .flatMap(List::stream)
                        .mapToInt(each -> each.length)
                        .average()
                        .orElse(1);
        double share = parts.trial() / perDonning / ofDonning(setting, rows);
        if (share <= LITTLE) {
            return Optional.of(
                    "More inhalations in this donning will not help: they explain only about "
                            + Figures.percent(share)
                            + " of the spread. Take the mask off and put it on again.");
        }
        return share >= MUCH
                ? Optional.of(
                        "About "
                                + Figures.percent(Math.min(1, share))
                                + " of the spread comes from the inhalations within a donning: a"
                                + " plan with more of them in each donning would settle sooner"
                                + best(setting.plan(), parts)
                                + ".")
                : Optional.empty();
    }

    /**
     * The variance of one donning's value; where rounds are paired, what remains within a round.
     */
    private static double ofDonning(Setting setting, Rows rows) {
        if (setting.isPaired()) {
            double sd = Summary.of(rows.differences(setting.scale())).sd();
            return sd * sd / 2;
        }
        double reference = Summary.of(rows.reference(setting.scale())).sd();
        double other = Summary.of(rows.other(setting.scale())).sd();
        return (reference * reference + other * other) / 2;
    }

    private static String best(Plan plan, VarianceParts parts) {
        return plan.donningSeconds().isPresent() && plan.trialSeconds().isPresent()
                ? "; for the time they take, "
                        + Figures.count(
                                parts.bestTrials(
                                        plan.donningSeconds().getAsDouble(),
                                        plan.trialSeconds().getAsDouble(),
                                        MOST_TRIALS),
                                "trial",
                                "trials")
                        + " a donning would tell most"
                : "";
    }

    /** Trial times on the analysis scale, by condition and donning, of the donnings that count. */
    private static List<List<double[]>> trials(Setting setting, List<DonningValue> values) {
        return values.stream()
                .filter(DonningValue::counts)
                .collect(Collectors.groupingBy(DonningValue::condition, TreeMap::new, toList()))
                .values()
                .stream()
                .map(donnings -> donnings.stream().map(each -> times(setting, each)).toList())
                .toList();
    }

    private static double[] times(Setting setting, DonningValue value) {
        return value.parts().stream()
                .filter(part -> part.value().isPresent())
                .mapToDouble(part -> setting.scale().inward(part.value().getAsDouble()))
                .toArray();
    }
}
