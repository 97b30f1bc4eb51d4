package rigside.analysis;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import rigside.protocol.Measure;
import rigside.protocol.Plan;

/**
 * The analysis of a table of values: the same looks, verdicts and forecasts as of a session whose
 * rounds it holds in their order.
 *
 * @param comparisons one for each condition but the first met, which is the reference
 * @param promise what the confidence covers, in words
 * @param flags what is worth a second look; may be empty
 */
public record TableAnalysis(List<Comparison> comparisons, String promise, List<Flag> flags) {

    public TableAnalysis {
        comparisons = List.copyOf(comparisons);
        flags = List.copyOf(flags);
    }

    /**
     * Analyses a table.
     *
     * @param compared how values are compared
     * @param plan fewest and most rounds (values per condition when independent), confidence,
     *     exponent and design
     */
    public static TableAnalysis of(ValueTable table, Measure.Compared compared, Plan plan) {
        return of(table, compared, plan, table.resolution());
    }

    /**
     * The same of values whose step is known otherwise than by their last digits.
     *
     * @param resolution the smallest step the values show; 0 when nothing is known of one
     */
    public static TableAnalysis of(
            ValueTable table, Measure.Compared compared, Plan plan, double resolution) {
        Measure measure = Measure.bare(resolution, compared);
        Map<String, SortedMap<Integer, Double>> values = table.byCondition();
        List<String> conditions = List.copyOf(values.keySet());
        Setting setting = new Setting(measure, plan, conditions.size() - 1, 1);
        String reference = conditions.get(0);
        List<Comparison> comparisons =
                conditions.stream()
                        .skip(1)
                        .map(
                                condition ->
                                        new Pairing(values.get(reference), values.get(condition))
                                                .comparison(
                                                        new Wording(setting, condition, reference)))
                        .toList();
        return new TableAnalysis(
                comparisons,
                Sentences.covered(setting, conditions.size() - 1)
                        + (conditions.size() > 2 ? ", which share the error equally." : "."),
                new TableFlags(setting, values, comparisons).all());
    }

    /** What was left out of the table and why, in words, each with its condition. */
    public List<String> leftOut() {
        return comparisons.stream()
                .flatMap(each -> each.remarks().stream().map(r -> each.condition() + ": " + r))
                .toList();
    }
}
