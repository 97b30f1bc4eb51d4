package rigside.journal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.session.Event;
import rigside.session.Look;
import rigside.session.Place;
import rigside.session.Recorded;
import rigside.session.Slot;
import rigside.session.Stage;
import rigside.session.Value;

/** What a written line says; {@link EventWriter} is the way there. */
final class EventReader {
    private EventReader() {}

    /**
     * The version of the written form that the first line of a journal carries.
     *
     * @throws Unreadable if there is none, or this program does not know it
     */
    static int format(ObjectNode first) {
        Fields fields = new Fields(first);
        if (!fields.has("journal")) {
            throw new Unreadable("the first line does not say which journal format it has");
        }
        int format = fields.integer("journal");
        if (format > EventWriter.FORMAT) {
            throw new Unreadable(
                    "written by a newer version of this program (journal format '"
                            + format
                            + "', this one knows "
                            + EventWriter.FORMAT
                            + ")",
                    "read it with that version, or a later one");
        }
        if (format < 1) {
            throw new Unreadable("unknown journal format '" + format + "'");
        }
        return format;
    }

    /**
     * The event on a line.
     *
     * @throws Unreadable if it is no event, or not wholly one
     */
    static Recorded read(ObjectNode line) {
        Fields fields = new Fields(line);
        long number = fields.whole("n");
        ZonedDateTime wall = wall(fields);
        long at = fields.whole("at");
        if (fields.has(EventWriter.MORE)) {
            fields.yes(EventWriter.MORE);
        }
        if (fields.has(RunningHash.FIELD)) {
            fields.text(RunningHash.FIELD);
        }
        Event event = event(fields);
        if (event instanceof Event.SessionOpened) {
            fields.integer("journal");
        }
        fields.end();
        return new Recorded(number, wall, at, event);
    }

    /** Whether a line that was read was written together with the one after it. */
    static boolean goesOn(ObjectNode line) {
        return line.path(EventWriter.MORE).booleanValue();
    }

    private static List<String> words(String text) {
        return text.isBlank() ? List.of() : List.of(text.strip().split(" +", -1));
    }

    private static ZonedDateTime wall(Fields fields) {
        String text = fields.text("wall");
        try {
            return ZonedDateTime.parse(text);
        } catch (DateTimeException notATime) {
            throw new Unreadable(
                    "'wall' is '"
                            + Fields.quote(text)
                            + "', must be a date and time with its zone");
        }
    }

