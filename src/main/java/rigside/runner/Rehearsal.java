package rigside.runner;

import java.io.IOException;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import rigside.rig.Cue;
import rigside.rig.Rig;
import rigside.session.Event;
import rigside.session.Input;
import rigside.session.State;

/**
 * A whole session without a tester: the same runner with a fast clock, the keys pressed by a {@link
 * Tester}. The same protocol, rig and seed give the same events at the same session times.
 */
public final class Rehearsal {
    private static final long TICK_NANOS = 50_000_000L;

    /** How long the rehearsed tester takes for anything that is not timed. */
    private static final long HAND_NANOS = 2_000_000_000L;

    /** Longer than any session: a week of ticks. */
    private static final long LONGEST_NANOS = 7L * 24 * 3600 * 1_000_000_000L;

    private final Tester tester;
    private final Runner runner;
    private long at;
    private boolean still;
    private Optional<Input> key = Optional.empty();
    private long due;

    private Rehearsal(
            Ledger ledger, Tester tester, ZonedDateTime start, Event.SessionOpened opening)
            throws IOException {
        this.tester = tester;
        this.runner = Runner.open(ledger, tester.rig(), () -> start.plusNanos(at), opening);
        choose();
    }

    /**
     * Runs a session to its close.
     *
     * @param rig has to answer for the instruments, or the session could not go on
     * @param start the wall clock at the opening
     * @return the closed session
     * @throws IOException if an event cannot be kept
     * @throws IllegalStateException if the session does not come to its close
     */
    public static State run(
            Ledger ledger, Rig rig, ZonedDateTime start, Event.SessionOpened opening)
            throws IOException {
        return run(ledger, Tester.careful(rig), start, opening);
    }

    /**
     * The same with a tester of another kind.
     *
     * @param tester with the rig of the session
     */
    public static State run(
            Ledger ledger, Tester tester, ZonedDateTime start, Event.SessionOpened opening)
            throws IOException {
        Rehearsal rehearsal = begin(ledger, tester, start, opening);
        while (!rehearsal.isOver()) {
            rehearsal.next();
        }
        return rehearsal.runner.state();
    }

    /** The same, to be played step by step. */
    public static Rehearsal begin(
            Ledger ledger, Tester tester, ZonedDateTime start, Event.SessionOpened opening)
            throws IOException {
        return new Rehearsal(ledger, tester, start, opening);
    }

    /** The session, to be looked at; only the rehearsal tells it anything. */
    public Runner runner() {
        return runner;
    }

    /** Whether the session has come to its close. */
    public boolean isOver() {
        return runner.state().course().closed();
    }

    /** The key that the tester presses next; empty while time has to pass. */
    public Optional<Input> key() {
        return key;
    }

    /** The session time of the next step. */
    public long due() {
        return due;
    }

    /**
     * The next step: the key, or what time brings.
     *
     * @return what came of it, with all cues
     */
    public Result.Done next() throws IOException {
        return step(due);
    }

    /**
     * Lets time pass that leads to nothing, so that gauges move; the session stays what it is
     * without that.
     *
     * @param now session time
     */
    public void pass(long now) throws IOException {
        long tick = now / TICK_NANOS * TICK_NANOS;
        if (key.isEmpty() && still && tick > at && tick < due) {
            step(tick);
        }
    }

    private Result.Done step(long time) throws IOException {
        at = time;
        List<Cue> cues = new ArrayList<>(key.isPresent() ? List.of() : runner.timed(at));
        Result result = key.isPresent() ? runner.accept(key.get(), at) : runner.tick(at);
        Result.Done done = done(result);
        still = key.isEmpty() && done.events().isEmpty();
        cues.addAll(done.cues());
        runner.cued(cues, "rehearsed", at);
        choose();
        return new Result.Done(done.events(), cues);
    }

    private void choose() {
        key = isOver() ? Optional.empty() : tester.key(runner.state(), at);
        due = key.isPresent() ? pressed(key.get(), at) : passed(runner, at, still);
    }

    private static long pressed(Input key, long at) {
        return at + (key instanceof Input.TriggerPressed ? TICK_NANOS : HAND_NANOS);
    }

    /**
     * The tick at which time next leads to something. A session is hours of ticks that lead to
     * nothing: once one did, those before the next moment that is known are left out.
     */
    private static long passed(Runner runner, long at, boolean still) {
        OptionalLong next = still ? runner.next() : OptionalLong.empty();
        long due = next.isEmpty() ? 0 : (next.getAsLong() + TICK_NANOS - 1) / TICK_NANOS;
        return Math.max(at + TICK_NANOS, due * TICK_NANOS);
    }

    private Result.Done done(Result result) throws IOException {
        if (result instanceof Result.NotKept notKept) {
            throw new IOException(notKept.why());
        }
        if (result instanceof Result.Refused refused) {
            throw new IllegalStateException("the rehearsed tester was refused: " + refused.why());
        }
        if (at > LONGEST_NANOS) {
            throw new IllegalStateException("the rehearsal does not come to its end");
        }
        return (Result.Done) result;
    }
}
