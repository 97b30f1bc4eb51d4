package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.session.Donning;
import rigside.session.Entry;
import rigside.session.State;

/**
 * What the verdicts would be with something that was struck out or amended as a look had it: the
 * other of the two ways that have to agree.
 */
public final class BothWays {
    private BothWays() {}

    /**
     * One comparison both ways.
     *
     * @param now as the session stands
     * @param before with that piece as the look had it
     */
    public record Effect(Measure measure, Comparison now, Comparison before) {
        /** Whether both ways say the same, and the same way round. */
        public boolean agrees() {
            return now.presently().equals(before.presently());
        }
    }

    /**
     * Of an entry struck out or amended, for each comparison that had used it in a look. None where
     * no look had, since then it costs nothing, and of measures whose results are concealed.
     */
    public static List<Effect> of(State state, Shown shown, Entry entry) {
        return of(state, shown, Set.of(entry.number()), Set.of());
    }

    /** The same of a donning struck out as a whole. */
    public static List<Effect> of(State state, Shown shown, Donning donning) {
        return of(state, shown, Set.of(), Set.of(donning.number()));
    }

    private static List<Effect> of(
            State state, Shown shown, Set<Integer> entries, Set<Integer> donnings) {
        List<Effect> effects = new ArrayList<>();
        for (MeasureResult result : shown.results()) {
            Evidence.alternatives(state, result.measure().id()).stream()
                    .filter(each -> each.asLooked().keySet().equals(entries))
                    .filter(each -> each.donningsBack().equals(donnings))
                    .findFirst()
                    .ifPresent(before -> effects.addAll(effects(state, result, before)));
        }
        return List.copyOf(effects);
    }

    private static List<Effect> effects(State state, MeasureResult result, Evidence before) {
        if (result.measure().compared().isEmpty()) {
            return List.of();
        }
        Comparisons comparisons = new Comparisons(state, result.measure());
        return state.protocol().conditions().stream()
                .skip(1)
                .map(Condition::id)
                .map(
                        id ->
                                new Effect(
                                        result.measure(),
                                        result.comparison(id).orElseThrow(),
                                        comparisons.on(before, id)))
                .toList();
    }
}
