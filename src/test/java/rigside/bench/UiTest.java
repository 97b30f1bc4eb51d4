package rigside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.screen.View.Page;
import rigside.screen.View.Prompt;
import rigside.session.Event;
import rigside.session.Gated;
import rigside.session.Place;
import rigside.session.Slot;
import rigside.session.Source;
import rigside.session.Stage;
import rigside.session.State;
import rigside.session.Story;
import rigside.session.Value;

class UiTest {
    private static final Place PLACE = new Place(Stage.DONNING, 1, 0);
    private static final State STATE = Story.atFirstDonning().state();
    private static final Event CAPTURED =
            new Event.EntryCaptured(
                    4,
                    new Slot.Trial(PLACE, 0),
                    new Value.Measured(new Quantity(6.25, Unit.SECOND)),
                    Source.TIMED);

    @Test
    void anEntryThatWasTimedIsConfirmedWithoutItsValue() {
        assertEquals(
                Optional.of("entry 4 is captured"),
                Ui.START.typing("6.25").taken(STATE, List.of(CAPTURED)).message());
    }

    @Test
    void whatWasTypedIsClearedOnceItIsTaken() {
        Ui asked = Ui.START.asking(Prompt.NOTE, 0).typing("cold");
        Ui after = asked.taken(STATE, List.of(new Event.NoteWritten("cold")));
        assertEquals("", after.typed());
        assertEquals(Optional.empty(), after.prompt());
    }

    @Test
    void timeDoesNotDisturbAPrompt() {
        Ui asked = Ui.START.asking(Prompt.NOTE, 0).typing("cold");
        assertEquals(asked, asked.noticed(STATE, List.of(new Event.RestFinished(PLACE))));
    }

    @Test
    void anInstrumentThatFailsIsSaidAtOnceAndDisturbsNothingTyped() {
        Event failed = new Event.FeedFailed("gauge", "gauge: nothing for 2 s");
        Ui asked = Ui.START.asking(Prompt.NOTE, 0).typing("cold");
        assertEquals(asked.saying("gauge: nothing for 2 s"), asked.noticed(STATE, List.of(failed)));
        Ui typing = Ui.START.typing("40");
        assertEquals("40", typing.noticed(STATE, List.of(failed)).typed());
    }

    @Test
    void timeThatLedToNothingChangesNothing() {
        Ui typing = Ui.START.typing("40");
        assertEquals(typing, typing.noticed(STATE, List.of()));
    }

    @Test
    void aReadingThatArrivedReplacesWhatWasTyped() {
        assertEquals("", Ui.START.typing("40").noticed(STATE, List.of(CAPTURED)).typed());
    }

    @Test
    void theSelectedLineStaysOnOtherPages() {
        Ui entries = Ui.START.at(Page.ENTRIES).selecting(3);
        assertEquals(3, entries.noticed(STATE, List.of(CAPTURED)).selected());
    }

    private static Optional<String> said(Event... events) {
        return Ui.START.taken(STATE, List.of(events)).message();
    }

    @Test
    void aTypedEntryIsConfirmedWithWhatItIs() {
        Slot slot = new Slot.Mask(new Place(Stage.DONNING, 1, 2), 0);
        Value value = new Value.Measured(new Quantity(40, Unit.ONE));
        assertEquals(
                Optional.of(
                        "entry 4: concentration in the mask, exercise 1 Normal breathing 40,"
                                + " captured"),
                said(new Event.EntryCaptured(4, slot, value, Source.TYPED)));
        assertEquals(
                Optional.of("entry 4 is captured"),
                said(new Event.EntryCaptured(4, slot, value, Source.INSTRUMENT)));
    }

    @Test
    void whatIsLeftOutIsSaidWithItsReason() {
        assertEquals(
                Optional.of("left out: gauge drifted"),
                said(new Event.SlotLeftOut(new Slot.Trial(PLACE, 0), "gauge drifted")));
    }

    @Test
    void aGateGonePastIsNotSaidToBeLeftOut() {
        assertEquals(
                Optional.of("went on all the same: no zero filter"),
                Ui.START
                        .taken(
                                Gated.atGates().state(),
                                List.of(
                                        new Event.SlotLeftOut(
                                                new Slot.Gate(new Place(Stage.BEFORE, 0, 1), 0),
                                                "no zero filter")))
                        .message());
    }

    @Test
    void whatMayBeLeftEmptyIsSaidToBeLeftEmptyOnce() {
        Slot temperature = new Slot.Field(new Place(Stage.BEFORE, 0, 0), "temperature");
        assertEquals(
                Optional.of("room temperature is left empty"),
                said(new Event.SlotLeftOut(temperature, "left empty")));
    }

    @Test
    void aFailedCheckSaysWhatToDo() {
        Event failed = new Event.ItemFailed(PLACE, 0);
        assertEquals(
                Optional.of(
                        "'The straps are seated' is not so: put it right, then all of this list again"),
                said(failed));
        assertEquals(
                Optional.of("donning 1 is abandoned; take the mask off"),
                said(failed, new Event.DonningAbandoned(1, "the straps are seated")));
        assertEquals(
                Optional.of("donning 1 is abandoned and will be done again"),
                said(new Event.DonningAbandoned(1, "strap")));
    }
}
