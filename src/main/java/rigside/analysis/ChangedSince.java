package rigside.analysis;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rigside.session.Donning;
import rigside.session.Entry;
import rigside.session.Look;
import rigside.session.Slot;
import rigside.session.State;

/**
 * What was struck out of a measure, or amended, after a look that had used it. However often it was
 * changed, what counts is how the first of these looks had it: a choice among later values gains
 * nothing, and whoever amends an entry back has changed nothing.
 *
 * @param measure its id
 */
record ChangedSince(State state, String measure) {

    /** The entries as that look had them, standing, by their numbers. */
    Map<Integer, Entry> entries() {
        Map<Integer, Entry> changed = new TreeMap<>();
        for (Entry entry : state.captured().entries()) {
            changed(entry).ifPresent(then -> changed.put(entry.number(), then));
        }
        return changed;
    }

    private Optional<Entry> changed(Entry entry) {
        OptionalInt look =
                entry.isAmended() || !entry.stands() ? firstLook(entry) : OptionalInt.empty();
        if (look.isEmpty()) {
            return Optional.empty();
        }
        Entry then = entry.asLooked(look.getAsInt()).standing();
        boolean struck =
                entry.struck().filter(how -> how.looksBefore() > look.getAsInt()).isPresent();
        boolean amended = !then.value().equals(entry.value()) || then.seconds() != entry.seconds();
        return struck || (entry.stands() && amended) ? Optional.of(then) : Optional.empty();
    }

    private OptionalInt firstLook(Entry entry) {
        List<Look> looks = state.captured().looks();
        return IntStream.range(entry.looksBefore(), looks.size())
                .filter(
                        at ->
                                rested(looks.get(at), Set.of(entry.number()))
                                        || decided(looks.get(at), entry))
                .findFirst();
    }

    /** The numbers of the donnings struck out as a whole, rising. */
    List<Integer> donnings() {
        return state.course().donnings().stream()
                .filter(donning -> donning.outcome() == Donning.Outcome.STRUCK)
                .filter(this::wasUsed)
                .map(Donning::number)
                .toList();
    }

    private boolean wasUsed(Donning donning) {
        Set<Integer> entries =
                state.captured().entries().stream()
                        .filter(entry -> entry.slot().place().donning() == donning.number())
                        .map(Entry::number)
                        .collect(Collectors.toSet());
        return state.captured().looks().stream()
                .limit(donning.looksBefore())
                .anyMatch(look -> rested(look, entries));
    }

    /**
     * Whether a look gave an interval that rested on one of these entries. A complete round before
     * the fewest is not a look: no interval was seen.
     */
    private boolean rested(Look look, Set<Integer> entries) {
        return look.lines().stream()
                .anyMatch(
                        line ->
                                showed(line)
                                        && line.entries().stream().anyMatch(entries::contains));
    }

    private boolean showed(Look.Line line) {
        return line.measure().equals(measure) && line.low().isPresent();
    }

    /**
     * Whether an answer of a donning that the look had may have kept a value out of it, by saying
     * that its step is not done.
     */
    private boolean decided(Look look, Entry entry) {
        return entry.slot() instanceof Slot.Field field
                && state.protocol().donning().stream()
                        .flatMap(step -> step.head().applies().onlyIf().stream())
                        .anyMatch(each -> each.answer().equals(field.id()))
                && state.course()
                        .donning(field.place().donning())
                        .filter(donning -> donning.round() <= look.round())
                        .isPresent()
                && look.lines().stream().anyMatch(this::showed);
    }
}
