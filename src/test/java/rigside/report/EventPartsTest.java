package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rigside.session.Event;
import rigside.session.Place;
import rigside.session.Slot;
import rigside.session.Stage;

class EventPartsTest {
    @Test
    void everyPartOfEveryEventIsToldOrLeftToOtherTables() {
        Set<String> known = new TreeSet<>(EventParts.WHERE);
        known.addAll(EventParts.POSITIONS);
        known.addAll(EventParts.WORDS);
        known.addAll(EventParts.ELSEWHERE);
        known.add(EventParts.ENTRY);
        Set<String> met =
                Arrays.stream(Event.class.getPermittedSubclasses())
                        .flatMap(kind -> Arrays.stream(kind.getRecordComponents()))
                        .map(RecordComponent::getName)
                        .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(known), met);
    }

    /** Every kind of event stands in the approved file, as the journal writes it. */
    @Test
    void kindsOfEventsAreSpeltAsInTheJournal() throws IOException {
        Set<String> spelt =
                Arrays.stream(Event.class.getPermittedSubclasses())
                        .map(Spelt::word)
                        .collect(Collectors.toCollection(TreeSet::new));
        Set<String> written = new TreeSet<>();
        for (String line :
                Files.readAllLines(Path.of("src/test/resources/journal/events-1.jsonl"))) {
            JsonNode event = new ObjectMapper().readTree(line).get("event");
            if (event != null) {
                written.add(event.asText());
            }
        }
        assertFalse(written.isEmpty());
        List<String> unknown = new ArrayList<>(written);
        unknown.removeAll(spelt);
        assertEquals(List.of(), unknown);
    }

    @Test
    void partsAreFoundByTheirNames() {
        Place place = new Place(Stage.DONNING, 3, 4);
        EventParts doubted =
                new EventParts(new Event.SlotLeftOut(new Slot.Mask(place, 1), "tube blocked"));
        assertEquals(3, doubted.donning());
        assertEquals(2, doubted.position());
        assertEquals("tube blocked", doubted.words());
        EventParts struck = new EventParts(new Event.EntryVoided(12, "typed wrongly"));
        assertEquals(12, struck.entry());
        assertEquals(0, struck.donning());
        EventParts abandoned = new EventParts(new Event.DonningAbandoned(2, "strap slipped"));
        assertEquals(2, abandoned.donning());
        assertEquals("sounded", new EventParts(new Event.Cued("", "sounded")).words());
    }
}
