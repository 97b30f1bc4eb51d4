package rigside.desk;

import java.io.IOException;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import rigside.protocol.Protocol;
import rigside.runner.Ledger;
import rigside.runner.Rehearsal;
import rigside.runner.Rigs;
import rigside.session.Event;
import rigside.session.Recorded;
import rigside.session.State;

/**
 * One rehearsal of a protocol, kept nowhere: a whole session without a tester, every value
 * invented. It runs on a thread of its own, and tells how far it is.
 */
final class TrialRun {
    private final Protocol protocol;
    private final Event.SessionOpened opening;
    private final ZonedDateTime start;
    private final List<Recorded> events = new ArrayList<>();
    private final AtomicInteger donnings = new AtomicInteger();
    private volatile boolean left;

    TrialRun(Protocol protocol, Event.SessionOpened opening, ZonedDateTime start) {
        this.protocol = protocol;
        this.opening = opening;
        this.start = start;
    }

    /**
     * A session that is over, with everything recorded in it.
     *
     * @param state closed
     */
    record Played(State state, List<Recorded> events) {
        Played {
            events = List.copyOf(events);
        }
    }

    /**
     * Plays it to its close.
     *
     * @throws IOException if it was left, or does not come to its close; the message is for the
     *     tester
     */
    Played play() throws IOException {
        try {
            State state = Rehearsal.run(ledger(), Rigs.of(opening, protocol), start, opening);
            return new Played(state, events);
        } catch (IllegalStateException stuck) {
            throw new IOException("the rehearsal stopped: " + stuck.getMessage(), stuck);
        }
    }

    /** What it comes to need not be known any more. */
    void leave() {
        left = true;
    }

    /** How far it is, in words. */
    String progress() {
        int most = protocol.plan().most() * protocol.conditions().size();
        int now = donnings.get();
        return now == 0
                ? "rehearsing, before the first donning"
                : "rehearsing, donning " + now + " of at most " + most;
    }

    /** Keeps the events in memory, and refuses any more once it is left. */
    private Ledger ledger() {
        return (batch, wall, at) -> {
            if (left) {
                throw new IOException("the rehearsal was left");
            }
            for (Event event : batch) {
                events.add(new Recorded(events.size() + 1L, wall, at, event));
                if (event instanceof Event.DonningStarted) {
                    donnings.incrementAndGet();
                }
            }
        };
    }
}
