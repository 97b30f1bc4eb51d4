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
    private Rehearsal() {}

    private static final long TICK_NANOS = 50_000_000L;

    /** How long the rehearsed tester takes for anything that is not timed. */
    private static final long HAND_NANOS = 2_000_000_000L;

    /** Longer than any session: a week of ticks. */
    private static final long LONGEST_NANOS = 7L * 24 * 3600 * 1_000_000_000L;

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
        long[] at = {0};
        Runner runner = Runner.open(ledger, tester.rig(), () -> start.plusNanos(at[0]), opening);
        boolean still = false;
        while (!runner.state().course().closed()) {
            Optional<Input> key = tester.key(runner.state(), at[0]);
            at[0] = key.isPresent() ? pressed(key.get(), at[0]) : passed(runner, at[0], still);
            List<Cue> cues = new ArrayList<>(key.isPresent() ? List.of() : runner.timed(at[0]));
            Result result = key.isPresent() ? runner.accept(key.get(), at[0]) : runner.tick(at[0]);
            refuse(result, at[0]);
            still = key.isEmpty();
            if (result instanceof Result.Done done) {
                still &= done.events().isEmpty();
                cues.addAll(done.cues());
                runner.cued(cues, "rehearsed", at[0]);
            }
        }
        return runner.state();
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

    private static void refuse(Result result, long at) throws IOException {
        if (result instanceof Result.NotKept notKept) {
            throw new IOException(notKept.why());
        }
        if (result instanceof Result.Refused refused) {
            throw new IllegalStateException("the rehearsed tester was refused: " + refused.why());
        }
        if (at > LONGEST_NANOS) {
            throw new IllegalStateException("the rehearsal does not come to its end");
        }
    }
}
