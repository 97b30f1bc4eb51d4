package rigside.runner;

import java.io.IOException;
import java.time.ZonedDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Supplier;
import java.util.stream.LongStream;
import rigside.analysis.Analysis;
import rigside.analysis.Live;
import rigside.analysis.Looks;
import rigside.analysis.Shown;
import rigside.rig.Cue;
import rigside.rig.FeedState;
import rigside.rig.FeedTrouble;
import rigside.rig.Now;
import rigside.rig.Reading;
import rigside.rig.Rig;
import rigside.rig.Signal;
import rigside.session.Event;
import rigside.session.Evolve;
import rigside.session.Input;
import rigside.session.Respond;
import rigside.session.Response;
import rigside.session.State;

/**
 * One session being run. Not thread-safe: one thread gives it inputs and asks it for its state.
 *
 * <p>Times are nanoseconds of session time; they never run backwards within a session.
 */
public final class Runner {
    private final Ledger ledger;
    private final Rig rig;
    private final RigAnswers answers;
    private final LiveReadings live;
    private final Tube tube;
    private final Supplier<ZonedDateTime> wall;
    private State state;
    private long lastTick;
    private long lastKept;
    private final Deque<FeedTrouble> notices = new ArrayDeque<>();
    private Optional<Unkept> unkept = Optional.empty();
    private Optional<Shown> shown = Optional.empty();

    /** Events that could not be written yet. */
    private record Unkept(List<Event> events, ZonedDateTime wall, long at) {}

    private Runner(Ledger ledger, Rig rig, Supplier<ZonedDateTime> wall, State state, long at) {
        this.ledger = ledger;
        this.rig = rig;
        this.answers = new RigAnswers(rig);
        this.live = new LiveReadings(rig);
        this.tube = new Tube(rig);
        this.wall = wall;
        this.state = state;
        this.lastTick = at;
        this.lastKept = at;
    }

    /**
     * Opens a new session.
     *
     * @param wall tells the wall clock whenever something is kept
     * @throws IOException if its first line cannot be kept
     */
    public static Runner open(
            Ledger ledger, Rig rig, Supplier<ZonedDateTime> wall, Event.SessionOpened opening)
            throws IOException {
        return open(ledger, rig, wall, opening, wall.get(), Optional.empty());
    }

    /**
     * The same, with the moment at which session time began, and what was found before.
     *
     * @param begun that moment, on the clock on the wall
     * @param selfTest what the last self-test found, if there was one
     * @throws IOException if its first line cannot be kept
     */
    public static Runner open(
            Ledger ledger,
            Rig rig,
            Supplier<ZonedDateTime> wall,
            Event.SessionOpened opening,
            ZonedDateTime begun,
            Optional<Event.SelfTested> selfTest)
            throws IOException {
        Runner runner = new Runner(ledger, rig, wall, State.START, 0);
        List<Event> events = new ArrayList<>(List.of(opening));
        selfTest.ifPresent(events::add);
        ledger.append(events, begun, 0);
        runner.state = runner.after(events, 0);
        return runner;
    }

    /**
     * Takes an open session up again.
     *
     * @param state where its journal leads
     * @param at session time now
     * @param version of the program that takes it up
     * @throws IOException if that cannot be kept
     */
    public static Runner reopen(
            Ledger ledger,
            Rig rig,
            Supplier<ZonedDateTime> wall,
            State state,
            long at,
            String version)
            throws IOException {
        Runner runner = new Runner(ledger, rig, wall, state, at);
        if (runner.accept(new Input.Reopened(version), at) instanceof Result.NotKept notKept) {
            throw new IOException(notKept.why());
        }
        return runner;
    }

    /**
     * Takes up what is on record of a session, to put right what was entered wrong. Nothing is
     * written of that itself: where it is open, it stands as it stood.
     *
     * @param state where its journal leads
     * @param at session time now
     */
    public static Runner correcting(
            Ledger ledger, Supplier<ZonedDateTime> wall, State state, long at) {
        return new Runner(ledger, Rig.typed(), wall, state, at);
    }

    public State state() {
        return state;
    }

    /** What concealment lets out now. */
    public Shown shown() {
        if (shown.isEmpty()) {
            shown = Optional.of(Shown.of(state, Analysis.of(state)));
        }
        return shown.get();
    }

    /** What particle counters give of what is under way, as far as concealment lets it out. */
    public Live live(long now) {
        return live.at(state, shown(), now);
    }

    /** How every instrument is doing; empty without any. */
    public List<FeedState> feeds() {
        return rig.states();
    }

    /** The last reading of a signal, however old; empty when there is none. */
    public Optional<Reading> latest(Signal signal) {
        return rig.latest(signal);
    }

    /** The readings of a signal between two session times, see {@link Rig#readings}. */
    public List<Reading> readings(Signal signal, long from, long to) {
        return rig.readings(signal, from, to);
    }

    /** What a signal reads now; empty when no instrument follows it. */
    public Optional<Now> now(Signal signal) {
        return rig.now(signal);
    }

    /** Whether something waits to be written; only the go-on key does anything then. */
    public boolean holdsUnkept() {
        return unkept.isPresent();
    }