    private static Optional<Event.Paper> paper(Fields in) {
        if (!in.has("from-paper") || !in.yes("from-paper")) {
            return Optional.empty();
        }
        return Optional.of(
                new Event.Paper(
                        in.has("form-date")
                                ? Optional.of(day(in.text("form-date")))
                                : Optional.empty()));
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException notADay) {
            throw new Unreadable(
                    "'form-date' is '" + Fields.quote(text) + "', must be a day like 2026-11-20");
        }
    }

    private static Event event(Fields in) {
        String word = in.text("event");
        return switch (word) {
            case "session-opened" ->
                    new Event.SessionOpened(
                            in.text("program-version"),
                            in.text("protocol-name"),
                            in.text("protocol-text"),
                            in.whole("seed"),
                            in.text("rig"),
                            in.text("rig-text"),
                            in.yes("simulated"),
                            in.number("speed"),
                            in.has("rig-folder") ? in.text("rig-folder") : "",
                            paper(in));
            case "session-left" -> new Event.SessionLeft();
            case "session-reopened" -> new Event.SessionReopened(in.text("program-version"));
            case "cautions-acknowledged" -> new Event.CautionsAcknowledged();
            case "donning-started" ->
                    new Event.DonningStarted(
                            in.integer("donning"),
                            in.integer("round"),
                            in.integer("turn"),
                            in.text("condition"));
            case "donning-completed" -> new Event.DonningCompleted(in.integer("donning"));
            case "donning-abandoned" ->
                    new Event.DonningAbandoned(in.integer("donning"), in.text("reason"));
            case "donning-struck" ->
                    new Event.DonningStruck(in.integer("donning"), in.text("reason"));
            case "item-confirmed" -> new Event.ItemConfirmed(place(in), in.integer("item"));
            case "item-failed" -> new Event.ItemFailed(place(in), in.integer("item"));
            case "countdown-started" -> new Event.CountdownStarted(place(in));
            case "countdown-finished" -> new Event.CountdownFinished(place(in));
            case "exercise-started" -> new Event.ExerciseStarted(place(in), in.integer("exercise"));
            case "exercise-finished" ->
                    new Event.ExerciseFinished(place(in), in.integer("exercise"));
            case "exercise-interrupted" ->
                    new Event.ExerciseInterrupted(place(in), in.integer("exercise"));
            case "lead-in-started" -> new Event.LeadInStarted(place(in), in.integer("trial"));
            case "trial-started" -> new Event.TrialStarted(place(in), in.integer("trial"));
            case "trial-stopped" ->
                    new Event.TrialStopped(
                            place(in),
                            in.integer("trial"),
                            in.number("seconds"),
                            in.has("traced") && in.yes("traced"));
            case "trace-missing" ->
                    new Event.TraceMissing(place(in), in.integer("trial"), in.text("why"));
            case "entry-traced" -> new Event.EntryTraced(in.integer("entry"), TraceForm.read(in));
            case "trial-interrupted" -> new Event.TrialInterrupted(place(in), in.integer("trial"));
            case "void-offered" -> new Event.VoidOffered(in.integer("entry"), in.text("why"));
            case "void-declined" -> new Event.VoidDeclined(in.integer("entry"));
            case "rest-finished" -> new Event.RestFinished(place(in));
            case "note-read" -> new Event.NoteRead(place(in));
            case "gate-started" -> new Event.GateStarted(place(in), in.integer("gate"));
            case "gate-finished" -> new Event.GateFinished(place(in), in.integer("gate"));
            case "gate-reopened" -> new Event.GateReopened(place(in), in.integer("gate"));
            case "gate-interrupted" -> new Event.GateInterrupted(place(in), in.integer("gate"));
            case "entry-doubted" -> new Event.EntryDoubted(slot(in), value(in), in.text("why"));
            case "doubt-dropped" -> new Event.DoubtDropped(slot(in));
            case "entry-captured" ->
                    new Event.EntryCaptured(
                            in.integer("entry"),
                            slot(in),
                            value(in),
                            in.word("source", Words::source),
                            in.maybeNumber("seconds").orElse(0));
            case "entry-voided" -> new Event.EntryVoided(in.integer("entry"), in.text("reason"));
            case "entry-amended" ->
                    new Event.EntryAmended(in.integer("entry"), value(in), in.text("reason"));
            case "amendment-withdrawn" -> new Event.AmendmentWithdrawn(in.integer("entry"));
            case "slot-left-out" -> new Event.SlotLeftOut(slot(in), in.text("reason"));
            case "leave-out-withdrawn" -> new Event.LeaveOutWithdrawn(slot(in));
            case "item-left-out" ->
                    new Event.ItemLeftOut(place(in), in.integer("item"), in.text("reason"));
            case "item-reopened" -> new Event.ItemReopened(place(in), in.integer("item"));
            case "exercise-left-out" ->
                    new Event.ExerciseLeftOut(place(in), in.integer("exercise"), in.text("reason"));
            case "exercise-reopened" ->
                    new Event.ExerciseReopened(place(in), in.integer("exercise"));
            case "note-written" -> new Event.NoteWritten(in.text("text"));
            case "time-doubted" ->
                    new Event.TimeDoubted(in.text("why"), in.has("ended") && in.yes("ended"));
            case "feed-failed" -> new Event.FeedFailed(in.text("feed"), in.text("why"));
            case "feed-back" -> new Event.FeedBack(in.text("feed"), in.text("words"));
            case "self-tested" ->
                    new Event.SelfTested(
                            in.text("when"),
                            in.text("terminal"),
                            in.integer("answers"),
                            in.number("median"),
                            in.number("p99"),
                            in.number("most"),
                            in.text("signal"),
                            in.integers("reaction-microseconds").stream()
                                    .map(micros -> micros / 1e6)
                                    .toList(),
                            words(in.text("heard")),
                            words(in.text("unheard")));
            case "cued" -> new Event.Cued(in.text("cue"), in.text("how"));
            case "halted" -> new Event.Halted(in.text("why"));
            case "continued" -> new Event.Continued();
            case "look-taken" -> new Event.LookTaken(look(in));
            case "went-on" -> new Event.WentOn();
            case "repeats-ended" -> new Event.RepeatsEnded(in.text("reason"));
            case "session-closed" -> new Event.SessionClosed();
            default -> throw Fields.unknown("event", word);
        };
    }

    private static Place place(Fields in) {
        return in.object("place", EventReader::placeItself);
    }

    private static Place placeItself(Fields in) {
        Stage stage = in.word("stage", Words::stage);
        int donning = stage == Stage.DONNING ? in.integer("donning") : 0;
        int step = in.integer("step");
        if (step < 0 || (stage == Stage.DONNING && donning < 1)) {
            throw new Unreadable("there is no step " + step + " of donning " + donning);
        }
        return new Place(stage, donning, step);
    }

    private static Slot slot(Fields in) {
        return in.object("slot", EventReader::slotItself);
    }

    private static Slot slotItself(Fields in) {
        String kind = in.text("kind");
        return switch (kind) {
            case "field" -> new Slot.Field(place(in), in.text("id"));
            case "ambient" ->
                    new Slot.Ambient(place(in), in.integer("exercise"), in.integer("window"));
            case "mask" -> new Slot.Mask(place(in), in.integer("exercise"));
            case "pressure" -> new Slot.Pressure(place(in), in.integer("exercise"));
            case "trial" -> new Slot.Trial(place(in), in.integer("trial"));
            case "gate" -> new Slot.Gate(place(in), in.integer("gate"));
            default -> throw Fields.unknown("kind", kind);
        };
    }

    private static Value value(Fields in) {
        return in.object("value", EventReader::valueItself);
    }

    private static Value valueItself(Fields in) {
        if (in.has("text")) {
            return new Value.Said(in.text("text"));
        }
        double number = in.number("number");
        Unit unit = in.word("unit", Unit::of);
        return finite(number)
                .map(value -> new Value.Measured(new Quantity(value, unit)))
                .orElseThrow(() -> new Unreadable("'number' must be a finite number"));
    }

    private static Optional<Double> finite(double number) {
        return Math.abs(number) <= Double.MAX_VALUE ? Optional.of(number) : Optional.empty();
    }

    private static Look look(Fields in) {
        return new Look(
                in.integer("round"),
                in.yes("enough"),
                in.yes("plan-used-up"),
                in.objects("lines", EventReader::lookLine));
    }

    private static Look.Line lookLine(Fields in) {
        return new Look.Line(
                in.text("measure"),
                in.text("condition"),
                in.integer("n"),
                in.integers("entries"),
                in.maybeNumber("estimate"),
                in.maybeNumber("low"),
                in.maybeNumber("high"),
                in.maybeNumber("critical"),
                in.text("verdict"),
                in.yes("settled"));
    }
}
