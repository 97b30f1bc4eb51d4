package rigside.analysis;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import rigside.protocol.Condition;
import rigside.session.Donning;
import rigside.session.Entry;
import rigside.session.Slot;
import rigside.session.State;

/**
 * The entries and donnings an analysis rests on: as the session stands, or with some of what was
 * struck out or amended as it was before, or some donnings left out to see what they do.
 *
 * @param state the session
 * @param asLooked entries as a look had them, by their numbers: struck ones that count here all the
 *     same, before those that replaced them, and amended ones with their value of then
 * @param donningsBack numbers of struck donnings that count here all the same, before those that
 *     replaced them
 * @param donningsOut numbers of donnings that are there but give no value
 */
record Evidence(
        State state,
        Map<Integer, Entry> asLooked,
        Set<Integer> donningsBack,
        Set<Integer> donningsOut) {

    Evidence {
        asLooked = Collections.unmodifiableMap(new TreeMap<>(asLooked));
        donningsBack = Set.copyOf(donningsBack);
        donningsOut = Set.copyOf(donningsOut);
    }

    static Evidence of(State state) {
        return new Evidence(state, Map.of(), Set.of(), Set.of());
    }

    /** The same without the values of these donnings; their rounds stay complete. */
    Evidence without(Set<Integer> donnings) {
        return new Evidence(state, asLooked, donningsBack, donnings);
    }

    /** Whether a donning's value is left out, to see what it does. */
    boolean isOut(Donning donning) {
        return donningsOut.contains(donning.number());
    }

    /**
     * The same session with what was struck out of a measure, or amended, after a look that had
     * used it as it was then: all of it, and each single piece of it. Empty when nothing was. What
     * was struck out or amended before its round's look is not among them: it costs nothing.
     */
    static List<Evidence> alternatives(State state, String measure) {
        Map<Integer, Entry> entries = new ChangedSince(state, measure).entries();
        List<Integer> donnings = new ChangedSince(state, measure).donnings();
        List<Evidence> alternatives = new ArrayList<>();
        if (entries.size() + donnings.size() > 0) {
            alternatives.add(new Evidence(state, entries, Set.copyOf(donnings), Set.of()));
        }
        if (entries.size() + donnings.size() > 1) {
            entries.forEach(
                    (number, then) ->
                            alternatives.add(
                                    new Evidence(state, Map.of(number, then), Set.of(), Set.of())));
            donnings.forEach(
                    each ->
                            alternatives.add(
                                    new Evidence(state, Map.of(), Set.of(each), Set.of())));
        }
        return List.copyOf(alternatives);
    }

    /** The amended entries that have their value before here, as they were then; by number. */
    List<Entry> unamended() {
        return asLooked.values().stream()
                .filter(
                        then ->
                                state.captured()
                                        .entry(then.number())
                                        .filter(Entry::stands)
                                        .isPresent())
                .toList();
    }

    /** Whether something that was struck out counts here. */
    boolean hasStruck() {
        return !donningsBack.isEmpty() || unamended().size() < asLooked.size();
    }

    /** All entries, struck out or not, as they are here. */
    List<Entry> entries() {
        return state.captured().entries().stream()
                .map(entry -> asLooked.getOrDefault(entry.number(), entry))
                .toList();
    }

    /** Those of a donning. */
    List<Entry> entries(Donning donning) {
        return entries().stream()
                .filter(entry -> entry.slot().place().donning() == donning.number())
                .toList();
    }

    /**
     * The entry that counts for a gap.
     *
     * @param entries those of the gap's donning, as they are here
     */
    Optional<Entry> entry(List<Entry> entries, Slot slot) {
        List<Entry> ofSlot =
                entries.stream().filter(each -> each.stands() && each.slot().equals(slot)).toList();
        return ofSlot.stream()
                .filter(each -> asLooked.containsKey(each.number()))
                .findFirst()
                .or(() -> ofSlot.stream().findFirst());
    }

    /** Whether a donning counts here. */
    boolean counts(Donning donning) {
        return switch (donning.outcome()) {
            case COMPLETE -> !isReplaced(donning);
            case STRUCK -> donningsBack.contains(donning.number());
            case OPEN, ABANDONED -> false;
        };
    }

    /** The donning of a condition in a round that counts. */
    Optional<Donning> worn(int round, String condition) {
        return state.course().donnings().stream()
                .filter(donning -> sameTurn(donning, round, condition) && counts(donning))
                .findFirst();
    }

    /** The rounds in which every condition has a donning that counts, rising. */
    List<Integer> completeRounds() {
        int last = state.course().donnings().stream().mapToInt(Donning::round).max().orElse(0);
        return IntStream.rangeClosed(1, last)
                .filter(
                        round ->
                                state.protocol().conditions().stream()
                                        .map(Condition::id)
                                        .allMatch(each -> worn(round, each).isPresent()))
                .boxed()
                .toList();
    }

    private boolean isReplaced(Donning donning) {
        return state.course().donnings().stream()
                .anyMatch(
                        other ->
                                donningsBack.contains(other.number())
                                        && sameTurn(other, donning.round(), donning.condition()));
    }

    private static boolean sameTurn(Donning donning, int round, String condition) {
        return donning.round() == round && donning.condition().equals(condition);
    }
}
