package rigside.report;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rigside.session.Event;
import rigside.session.Place;
import rigside.session.Slot;

/**
 * What one event says, by the names its record has for it: so a new kind of event is in the table
 * of events without anything being written for it, and a new name has to be told or left out (a
 * test asks for all of them).
 */
final class EventParts {
    /** What says where it was. */
    static final Set<String> WHERE = Set.of("place", "slot", "donning");

    /** What counts something of the step, from 0. */
    static final List<String> POSITIONS = List.of("exercise", "trial", "item", "gate");

    /** Words, in the order they are told. */
    static final List<String> WORDS =
            List.of("feed", "cue", "how", "programVersion", "reason", "why", "text", "words");

    /** What other tables hold, or the journal alone. */
    static final Set<String> ELSEWHERE =
            Set.of(
                    "protocolName",
                    "protocolText",
                    "seed",
                    "rig",
                    "rigText",
                    "simulated",
                    "speed",
                    "rigFolder",
                    "paper",
                    "round",
                    "turn",
                    "condition",
                    "value",
                    "source",
                    "seconds",
                    "trace",
                    "traced",
                    "ended",
                    "look",
                    "when",
                    "terminal",
                    "answers",
                    "median",
                    "p99",
                    "most",
                    "signal",
                    "reactions",
                    "heard",
                    "unheard");

    static final String ENTRY = "entry";

    private final Event event;

    EventParts(Event event) {
        this.event = event;
    }

    Optional<Place> place() {
        return part("place")
                .map(Place.class::cast)
                .or(() -> part("slot").map(slot -> ((Slot) slot).place()));
    }

    /** The number of the donning it was in or is about; 0 where none is named. */
    int donning() {
        return part("donning")
                .map(Integer.class::cast)
                .or(() -> place().map(Place::donning))
                .orElse(0);
    }

    /** Which exercise, trial, item or gate of the step, from 1; 0 where none is named. */
    int position() {
        return POSITIONS.stream()
                .flatMap(name -> part(name).stream())
                .map(at -> (Integer) at + 1)
                .findFirst()
                .or(() -> part("slot").map(slot -> Gap.of((Slot) slot).position()))
                .orElse(0);
    }

    /** The number of the entry it is about; 0 where none is. */
    int entry() {
        return part(ENTRY).map(Integer.class::cast).orElse(0);
    }

    /** What it says in words, parted by commas; empty where it has none. */
    String words() {
        return WORDS.stream()
                .flatMap(name -> part(name).stream())
                .map(String::valueOf)
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private Optional<Object> part(String name) {
        return Arrays.stream(event.getClass().getRecordComponents())
                .filter(component -> component.getName().equals(name))
                .findFirst()
                .map(this::value);
    }

    private Object value(RecordComponent component) {
        try {
            return component.getAccessor().invoke(event);
        } catch (ReflectiveOperationException notPublic) {
            throw new IllegalStateException("no accessor of " + component, notPublic);
        }
    }
}
