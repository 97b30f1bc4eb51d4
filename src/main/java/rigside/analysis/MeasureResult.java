package rigside.analysis;

import java.util.List;
import java.util.Optional;
import rigside.protocol.Measure;

/**
 * Everything one measure says.
 *
 * @param measure the measure
 * @param values one for each donning begun, in the order they were begun
 * @param conditions one for each condition, the reference first
 * @param comparisons one for each condition but the reference; empty when the measure is only
 *     recorded, or concealed
 * @param promise what the confidence covers, in one sentence; empty without comparisons
 * @param remarks what has to be known of the values themselves; may be empty
 * @param flags what is worth a second look; may be empty
 * @param method how the comparisons were reckoned, in sentences; empty without comparisons
 * @param repeatability how far it spreads where one condition is repeated; empty where conditions
 *     are compared, or concealed
 */
public record MeasureResult(
        Measure measure,
        List<DonningValue> values,
        List<ConditionSummary> conditions,
        List<Comparison> comparisons,
        String promise,
        List<String> remarks,
        List<Flag> flags,
        List<String> method,
        Optional<Repeatability> repeatability) {
    public MeasureResult {
        values = List.copyOf(values);
        conditions = List.copyOf(conditions);
        comparisons = List.copyOf(comparisons);
        remarks = List.copyOf(remarks);
        flags = List.copyOf(flags);
        method = List.copyOf(method);
    }

    /** The comparison of one condition with the reference. */
    public Optional<Comparison> comparison(String condition) {
        return comparisons.stream().filter(each -> each.condition().equals(condition)).findFirst();
    }

    /** The value of one donning. */
    public Optional<DonningValue> value(int donning) {
        return values.stream().filter(each -> each.donning() == donning).findFirst();
    }
}