    /**
     * Takes an input.
     *
     * @param at when it came in; for a key, when it was pressed
     */
    public Result accept(Input input, long at) {
        if (unkept.isPresent()) {
            boolean tries = input instanceof Input.GoOnPressed || input instanceof Input.LeaveAsked;
            Result kept =
                    tries
                            ? keep(unkept.get())
                            : new Result.NotKept(
                                    "the last entry is not on disk yet; press Enter to try again");
            if (unkept.isPresent() || input instanceof Input.GoOnPressed) {
                return kept;
            }
        }
        // A key pressed, or a pull ended, just before something that is kept already.
        long when = Math.max(at, lastKept);
        Response response = Respond.to(state, answers.seen(input), when);
        if (response instanceof Response.Refused refused) {
            return new Result.Refused(refused.why());
        }
        List<Event> events = ((Response.Happened) response).events();
        return events.isEmpty()
                ? new Result.Done(List.of(), List.of())
                : keep(new Unkept(withLook(events, when), wall.get(), when));
    }

    /**
     * The cues that time has brought since it passed last: to be given at once, before {@link
     * #tick} writes anything.
     */
    public List<Cue> timed(long at) {
        return Cues.between(state, lastTick, at);
    }

    /** Lets time pass: countdowns end, the rig answers what it can. */
    public Result tick(long at) {
        List<Event> events = new ArrayList<>();
        List<Cue> cues = new ArrayList<>();
        lastTick = Math.max(lastTick, at);
        rig.does(Acts.of(state), at);
        notices.addAll(rig.pass(at));
        notices.addAll(tube.pass(state, at));
        Result last = noticed(events, cues, at);
        if (last instanceof Result.Done) {
            last = accept(new Input.Ticked(), at);
        }
        while (last instanceof Result.Done done) {
            events.addAll(done.events());
            cues.addAll(done.cues());
            Optional<RigAnswers.Due> due = answers.due(state, at);
            if (due.isEmpty()) {
                return new Result.Done(events, cues);
            }
            last = accept(due.get().input(), due.get().at());
            if (last instanceof Result.Done taken && taken.events().isEmpty()) {
                return new Result.Done(events, cues);
            }
        }
        return last;
    }

    /**
     * Records what became of instruments. What cannot be kept now is tried again at the next tick.
     *
     * @param events takes what happened
     * @param cues takes what has to be noticed
     */
    private Result noticed(List<Event> events, List<Cue> cues, long at) {
        Result last = new Result.Done(List.of(), List.of());
        while (!notices.isEmpty() && last instanceof Result.Done && unkept.isEmpty()) {
            FeedTrouble notice = notices.remove();
            Input input = new Input.FeedNoticed(notice.feed(), !notice.isOver(), notice.words());
            last = accept(input, at);
            if (last instanceof Result.Done done) {
                events.addAll(done.events());
                cues.addAll(done.cues());
            }
        }
        return last;
    }

    /**
     * When time next leads to something by itself, a cue or the end of what is timed: waiting until
     * then keeps both punctual.
     */
    public OptionalLong next() {
        OptionalLong cue = Cues.next(state, lastTick);
        OptionalLong end = answers.next(state);
        return LongStream.concat(cue.stream(), end.stream()).filter(at -> at > lastTick).min();
    }

    /**
     * Keeps which cues were given. Nothing depends on that: if it cannot be kept it is not tried
     * again, and the next entry tells of the trouble.
     *
     * @param how they were given, in a word: sounded, muted, ...
     * @param at when
     */
    public void cued(List<Cue> cues, String how, long at) {
        if (cues.isEmpty() || unkept.isPresent() || state.course().closed()) {
            return;
        }
        long when = Math.max(at, lastKept);
        List<Event> events = new ArrayList<>();
        cues.forEach(cue -> events.add(new Event.Cued(cue.word(), how)));
        try {
            ledger.append(events, wall.get(), when);
            lastKept = when;
        } catch (IOException full) {
            // The cue was given all the same.
        }
    }

    /**
     * A round that these events complete is looked at in the same breath, so that no look can be
     * lost between two writes.
     */
    private List<Event> withLook(List<Event> events, long at) {
        State after = after(events, at);
        if (!after.lookDue()) {
            return events;
        }
        List<Event> more = new ArrayList<>(events);
        Input look = new Input.LookArrived(Looks.due(after));
        more.addAll(((Response.Happened) Respond.to(after, look, at)).events());
        return List.copyOf(more);
    }

    private State after(List<Event> events, long at) {
        State after = state;
        for (Event event : events) {
            after = Evolve.step(after, event, at);
        }
        return after;
    }

    private Result keep(Unkept what) {
        try {
            ledger.append(what.events(), what.wall(), what.at());
        } catch (IOException failure) {
            unkept = Optional.of(what);
            return new Result.NotKept(
                    "not captured: "
                            + failure.getMessage()
                            + "; mend that, then press Enter to try again; it is kept here");
        }
        unkept = Optional.empty();
        state = after(what.events(), what.at());
        lastKept = what.at();
        shown = Optional.empty();
        return new Result.Done(what.events(), Cues.of(what.events(), state));
    }
}
