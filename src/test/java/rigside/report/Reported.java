package rigside.report;

import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.journal.JournalReader;
import rigside.journal.Reading;
import rigside.protocol.Protocol;
import rigside.rig.SimulatedRig;
import rigside.rig.Wearer;
import rigside.runner.Faults;
import rigside.runner.Ledger;
import rigside.runner.Rehearsal;
import rigside.runner.Tester;
import rigside.session.Event;
import rigside.session.Evolve;
import rigside.session.Recorded;

/** Sessions to report. */
final class Reported {
    private static final ZonedDateTime MORNING =
            ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);
    private static final long SECOND = 1_000_000_000L;

    private Reported() {}

    static Material demonstration() {
        Reading reading = JournalReader.read(Path.of("demo/recorded-session"));
        return of(reading.events());
    }

    static Material of(List<Recorded> events) {
        return Material.of(Evolve.fold(events), events);
    }

    /** A whole session by a protocol, in which nothing differs but what goes wrong. */
    static Material rehearsed(String text, long seed, String... faults) throws IOException {
        Protocol protocol = Read.of(text);
        List<String> problems = new ArrayList<>();
        List<Faults.Asked> asked = new ArrayList<>();
        for (String fault : faults) {
            Faults.read(protocol, fault, problems).ifPresent(asked::add);
        }
        if (!problems.isEmpty()) {
            throw new IllegalArgumentException(problems.toString());
        }
        List<Recorded> kept = new ArrayList<>();
        Ledger ledger =
                (events, wall, at) ->
                        events.forEach(
                                event -> kept.add(new Recorded(kept.size() + 1, wall, at, event)));
        SimulatedRig rig = new SimulatedRig(Wearer.plain(List.of()), seed);
        Event.SessionOpened opening =
                new Event.SessionOpened("0.1.0", "file.yaml", text, seed, rig.words(), "", true, 1);
        Rehearsal rehearsal =
                Rehearsal.begin(
                        ledger,
                        new Tester(rig, Faults.of(protocol, asked, seed)),
                        MORNING,
                        opening);
        while (!rehearsal.isOver()) {
            rehearsal.next();
        }
        return of(kept);
    }

    /** The same session with another opening, its values now real. */
    static Material real(Material of, Optional<Event.Paper> paper) {
        Event.SessionOpened was = of.opened();
        Event.SessionOpened now =
                new Event.SessionOpened(
                        was.programVersion(),
                        was.protocolName(),
                        was.protocolText(),
                        was.seed(),
                        "typed",
                        "",
                        false,
                        1,
                        "",
                        paper);
        return with(of, 0, 1, now);
    }

    /** With events in the place of some, everything after them at the same moments as before. */
    static Material with(Material of, int from, int to, Event... events) {
        List<Recorded> all = new ArrayList<>(of.events().subList(0, from));
        Recorded before = of.events().get(Math.max(0, from - 1));
        for (Event event : events) {
            all.add(new Recorded(all.size() + 1, before.wall(), before.at(), event));
        }
        for (Recorded each : of.events().subList(to, of.events().size())) {
            all.add(new Recorded(all.size() + 1, each.wall(), each.at(), each.event()));
        }
        return of(all);
    }

    /** With something that happened a second after the last event. */
    static Material then(Material of, Event event) {
        List<Recorded> all = new ArrayList<>(of.events());
        Recorded last = all.get(all.size() - 1);
        all.add(
                new Recorded(
                        all.size() + 1, last.wall().plusSeconds(1), last.at() + SECOND, event));
        return of(all);
    }

    /** The position of the first event of a kind after a number of events of another. */
    static int after(Material of, Class<? extends Event> kind, int count) {
        int met = 0;
        for (int at = 0; at < of.events().size(); at++) {
            if (kind.isInstance(of.events().get(at).event())) {
                met++;
                if (met == count) {
                    return at + 1;
                }
            }
        }
        throw new IllegalArgumentException("only " + met + " of " + kind);
    }
}
