package rigside.journal;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rigside.measure.Breath;
import rigside.measure.Quantity;
import rigside.measure.TracedInhalation;
import rigside.measure.Unit;
import rigside.session.Event;
import rigside.session.Look;
import rigside.session.Place;
import rigside.session.Recorded;
import rigside.session.Slot;
import rigside.session.Source;
import rigside.session.Stage;
import rigside.session.Trace;
import rigside.session.Value;

/** Every kind of event, gap, value and source, with contents that are hard to write. Invented. */
final class Samples {
    static final Place BEFORE = new Place(Stage.BEFORE, 0, 0);
    static final Place DONNING = new Place(Stage.DONNING, 3, 4);
    static final Place AFTER = new Place(Stage.AFTER, 0, 1);

    private static final OptionalDouble NONE = OptionalDouble.empty();

    private Samples() {}

    /** Of format 1 as it was first written, then what came later. */
    static List<Event> events() {
        return Stream.concat(first().stream(), later().stream()).toList();
    }

    private static List<Event> later() {
        return List.of(
                new Event.EntryAmended(5, measured(12.4, Unit.SECOND), "read \"1\" for \"7\""),
                new Event.EntryAmended(1, new Value.Said("B"), "the wearer's code was wrong"),
                new Event.AmendmentWithdrawn(1));
    }

