package rigside.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rigside.journal.Journal;
import rigside.journal.RawReadings;
import rigside.journal.Stamp;
import rigside.rig.Reading;
import rigside.rig.RigFile;
import rigside.rig.Signal;
import rigside.rig.SimulatedRig;
import rigside.runner.Faults;
import rigside.runner.Rehearsal;
import rigside.runner.Tester;
import rigside.session.Event;
import rigside.session.Evolve;
import rigside.session.Recorded;

/**
 * A rehearsed session with a gauge, kept as if that gauge had stood on the bench: its readings are
 * the very ones that pulls and breaths were judged by.
 *
 * @param events of the session
 * @param readings of the gauge over the whole of it
 */
public record Gauged(List<Recorded> events, List<Reading> readings) {
    private static final ZonedDateTime MORNING =
            ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);

    /** An act is noticed so much later than it began at most. */
    private static final long LATE_NANOS = 3_000_000_000L;

    /** It writes suction in mbar, above 0, behind a word. */
    private static final String RIG =
            """
            format: 1
            title: bench with a gauge (invented)
            feeds:
              - id: gauge
                quantity: mask-pressure
                file: nowhere.txt
                pattern: 'P *= *(?<value>[-+]?[0-9.]+)'
                unit: mbar
                scale: -1
            """;

    /** By a protocol and the demonstration's wearer. */
    public static Gauged of(Path protocol, long seed) throws IOException {
        String text = Files.readString(protocol);
        Path wearer = Path.of("demo", "gauge.rig.yaml");
        RigFile.Simulated file =
                (RigFile.Simulated)
                        RigFile.read("wearer", Files.readString(wearer), Path.of(""))
                                .value()
                                .orElseThrow();
        SimulatedRig rig = new SimulatedRig(file.wearer(), seed);
        List<Recorded> events = new ArrayList<>();
        Rehearsal rehearsal =
                Rehearsal.begin(
                        (happened, wall, at) ->
                                happened.forEach(
                                        each ->
                                                events.add(
                                                        new Recorded(
                                                                events.size() + 1L,
                                                                wall,
                                                                at,
                                                                each))),
                        new Tester(rig, Faults.of(Read.of(text), List.of(), seed)),
                        MORNING,
                        new Event.SessionOpened(
                                "test", "file.yaml", text, seed, rig.words(), "", true, 1));
        List<Reading> readings = new ArrayList<>();
        long from = 0;
        while (!rehearsal.isOver()) {
            long due = rehearsal.due();
            rehearsal.next();
            long to = Math.max(from, due - LATE_NANOS);
            readings.addAll(rig.readings(Signal.PRESSURE, from + 1, to));
            from = to;
        }
        Event.SessionOpened real =
                new Event.SessionOpened(
                        "test", "file.yaml", text, seed, "instruments", RIG, false, 1, ".");
        events.set(0, new Recorded(1, MORNING, 0, real));
        return new Gauged(List.copyOf(events), List.copyOf(readings));
    }

    /** What a report is made of, as far as the session had come. */
    Material material(int count) {
        List<Recorded> so = events.subList(0, count);
        return gathered(Material.of(Evolve.fold(so), so));
    }

    Material material() {
        return material(events.size());
    }

    /** The same with the readings that belong to it. */
    Material gathered(Material of) {
        PressureTraces.Gathering gathering =
                new PressureTraces.Gathering(
                        PressureWindow.all(of.protocol(), of.events()), List.of());
        readings.forEach(each -> gathering.reading(each.at(), each.si()));
        return of.with(gathering.traces());
    }

    /** Keeps it in a folder of its own. */
    public Path keep(Path sessions) throws Exception {
        try (Journal journal = Journal.create(sessions, "file.yaml", MORNING)) {
            for (Recorded each : events) {
                journal.append(List.of(each.event()), new Stamp(each.wall(), each.at()));
            }
            try (RawReadings raw = RawReadings.in(journal.folder())) {
                for (Reading each : readings) {
                    raw.keep(
                            "gauge",
                            each.at(),
                            String.format(Locale.ROOT, "P = %.6f", -each.si() / 100));
                }
                raw.keep("gauge", events.get(events.size() - 1).at(), "P = out of order");
            }
            return journal.folder();
        }
    }

    /** Makes one to look at: the folder of sessions, the protocol. */
    public static void main(String... args) throws Exception {
        Gauged gauged = of(Path.of(args[1]), 7);
        System.out.println(gauged.keep(Path.of(args[0])));
    }
}
