package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import rigside.protocol.Condition;
import rigside.session.Donning;
import rigside.session.Entry;
import rigside.session.Look;
import rigside.session.Slot;
import rigside.session.State;

/**
 * The entries and donnings an analysis rests on: as the session stands, or with some of what was
 * struck out taken back in, or some donnings left out to see what they do.
 *
 * @param state the session
 * @param entriesBack numbers of struck entries that count here all the same, before those that
 *     replaced them
 * @param donningsBack numbers of struck donnings that count here all the same, before those that
 *     replaced them
 * @param donningsOut numbers of donnings that are there but give no value
 */
record Evidence(
        State state,
        Set<Integer> entriesBack,
        Set<Integer> donningsBack,
        Set<Integer> donningsOut) {

    Evidence {
        entriesBack = Set.copyOf(entriesBack);
        donningsBack = Set.copyOf(donningsBack);
        donningsOut = Set.copyOf(donningsOut);
    }

    static Evidence of(State state) {
        return new Evidence(state, Set.of(), Set.of(), Set.of());
    }

    /** The same without the values of these donnings; their rounds stay complete. */
    Evidence without(Set<Integer> donnings) {
        return new Evidence(state, entriesBack, donningsBack, donnings);
    }

    /** Whether a donning's value is left out, to see what it does. */
    boolean isOut(Donning donning) {
        return donningsOut.contains(donning.number());
    }

    /**
     * The same session with what was struck out of a measure after a look that had used it: all of
     * it taken back in, and each single piece of it. Empty when nothing was. What was struck out
     * before its round's look is not among them: it costs nothing.
     */
    static List<Evidence> alternatives(State state, String measure) {
        Set<Integer> entries = Set.copyOf(struckEntries(state, measure));
        Set<Integer> donnings = Set.copyOf(struckDonnings(state, measure));
        List<Evidence> alternatives = new ArrayList<>();
        if (entries.size() + donnings.size() > 0) {
            alternatives.add(new Evidence(state, entries, donnings, Set.of()));
        }
        if (entries.size() + donnings.size() > 1) {
            entries.stream()
                    .sorted()
                    .forEach(
                            each ->
                                    alternatives.add(
                                            new Evidence(state, Set.of(each), Set.of(), Set.of())));
            donnings.stream()
                    .sorted()
                    .forEach(
                            each ->
                                    alternatives.add(
                                            new Evidence(state, Set.of(), Set.of(each), Set.of())));
        }
        return List.copyOf(alternatives);
    }

    /** All entries of a donning, struck out or not. */
    List<Entry> entries(Donning donning) {
        return state.captured().entries().stream()
                .filter(entry -> entry.slot().place().donning() == donning.number())
                .toList();
    }

    /**
     * The entry that counts for a gap.
     *
     * @param entries those of the gap's donning
     */
    Optional<Entry> entry(List<Entry> entries, Slot slot) {
        List<Entry> ofSlot = entries.stream().filter(each -> each.slot().equals(slot)).toList();
        return ofSlot.stream()
                .filter(each -> !each.stands() && entriesBack.contains(each.number()))
                .findFirst()
                .or(() -> ofSlot.stream().filter(Entry::stands).findFirst());
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

    private static List<Integer> struckEntries(State state, String measure) {
        return state.captured().entries().stream()
                .filter(
                        entry ->
                                entry.struck()
                                        .filter(
                                                struck ->
                                                        used(
                                                                state,
                                                                measure,
                                                                struck.looksBefore(),
                                                                Set.of(entry.number())))
                                        .isPresent())
                .map(Entry::number)
                .toList();
    }

    private static List<Integer> struckDonnings(State state, String measure) {
        return state.course().donnings().stream()
                .filter(
                        donning ->
                                donning.outcome() == Donning.Outcome.STRUCK
                                        && used(
                                                state,
                                                measure,
                                                donning.looksBefore(),
                                                entriesOf(state, donning)))
                .map(Donning::number)
                .toList();
    }

    private static Set<Integer> entriesOf(State state, Donning donning) {
        return Set.copyOf(
                state.captured().entries().stream()
                        .filter(entry -> entry.slot().place().donning() == donning.number())
                        .map(Entry::number)
                        .toList());
    }

    /**
     * Whether one of the first looks gave an interval that rested on one of these entries. A
     * complete round before the fewest is not a look: no interval was seen.
     */
    private static boolean used(State state, String measure, int looks, Set<Integer> entries) {
        return state.captured().looks().stream()
                .limit(looks)
                .map(Look::lines)
                .flatMap(List::stream)
                .anyMatch(
                        line ->
                                line.measure().equals(measure)
                                        && line.low().isPresent()
                                        && line.entries().stream().anyMatch(entries::contains));
    }
}
