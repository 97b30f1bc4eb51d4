package rigside.session;

import java.util.List;
import java.util.Optional;

/** What undo takes back: the last thing entered in this part of the session, and only that. */
final class Undo {
    private Undo() {}

    /** The event that takes it back; empty when there is nothing, or it is taken back already. */
    static Optional<Event> of(State state) {
        List<Entry> entries =
                state.captured().entries().stream().filter(entry -> isHere(state, entry)).toList();
        Optional<Entry> entry = last(entries);
        Optional<Captured.LeftOut> left =
                last(
                        state.captured().leftOut().stream()
                                .filter(each -> isHere(state, each.slot()))
                                .toList());
        boolean leftLast =
                left.isPresent() && left.get().afterEntry() >= entry.map(Entry::number).orElse(0);
        return leftLast
                ? left.map(each -> new Event.LeaveOutWithdrawn(each.slot()))
                : entry.filter(Entry::stands)
                        .map(each -> new Event.EntryVoided(each.number(), "undone"));
    }

    /** A fact voided in a donning is typed anew in it. */
    private static boolean isHere(State state, Entry entry) {
        return isHere(state, entry.slot())
                || state.course().open().filter(each -> entry.at() > each.startedAt()).isPresent();
    }

    private static boolean isHere(State state, Slot slot) {
        int donning = state.course().open().map(Donning::number).orElse(0);
        return slot.place().stage() == state.course().stage() && slot.place().donning() == donning;
    }

    private static <T> Optional<T> last(List<T> list) {
        return list.isEmpty() ? Optional.empty() : Optional.of(list.get(list.size() - 1));
    }
}
