package rigside.analysis;

import java.util.List;
import java.util.function.BiFunction;

/**
 * What comparisons would say without some values.
 *
 * @param comparisons as they stand
 * @param without the comparison of a condition, by its id, without these values
 */
record WhatIfs(
        List<Comparison> comparisons, BiFunction<String, List<DonningValue>, Comparison> without) {

    /**
     * @param words what is left out
     * @param conditions whose comparisons it would change
     */
    List<Flag.WhatIf> without(String words, List<String> conditions, List<DonningValue> values) {
        return comparisons.stream()
                .filter(each -> conditions.contains(each.condition()))
                .map(
                        each ->
                                new Flag.WhatIf(
                                        words,
                                        each,
                                        without.apply(each.condition(), values).asView()))
                .toList();
    }
}
