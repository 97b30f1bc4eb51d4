package rigside.bench;

import java.util.List;
import java.util.Optional;
import rigside.analysis.SlotWords;
import rigside.protocol.Step;
import rigside.session.Applicable;
import rigside.session.Event;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.Source;
import rigside.session.State;

/**
 * What is confirmed to the tester. Only values that the tester typed are said: others may be
 * concealed.
 *
 * @param state where the session stands after the events
 * @param checked whether a check that was not so led to them
 */
record Confirmation(State state, boolean checked) {

    /** The words for the last event that needs any. */
    static Optional<String> of(State state, List<Event> events) {
        Confirmation confirmation =
                new Confirmation(
                        state, events.stream().anyMatch(Event.ItemFailed.class::isInstance));
        return events.stream()
                .flatMap(event -> confirmation.words(event).stream())
                .reduce((earlier, later) -> later);
    }

    private Optional<String> words(Event event) {
        if (event instanceof Event.EntryCaptured captured) {
            return Optional.of(captured(captured));
        }
        if (event instanceof Event.EntryVoided voided) {
            return Optional.of("entry " + voided.entry() + " is struck out: " + voided.reason());
        }
        if (event instanceof Event.EntryAmended amended) {
            return Optional.of(
                    "entry "
                            + amended.entry()
                            + " is amended to "
                            + amended.value()
                            + ": "
                            + amended.reason()
                            + undone(amended.entry()));
        }
        if (event instanceof Event.AmendmentWithdrawn withdrawn) {
            return Optional.of(
                    "entry " + withdrawn.entry() + " is as it was before it was amended");
        }
        if (event instanceof Event.DonningStruck struck) {
            return Optional.of(
                    "donning " + struck.donning() + " is struck out and will be done again");
        }
        if (event instanceof Event.DonningAbandoned abandoned) {
            return Optional.of(
                    "donning "
                            + abandoned.donning()
                            + (checked && !state.isFromPaper()
                                    ? " is abandoned; take the mask off"
                                    : " is abandoned and will be done again"));
        }
        if (event instanceof Event.ItemFailed failed) {
            return again(failed);
        }
        if (event instanceof Event.SlotLeftOut left) {
            return Optional.of(leftOut(left));
        }
        if (event instanceof Event.TimeDoubted doubted) {
            return Optional.of(doubted.why());
        }
        if (event instanceof Event.FeedFailed failed) {
            return Optional.of(failed.why());
        }
        if (event instanceof Event.FeedBack back) {
            return Optional.of(back.words());
        }
        return event instanceof Event.NoteWritten
                ? Optional.of("the note is written")
                : Optional.empty();
    }

    /** A gap may be left out with a reason, an optional one be left empty, a gate gone past. */
    private String leftOut(Event.SlotLeftOut event) {
        if (event.slot() instanceof Slot.Gate) {
            return "went on all the same: " + event.reason();
        }
        return event.reason().equals("left empty")
                ? SlotWords.within(state, event.slot()) + " is left empty"
                : "left out: " + event.reason();
    }

    private String captured(Event.EntryCaptured event) {
        if (event.source() != Source.TYPED) {
            return "entry " + event.entry() + " is captured";
        }
        String value = event.value().toString();
        return "entry "
                + event.entry()
                + ": "
                + SlotWords.within(state, event.slot())
                + (value.isEmpty() ? " left empty" : " " + value)
                + ", captured";
    }

    /** What a donning that is over would have had to hold, had the answer been right at once. */
    private String undone(int entry) {
        List<String> steps = Applicable.missed(state, entry);
        return steps.isEmpty()
                ? ""
                : "; not done, though it should have been: " + String.join("; ", steps);
    }

    /** Where a no leads; what stops the session says so itself. */
    private Optional<String> again(Event.ItemFailed event) {
        Step.Checklist step = (Step.Checklist) Procedure.step(state, event.place());
        Step.Checklist.Item item = step.items().get(event.item());
        String notSo = "'" + item.text() + "' is not so: ";
        return switch (item.ifNot()) {
            case STOP -> Optional.empty();
            case GO_ON -> Optional.of(notSo + "kept as an outcome");
            case REPEAT, ABANDON ->
                    Optional.of(notSo + "put it right, then all of this list again");
        };
    }
}
