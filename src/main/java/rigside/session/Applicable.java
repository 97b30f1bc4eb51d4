package rigside.session;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.IntStream;
import rigside.protocol.OnlyIf;
import rigside.protocol.Step;

/**
 * Whether a step is done, given the condition worn and what was answered before it.
 *
 * @param is whether it is done
 * @param because the entries that decided it, and those that decided whether they were asked for;
 *     empty where the condition, a check or nothing decides
 */
public record Applicable(boolean is, List<Entry> because) {
    public Applicable {
        because = List.copyOf(because);
    }

    /** What an entry is that is kept and does not count: its step was done and is not any more. */
    public static final String NO_LONGER = "of a step that no longer applies";

    /**
     * The numbers of the entries that stand, though an answer changed since says that their step is
     * not done. They are kept and count for nothing.
     */
    public static Set<Integer> noLonger(State state) {
        Map<Place, List<Applicable>> parts = new HashMap<>();
        Set<Integer> numbers = new TreeSet<>();
        for (Entry entry : state.captured().entries()) {
            Place place = entry.slot().place();
            List<Applicable> part =
                    parts.computeIfAbsent(
                            new Place(place.stage(), place.donning(), 0),
                            each -> of(state, place.stage(), place.donning()));
            if (entry.stands() && !part.get(place.step()).is()) {
                numbers.add(entry.number());
            }
        }
        return Collections.unmodifiableSet(numbers);
    }

    /**
     * What the last amendment of an entry makes steps of parts that are over apply, so that they
     * should have been done and were not: the title of each and where. They stay undone.
     */
    public static List<String> missed(State state, int amended) {
        Optional<Entry> entry = state.captured().entry(amended).filter(Entry::isAmended);
        if (entry.isEmpty()) {
            return List.of();
        }
        Function<Slot, Optional<Entry>> before =
                slot ->
                        state.captured()
                                .standing(slot)
                                .map(each -> each.equals(entry.get()) ? each.withdrawn() : each);
        List<String> missed = new ArrayList<>();
        if (state.course().closed()) {
            missed.addAll(missed(state, Stage.BEFORE, 0, "", before));
            missed.addAll(missed(state, Stage.AFTER, 0, "", before));
        }
        for (Donning donning : state.course().donnings()) {
            if (donning.outcome() == Donning.Outcome.COMPLETE) {
                String where = " in donning " + donning.number();
                missed.addAll(missed(state, Stage.DONNING, donning.number(), where, before));
            }
        }
        return List.copyOf(missed);
    }

    private static List<String> missed(
            State state,
            Stage stage,
            int donning,
            String where,
            Function<Slot, Optional<Entry>> before) {
        List<Applicable> then = of(state, stage, donning, before);
        List<Applicable> now = of(state, stage, donning);
        List<Step> steps = Procedure.steps(state.protocol(), stage);
        return IntStream.range(0, steps.size())
                .filter(at -> now.get(at).is() && !then.get(at).is())
                .mapToObj(at -> steps.get(at).title() + where)
                .toList();
    }

    /** Of each step of one part, by its position, as the session stands. */
    static List<Applicable> of(State state, Stage stage, int donning) {
        return of(state, stage, donning, state.captured()::standing);
    }

    /**
     * Of each step of one part, by its position.
     *
     * @param donning the number of the donning; 0 outside donnings
     * @param entry the entry that counts for a gap
     */
    public static List<Applicable> of(
            State state, Stage stage, int donning, Function<Slot, Optional<Entry>> entry) {
        return Reckoning.of(state, stage, donning, entry).all();
    }

    /** The positions of the steps of one part that are done, as the session stands; rising. */
    public static List<Integer> steps(State state, Stage stage, int donning) {
        List<Applicable> all = of(state, stage, donning);
        List<Integer> steps = new ArrayList<>();
        for (int at = 0; at < all.size(); at++) {
            if (all.get(at).is()) {
                steps.add(at);
            }
        }
        return List.copyOf(steps);
    }

    /** Whether the step at a place is done, as the session stands. */
    public static boolean at(State state, Place place) {
        return of(state, place.stage(), place.donning()).get(place.step()).is();
    }

    /**
     * Goes through the steps of a part once, in order: a step depends on earlier ones only.
     *
     * @param decided those before the step looked at
     */
    private record Reckoning(
            State state,
            Stage stage,
            int donning,
            Function<Slot, Optional<Entry>> entry,
            List<Step> steps,
            List<Applicable> decided) {
        static Reckoning of(
                State state, Stage stage, int donning, Function<Slot, Optional<Entry>> entry) {
            List<Step> steps = Procedure.steps(state.protocol(), stage);
            return new Reckoning(state, stage, donning, entry, steps, new ArrayList<>());
        }

        List<Applicable> all() {
            Optional<Donning> worn = state.course().donning(donning);
            for (Step step : steps) {
                boolean isFor =
                        stage != Stage.DONNING
                                || worn.filter(each -> isFor(step, each)).isPresent();
                decided.add(isFor ? answered(step) : new Applicable(false, List.of()));
            }
            return List.copyOf(decided);
        }

        private boolean isFor(Step step, Donning worn) {
            return step.appliesTo(worn.condition())
                    && (!step.head().applies().onlyAfterPuttingOn()
                            || Schedule.isPutOn(state, worn));
        }

        private Applicable answered(Step step) {
            boolean is = true;
            List<Entry> because = new ArrayList<>();
            for (OnlyIf each : step.head().applies().onlyIf()) {
                int before = decided.size() - each.back();
                Optional<Place> asked = asked(each.answer(), before);
                because.addAll(deciding(each.answer(), before));
                asked.flatMap(place -> entry.apply(new Slot.Field(place, each.answer())))
                        .ifPresent(because::add);
                is &= asked.filter(place -> holds(each, place)).isPresent();
            }
            return new Applicable(is, because.stream().distinct().toList());
        }

        /** What decided in turn whether an answer was asked for. */
        private List<Entry> deciding(String answer, int before) {
            List<Entry> deciding = new ArrayList<>();
            for (int at = 0; at < before; at++) {
                if (steps.get(at).asks().contains(answer)) {
                    deciding.addAll(decided.get(at).because());
                }
            }
            return deciding.stream().distinct().toList();
        }

        /** The place where an answer was asked for last, before a step or before the donnings. */
        private Optional<Place> asked(String answer, int before) {
            for (int at = before - 1; at >= 0; at--) {
                if (decided.get(at).is() && steps.get(at).asks().contains(answer)) {
                    return Optional.of(new Place(stage, donning, at));
                }
            }
            return stage == Stage.BEFORE ? Optional.empty() : askedFirst(answer);
        }

        private Optional<Place> askedFirst(String answer) {
            Reckoning first = of(state, Stage.BEFORE, 0, entry);
            return first.asked(answer, first.all().size());
        }

        private boolean holds(OnlyIf onlyIf, Place place) {
            if (Procedure.step(state, place) instanceof Step.Checklist list) {
                return state.course()
                        .checked(place, list.position(onlyIf.answer()))
                        .flatMap(Checked::word)
                        .filter(onlyIf.test()::isMetBy)
                        .isPresent();
            }
            return entry.apply(new Slot.Field(place, onlyIf.answer()))
                    .map(Entry::value)
                    .filter(
                            value ->
                                    value instanceof Value.Measured number
                                            ? onlyIf.test().isMetBy(number.quantity())
                                            : onlyIf.test().isMetBy(value.toString()))
                    .isPresent();
        }
    }
}
