package rigside.archive;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigside.protocol.Condition;
import rigside.session.Donning;
import rigside.session.Event;
import rigside.session.Recorded;
import rigside.session.Schedule;
import rigside.session.State;

/**
 * When each donning of a session was begun, and how often its piece had been worn before.
 *
 * @param begun by the donning's number
 * @param before by the donning's number
 */
record Wearings(Map<Integer, Instant> begun, Map<Integer, Integer> before) {

    static Wearings of(State state, List<Recorded> events) {
        Map<Integer, Instant> begun = new HashMap<>();
        for (Recorded each : events) {
            if (each.event() instanceof Event.DonningStarted started) {
                begun.put(started.donning(), each.wall().toInstant());
            }
        }
        Map<String, Integer> worn = new HashMap<>();
        Map<Integer, Integer> before = new HashMap<>();
        for (Donning donning : state.course().donnings()) {
            Condition.Specimen piece =
                    state.protocol().condition(donning.condition()).orElseThrow().specimen();
            int earlier = worn.getOrDefault(piece.piece(), 0);
            // A setting tried with the mask still on is no wearing of its own, but a piece's first.
            boolean again = !Schedule.isPutOn(state, donning) && earlier > 0;
            before.put(donning.number(), piece.wornBefore() + (again ? earlier - 1 : earlier));
            worn.put(piece.piece(), again ? earlier : earlier + 1);
        }
        return new Wearings(begun, before);
    }

    Instant worn(int donning) {
        return begun.get(donning);
    }

    int before(int donning) {
        return before.get(donning);
    }
}
