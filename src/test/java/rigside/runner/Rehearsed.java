package rigside.runner;

import java.io.IOException;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import rigside.rig.SimulatedRig;
import rigside.rig.Wearer;
import rigside.session.Event;
import rigside.session.Recorded;
import rigside.session.State;

/**
 * A rehearsed session of a protocol.
 *
 * @param events everything recorded
 * @param end where it ended, closed
 */
public record Rehearsed(List<Recorded> events, State end) {
    private static final ZonedDateTime MORNING =
            ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);

    /** A wearer who fares in every condition alike: nothing differs. */
    public static Rehearsed withoutDifference(String name, String text, long seed)
            throws IOException {
        return of(name, text, Wearer.plain(List.of()), seed);
    }

    public static Rehearsed of(String name, String text, Wearer wearer, long seed)
            throws IOException {
        List<Recorded> kept = new ArrayList<>();
        Ledger ledger =
                (events, wall, at) ->
                        events.forEach(
                                event -> kept.add(new Recorded(kept.size() + 1, wall, at, event)));
        SimulatedRig rig = new SimulatedRig(wearer, seed);
        Event.SessionOpened opening =
                new Event.SessionOpened("test", name, text, seed, rig.words(), "", true, 1);
        return new Rehearsed(kept, Rehearsal.run(ledger, rig, MORNING, opening));
    }
}
