package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.stat.StatUtils;

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

    private KindOfRepeat() {}

    /**
     * The advice in words; empty when trials do not stand behind the values, or it is too early.
     *
     * @param values of the measure, one a donning
     */
    static Optional<String> advice(Setting setting, List<DonningValue> values, Rows rows) {
        List<double[]> trials = trials(setting, values);
        if (trials.isEmpty() || setting.isByTrial() || rows.other().size() < FEWEST) {
            return Optional.empty();
        }
        double perDonning = trials.stream().mapToInt(each -> each.length).average().orElse(1);
        double ofTrials = pooledVariance(trials) / perDonning * (setting.isPaired() ? 2 : 1);
        double between = between(setting, rows);
        if (!(between > 0)) {
            return Optional.empty();
        }
        double share = Math.min(1, ofTrials / between);
        if (share <= LITTLE) {
            return Optional.of(
                    "More inhalations in this donning will not help: they explain only about "
                            + Figures.percent(share)
                            + " of the spread. Take the mask off and put it on again.");
        }
        return share >= MUCH
                ? Optional.of(
                        "About "
                                + Figures.percent(share)
                                + " of the spread comes from the inhalations within a donning: a"
                                + " plan with more of them in each donning would settle sooner.")
                : Optional.empty();
    }

    /** The trial times of each donning that counts and has two or more. */
    private static List<double[]> trials(Setting setting, List<DonningValue> values) {
        List<double[]> trials = new ArrayList<>();
        for (DonningValue value : values) {
            double[] times =
                    value.parts().stream()
                            .filter(part -> part.value().isPresent())
                            .mapToDouble(part -> setting.scale().inward(part.value().getAsDouble()))
                            .toArray();
            if (value.counts() && times.length > 1) {
                trials.add(times);
            }
        }
        return trials;
    }

    private static double pooledVariance(List<double[]> trials) {
        double squares = 0;
        int freedom = 0;
        for (double[] each : trials) {
            squares += StatUtils.variance(each) * (each.length - 1);
            freedom += each.length - 1;
        }
        return squares / freedom;
    }

    /** Variance of a round's difference, or of one value pooled over the two conditions. */
    private static double between(Setting setting, Rows rows) {
        if (setting.isPaired()) {
            return StatUtils.variance(rows.differences(setting.scale()));
        }
        return pooledVariance(
                List.of(rows.reference(setting.scale()), rows.other(setting.scale())));
    }
}
