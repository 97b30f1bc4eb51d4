package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.session.Donning;
import rigside.session.Entry;
import rigside.session.State;

/**
 * A piece that was struck out, and what the verdicts would be with it taken back in.
 *
 * @param entry the entry; empty where a whole donning was struck out
 * @param donning the number of its donning; 0 outside donnings
 * @param reason as the tester gave it
 * @param looksBefore how many looks had been taken by then
 * @param effects of each comparison that had used it in a look; empty where none had, since then it
 *     costs nothing, and while results are concealed
 */
public record StruckOut(
        Optional<Entry> entry, int donning, String reason, int looksBefore, List<Effect> effects) {
    public StruckOut {
        effects = List.copyOf(effects);
    }

    /**
     * One comparison both ways.
     *
     * @param without as it stands, the piece left out
     * @param with as it would stand with the piece taken back in
     */
    public record Effect(Measure measure, Comparison without, Comparison with) {
        /** Whether both ways say the same, and the same way round. */
        public boolean agrees() {
            return without.presently().equals(with.presently());
        }
    }

    /** All pieces: entries by number, then whole donnings. */
    public static List<StruckOut> of(State state, Shown shown) {
        List<StruckOut> all = new ArrayList<>();
        for (Entry entry : state.captured().entries()) {
            entry.struck()
                    .ifPresent(
                            struck ->
                                    all.add(
                                            new StruckOut(
                                                    Optional.of(entry),
                                                    entry.slot().place().donning(),
                                                    struck.reason(),
                                                    struck.looksBefore(),
                                                    effects(state, shown, entry))));
        }
        for (Donning donning : state.course().donnings()) {
            if (donning.outcome() == Donning.Outcome.STRUCK) {
                all.add(
                        new StruckOut(
                                Optional.empty(),
                                donning.number(),
                                donning.reason(),
                                donning.looksBefore(),
                                effects(state, shown, donning)));
            }
        }
        return List.copyOf(all);
    }

    private static List<Effect> effects(State state, Shown shown, Entry entry) {
        return effects(
                state,
                shown,
                each ->
                        each.donningsBack().isEmpty()
                                && each.asLooked().containsKey(entry.number()));
    }

    private static List<Effect> effects(State state, Shown shown, Donning donning) {
        return effects(
                state,
                shown,
                each ->
                        each.asLooked().isEmpty()
                                && each.donningsBack().contains(donning.number()));
    }

    /** Whether other evidence is that with one piece taken back in, where it is that one alone. */
    private interface With {
        boolean is(Evidence evidence);
    }

    private static List<Effect> effects(State state, Shown shown, With piece) {
        List<Effect> effects = new ArrayList<>();
        if (!shown.result()) {
            return effects;
        }
        for (MeasureResult result : shown.measures()) {
            Measure measure = result.measure();
            Evidence.alternatives(state, measure.id()).stream()
                    .filter(each -> each.asLooked().size() + each.donningsBack().size() == 1)
                    .filter(piece::is)
                    .forEach(each -> effects.addAll(effects(state, result, each)));
        }
        return effects;
    }

    private static List<Effect> effects(State state, MeasureResult result, Evidence with) {
        Comparisons comparisons = new Comparisons(state, result.measure());
        return state.protocol().conditions().stream()
                .skip(1)
                .map(Condition::id)
                .map(
                        id ->
                                new Effect(
                                        result.measure(),
                                        result.comparison(id).orElseThrow(),
                                        comparisons.on(with, id)))
                .toList();
    }
}