    private static List<Event> first() {
        return List.of(
                new Event.SessionOpened(
                        "0.1.0",
                        "disc.yaml",
                        "format: 1\ntitle: \"Vorfilter-Scheibe, 2 µm; \\ 80 % größer\"\n\t# ✓ \u2028\n",
                        -9_223_372_036_854_775_808L,
                        "typed by hand",
                        "",
                        false,
                        1),
                new Event.SessionLeft(),
                new Event.SessionReopened("0.2.0"),
                new Event.CautionsAcknowledged(),
                new Event.DonningStarted(3, 2, 1, "disc"),
                new Event.DonningCompleted(3),
                new Event.DonningAbandoned(3, "strap slipped"),
                new Event.DonningStruck(3, "the \"wrong\" disc\r\nwas worn"),
                new Event.ItemConfirmed(DONNING, 0),
                new Event.ItemFailed(DONNING, 1),
                new Event.CountdownStarted(AFTER),
                new Event.CountdownFinished(AFTER),
                new Event.ExerciseStarted(DONNING, 0),
                new Event.ExerciseFinished(DONNING, 0),
                new Event.ExerciseInterrupted(DONNING, 1),
                new Event.LeadInStarted(DONNING, 0),
                new Event.TrialStarted(DONNING, 0),
                new Event.TrialStopped(DONNING, 0, Math.PI),
                new Event.TrialInterrupted(DONNING, 1),
                new Event.VoidOffered(7, "4.1 s is shorter than 5 s"),
                new Event.VoidDeclined(7),
                new Event.RestFinished(DONNING),
                new Event.NoteRead(AFTER),
                new Event.EntryDoubted(
                        new Slot.Field(BEFORE, "room-temperature"),
                        measured(-40, Unit.DEGREE_CELSIUS),
                        "below 5 degC"),
                new Event.DoubtDropped(new Slot.Field(BEFORE, "room-temperature")),
                new Event.EntryCaptured(
                        1, new Slot.Field(BEFORE, "wearer"), new Value.Said("A"), Source.TYPED),
                new Event.EntryCaptured(
                        2,
                        new Slot.Ambient(DONNING, 0, 1),
                        measured(4200.5, Unit.PER_CUBIC_CENTIMETRE),
                        Source.INSTRUMENT),
                new Event.EntryCaptured(
                        3,
                        new Slot.Mask(DONNING, 0),
                        measured(Double.MIN_VALUE, Unit.PER_CUBIC_METRE),
                        Source.SIMULATED),
                new Event.EntryCaptured(
                        4,
                        new Slot.Pressure(DONNING, 2),
                        measured(-0.0, Unit.INCH_OF_WATER),
                        Source.TYPED),
                new Event.EntryCaptured(
                        5,
                        new Slot.Trial(DONNING, 2),
                        measured(0.1 + 0.2, Unit.SECOND),
                        Source.TIMED),
                new Event.EntryCaptured(
                        6, new Slot.Field(AFTER, "comfort"), measured(7, Unit.ONE), Source.TYPED),
                new Event.EntryVoided(5, "coughed"),
                new Event.SlotLeftOut(new Slot.Mask(DONNING, 1), "tube came off"),
                new Event.LeaveOutWithdrawn(new Slot.Mask(DONNING, 1)),
                new Event.ItemLeftOut(BEFORE, 2, "no chair without wheels here"),
                new Event.ExerciseLeftOut(DONNING, 3, "the back hurts"),
                new Event.ExerciseReopened(DONNING, 3),
                new Event.NoteWritten(
                        "half a key: \uD83D, a whole one: \uD83D\uDE00, \u0000\u001b"),
                new Event.Halted("dizzy"),
                new Event.Continued(),
                new Event.LookTaken(new Look(1, false, false, List.of())),
                new Event.LookTaken(
                        new Look(
                                4,
                                true,
                                false,
                                List.of(
                                        new Look.Line(
                                                "breathing",
                                                "disc",
                                                4,
                                                List.of(3, 4, 5, 6),
                                                OptionalDouble.of(1.0987654321098765),
                                                OptionalDouble.of(1e-300),
                                                OptionalDouble.of(Double.MAX_VALUE),
                                                OptionalDouble.of(4.3),
                                                "a meaningful difference",
                                                true),
                                        new Look.Line(
                                                "seal",
                                                "disc",
                                                1,
                                                List.of(),
                                                OptionalDouble.of(Double.NaN),
                                                OptionalDouble.of(Double.NEGATIVE_INFINITY),
                                                OptionalDouble.of(Double.POSITIVE_INFINITY),
                                                NONE,
                                                "too few rounds",
                                                false)))),
                new Event.WentOn(),
                new Event.RepeatsEnded(""),
                new Event.SessionClosed(),
                new Event.TimeDoubted("the computer's clock jumped ahead by 40.0 s"),
                new Event.FeedFailed("gauge", "gauge: nothing from pipe p for 2 s"),
                new Event.FeedBack("gauge", "gauge: reads well again"),
                new Event.Cued("half-way", "tones"),
                new Event.GateStarted(BEFORE, 0),
                new Event.GateFinished(BEFORE, 0),
                new Event.GateInterrupted(BEFORE, 1),
                new Event.EntryCaptured(
                        7,
                        new Slot.Gate(BEFORE, 0),
                        measured(0.01, Unit.PER_CUBIC_CENTIMETRE),
                        Source.INSTRUMENT),
                new Event.TrialStopped(DONNING, 0, 6.25, true),
                new Event.TraceMissing(DONNING, 0, "the gauge does not show the whole pull"),
                new Event.EntryTraced(
                        5,
                        new Trace.Pull(
                                6.25,
                                new TracedInhalation(
                                        -0.12, 6.05, 612.35, 99.25, 8.5, 0.912, 0.1, true, 2))),
                new Event.EntryTraced(
                        4, new Trace.Breaths(14, 1, new Breath(0, 4, 1.8, 92.5, 55.25, 105, 88))),
                new Event.EntryCaptured(
                        8,
                        new Slot.Mask(DONNING, 1),
                        measured(40, Unit.PER_CUBIC_CENTIMETRE),
                        Source.INSTRUMENT,
                        9.5),
                new Event.SelfTested(
                        "2026-01-05T07:55:00Z[UTC]",
                        "xterm-256color",
                        50,
                        0.00031,
                        0.0022,
                        0.0024,
                        "tones",
                        List.of(0.231407, 0.198211, 0.25),
                        List.of("lead-in", "go"),
                        List.of()),
                new Event.GateReopened(BEFORE, 1),
                new Event.TimeDoubted("the trigger repeats as if it were held down", true),
                new Event.ItemReopened(DONNING, 1));
    }

    /** Numbered, a second apart; in the hour that comes twice at the end of summer time. */
    static List<Recorded> recorded() {
        ZonedDateTime wall =
                ZonedDateTime.parse("2026-10-25T02:59:45.123456789+02:00[Europe/Paris]");
        List<Recorded> all = new ArrayList<>();
        for (Event event : events()) {
            int passed = all.size();
            all.add(
                    new Recorded(
                            passed + 1L, wall.plusSeconds(passed), passed * 1_000_000_000L, event));
        }
        return List.copyOf(all);
    }

    private static Value measured(double value, Unit unit) {
        return new Value.Measured(new Quantity(value, unit));
    }
}
