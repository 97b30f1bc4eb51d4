package rigside.journal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.session.Event;
import rigside.session.Look;
import rigside.session.Place;
import rigside.session.Recorded;
import rigside.session.Slot;
import rigside.session.Source;
import rigside.session.Stage;
import rigside.session.Value;

/** A short session from its opening to its close: what the journal of a bench looks like. */
public final class Story {
    public static final ZonedDateTime START =
            ZonedDateTime.parse("2026-11-25T09:16:20.5+01:00[Europe/Paris]");
    static final Place FACTS = new Place(Stage.BEFORE, 0, 0);

    private static final long SECOND = 1_000_000_000L;

    private static final List<List<Event>> BATCHES = allBatches();
    private static final List<Recorded> RECORDED = allRecorded();

    private Story() {}

    /** Events that come together: the lists {@code append} gets. */
    public static List<List<Event>> batches() {
        return BATCHES;
    }

    private static List<List<Event>> allBatches() {
        List<List<Event>> all = new ArrayList<>();
        all.add(List.of(opened()));
        all.add(List.of(new Event.CautionsAcknowledged()));
        all.add(List.of(wearer()));
        all.addAll(donning(1, 1, 1, "disc", 12.4));
        all.add(List.of(new Event.DonningCompleted(1)));
        all.add(List.of(new Event.DonningStarted(2, 1, 2, "plain")));
        all.add(
                List.of(
                        new Event.ItemFailed(new Place(Stage.DONNING, 2, 0), 0),
                        new Event.DonningAbandoned(2, "the seal check failed")));
        all.add(List.of(new Event.SessionLeft()));
        all.add(List.of(new Event.SessionReopened("0.1.1")));
        all.addAll(donning(3, 1, 2, "plain", 11.25));
        all.add(List.of(new Event.DonningCompleted(3), new Event.LookTaken(look(12.4))));
        all.add(List.of(new Event.NoteWritten("straße war laut, 2 µm")));
        all.add(List.of(new Event.RepeatsEnded("enough for today")));
        all.add(List.of(new Event.SessionClosed()));
        return List.copyOf(all);
    }

    /** What a closed session still takes: an entry corrected, and the look that makes due. */
    static List<List<Event>> corrections() {
        return List.of(
                List.of(
                        new Event.EntryAmended(
                                2,
                                new Value.Measured(new Quantity(12.6, Unit.SECOND)),
                                "read from the wrong line"),
                        new Event.LookTaken(look(12.6))));
    }

    public static Event.SessionOpened opened() {
        return new Event.SessionOpened(
                "0.1.0", "bench.yaml", protocol(), 42, "typed by hand", "", false, 1);
    }

    static Event wearer() {
        return new Event.EntryCaptured(
                1, new Slot.Field(FACTS, "wearer"), new Value.Said("A"), Source.TYPED);
    }

    /** When the batch with this index happens: a minute after the one before. */
    public static Stamp stamp(int batch) {
        return new Stamp(START.plusMinutes(batch), 60 * SECOND * batch);
    }

    /** The whole session as it is recorded. */
    static List<Recorded> recorded() {
        return RECORDED;
    }

    /** The same with what was corrected after it was closed. */
    static List<Recorded> corrected() {
        List<List<Event>> all = new ArrayList<>(batches());
        all.addAll(corrections());
        return recorded(all);
    }

    private static List<Recorded> allRecorded() {
        return recorded(batches());
    }

    private static List<Recorded> recorded(List<List<Event>> batches) {
        List<Recorded> all = new ArrayList<>();
        for (int batch = 0; batch < batches.size(); batch++) {
            for (Event event : batches.get(batch)) {
                Stamp stamp = stamp(batch);
                all.add(new Recorded(all.size() + 1L, stamp.wall(), stamp.at(), event));
            }
        }
        return List.copyOf(all);
    }

    private static List<List<Event>> donning(
            int donning, int round, int turn, String condition, double seconds) {
        Place checks = new Place(Stage.DONNING, donning, 0);
        Place settle = new Place(Stage.DONNING, donning, 1);
        Place trials = new Place(Stage.DONNING, donning, 2);
        int entry = donning == 1 ? 2 : 3;
        return List.of(
                List.of(new Event.DonningStarted(donning, round, turn, condition)),
                List.of(new Event.ItemConfirmed(checks, 0)),
                List.of(new Event.CountdownStarted(settle)),
                List.of(new Event.CountdownFinished(settle)),
                List.of(new Event.LeadInStarted(trials, 0)),
                List.of(new Event.TrialStarted(trials, 0)),
                List.of(new Event.TrialStopped(trials, 0, seconds)),
                List.of(
                        new Event.EntryCaptured(
                                entry,
                                new Slot.Trial(trials, 0),
                                new Value.Measured(new Quantity(seconds, Unit.SECOND)),
                                Source.TIMED),
                        new Event.VoidOffered(entry, "longer than the one before")),
                List.of(new Event.VoidDeclined(entry)));
    }

    private static Look look(double disc) {
        OptionalDouble none = OptionalDouble.empty();
        return new Look(
                1,
                false,
                false,
                List.of(
                        new Look.Line(
                                "breathing",
                                "disc",
                                1,
                                List.of(2, 3),
                                OptionalDouble.of(disc / 11.25),
                                none,
                                none,
                                none,
                                "too few rounds",
                                false)));
    }

    private static String protocol() {
        return resource("/journal/bench.yaml");
    }

    public static String resource(String path) {
        try (InputStream in = Story.class.getResourceAsStream(path)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException missing) {
            throw new IllegalStateException(path, missing);
        }
    }
}
