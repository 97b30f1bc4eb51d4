package rigside.analysis;

import java.util.List;
import rigside.protocol.Measure;
import rigside.session.State;

/**
 * What one measure comes to: its values and comparisons as in {@link MeasureResult}, silent about
 * what going on may bring and without what else is worth saying, which takes most of the time.
 *
 * @param measure the measure
 * @param values one for each donning begun, in the order they were begun
 * @param comparisons one for each condition but the reference; empty when the measure is only
 *     recorded
 */
public record Concluded(Measure measure, List<DonningValue> values, List<Comparison> comparisons) {
    public Concluded {
        values = List.copyOf(values);
        comparisons = List.copyOf(comparisons);
    }

    /**
     * One for each measure of the protocol, in its order. Nothing in it is concealed.
     *
     * @throws java.util.NoSuchElementException before the session is opened
     */
    public static List<Concluded> of(State state) {
        return state.protocol().measures().stream()
                .map(
                        measure ->
                                new Concluded(
                                        measure,
                                        Values.of(Evidence.of(state), measure),
                                        measure.compared().isPresent()
                                                ? new Comparisons(state, measure).withoutForecasts()
                                                : List.of()))
                .toList();
    }
}
