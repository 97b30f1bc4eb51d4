package rigside.session;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What undo takes back: the last thing entered in this part of the session, and only that.
 *
 * @param place where it was entered
 * @param afterEntry the number of the entry before it; of an entry its own
 * @param isEntry whether it is an entry; other things with the same number came after it
 * @param back the event that takes it back; empty when it is taken back already
 */
record Undo(Place place, int afterEntry, boolean isEntry, Optional<Event> back) {

    /** With no entry in between, what belongs to a later step was entered later. */
    private static final Comparator<Undo> IN_ORDER =
            Comparator.comparingInt(Undo::afterEntry)
                    .thenComparing(undo -> !undo.isEntry())
                    .thenComparingInt(undo -> undo.place().step());

    /**
     * The event that takes it back; empty when there is nothing, when it is taken back already, or
     * when the session is closed.
     */
    static Optional<Event> of(State state) {
        if (state.course().closed()) {
            return Optional.empty();
        }
        Captured.Amended amended = state.captured().amended();
        if (amended.last() > 0) {
            return Optional.<Event>of(new Event.AmendmentWithdrawn(amended.last()))
                    .filter(back -> !amended.takenBack());
        }
        return all(state)
                .reduce((last, next) -> IN_ORDER.compare(next, last) < 0 ? last : next)
                .flatMap(Undo::back);
    }

    /** A fact voided in a donning is typed anew in it. */
    private static Stream<Undo> all(State state) {
        Captured captured = state.captured();
        long begun = state.course().open().map(Donning::startedAt).orElse(Long.MAX_VALUE);
        return Stream.of(
                        captured.entries().stream()
                                .filter(
                                        entry ->
                                                isHere(state, entry.slot().place())
                                                        || entry.at() > begun)
                                .map(Undo::of),
                        captured.leftOut().stream()
                                .filter(left -> isHere(state, left.slot().place()))
                                .map(Undo::of),
                        captured.answers().stream()
                                .filter(answer -> isHere(state, answer.place()))
                                .map(Undo::of))
                .flatMap(each -> each);
    }

    private static Undo of(Entry entry) {
        Event back = new Event.EntryVoided(entry.number(), "undone");
        return new Undo(
                entry.slot().place(),
                entry.number(),
                true,
                Optional.of(back).filter(each -> entry.stands()));
    }

    private static Undo of(Captured.LeftOut left) {
        Event back = new Event.LeaveOutWithdrawn(left.slot());
        return new Undo(left.slot().place(), left.afterEntry(), false, Optional.of(back));
    }

    private static Undo of(Captured.Answer answer) {
        Event back = new Event.ItemReopened(answer.place(), answer.item());
        return new Undo(
                answer.place(),
                answer.afterEntry(),
                false,
                Optional.of(back).filter(each -> answer.stands()));
    }

    private static boolean isHere(State state, Place place) {
        int donning = state.course().open().map(Donning::number).orElse(0);
        return place.stage() == state.course().stage() && place.donning() == donning;
    }
}
