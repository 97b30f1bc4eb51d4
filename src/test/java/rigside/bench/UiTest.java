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
import rigside.session.Place;
import rigside.session.Slot;
import rigside.session.Source;
import rigside.session.Stage;
import rigside.session.Value;

class UiTest {
    private static final Place PLACE = new Place(Stage.DONNING, 1, 0);
    private static final Event CAPTURED =
            new Event.EntryCaptured(
                    4,
                    new Slot.Trial(PLACE, 0),
                    new Value.Measured(new Quantity(6.25, Unit.SECOND)),
                    Source.TIMED);

    @Test
    void anEntryIsConfirmedWithoutItsValue() {
        assertEquals(
                Optional.of("entry 4 is captured"),
                Ui.START.typing("6.25").taken(List.of(CAPTURED)).message());
    }

    @Test
    void whatWasTypedIsClearedOnceItIsTaken() {
        Ui asked = Ui.START.asking(Prompt.NOTE, 0).typing("cold");
        Ui after = asked.taken(List.of(new Event.NoteWritten("cold")));
        assertEquals("", after.typed());
        assertEquals(Optional.empty(), after.prompt());
    }

    @Test
    void timeDoesNotDisturbAPrompt() {
        Ui asked = Ui.START.asking(Prompt.NOTE, 0).typing("cold");
        assertEquals(asked, asked.noticed(List.of(new Event.RestFinished(PLACE))));
    }

    @Test
    void timeThatLedToNothingChangesNothing() {
        Ui typing = Ui.START.typing("40");
        assertEquals(typing, typing.noticed(List.of()));
    }

    @Test
    void aReadingThatArrivedReplacesWhatWasTyped() {
        assertEquals("", Ui.START.typing("40").noticed(List.of(CAPTURED)).typed());
    }

    @Test
    void theSelectedLineStaysOnOtherPages() {
        Ui entries = Ui.START.at(Page.ENTRIES).selecting(3);
        assertEquals(3, entries.noticed(List.of(CAPTURED)).selected());
    }
}
