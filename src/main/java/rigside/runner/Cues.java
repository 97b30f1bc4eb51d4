package rigside.runner;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Stream;
import rigside.protocol.Step;
import rigside.rig.Cue;
import rigside.session.Activity;
import rigside.session.Event;
import rigside.session.Procedure;
import rigside.session.State;

/**
 * What the tester has to notice without looking. A pull has no cues of its own between its start
 * and its end: its clock may be concealed.
 */
final class Cues {
    private static final double NANOS = 1e9;

    private static final double LAST_SECONDS = 3;

    /** What is shorter has no half-way cue: it would crowd the last seconds. */
    private static final double SHORTEST_HALVED_SECONDS = 10;

    /** A moment missed by more, in seconds of the real clock, is past: a computer that slept. */
    private static final double STALE_SECONDS = 1;

    private Cues() {}

    /**
     * The cues of what has just happened; an exercise that leads straight into the next one has had
     * its cue when its time was over.
     */
    static List<Cue> of(List<Event> events) {
        boolean runsOn = events.stream().anyMatch(Event.ExerciseFinished.class::isInstance);
        List<Cue> cues = new ArrayList<>();
        for (Event event : events) {
            if (event instanceof Event.TrialStarted
                    || event instanceof Event.CountdownStarted
                    || event instanceof Event.GateStarted
                    || (event instanceof Event.ExerciseStarted && !runsOn)) {
                cues.add(Cue.START);
            } else if (event instanceof Event.TrialStopped || event instanceof Event.Halted) {
                cues.add(Cue.STOP);
            } else if (event instanceof Event.VoidOffered
                    || event instanceof Event.EntryDoubted
                    || event instanceof Event.TimeDoubted
                    || event instanceof Event.FeedFailed) {
                cues.add(Cue.PROBLEM);
            }
        }
        return List.copyOf(cues);
    }

    /**
     * The same, and of a gate that read what it must not; where nothing is timed, of problems
     * alone.
     */
    static List<Cue> of(List<Event> events, State after) {
        boolean missed =
                events.stream().anyMatch(Event.EntryCaptured.class::isInstance)
                        && after.activity() instanceof Activity.GateMissed;
        List<Cue> all = of(events);
        List<Cue> cues =
                after.isFromPaper() ? all.stream().filter(cue -> cue == Cue.PROBLEM).toList() : all;
        return missed ? Stream.concat(cues.stream(), Stream.of(Cue.PROBLEM)).toList() : cues;
    }

    /**
     * The cues of time itself that fall after one moment and up to another; the very first of a
     * lead-in from its beginning on. They need nothing to be kept first.
     */
    static List<Cue> between(State state, long before, long now) {
        double stale = STALE_SECONDS * NANOS * state.speed();
        return moments(state)
                .filter(
                        m ->
                                m.first()
                                        ? before <= m.at() && m.at() < now
                                        : before < m.at() && m.at() <= now)
                .filter(m -> m.cue() == Cue.NEXT || now - m.at() <= stale)
                .map(Moment::cue)
                .toList();
    }

    /** When the next cue of time itself is due. */
    static OptionalLong next(State state, long after) {
        return moments(state).mapToLong(Moment::at).filter(at -> at > after).min();
    }

    /** When a cue is due; {@code first} where that is the beginning itself. */
    private record Moment(Cue cue, long at, boolean first) {}

    private static Stream<Moment> moments(State state) {
        Activity activity = state.activity();
        if (activity instanceof Activity.LeadIn lead) {
            return leadIn(lead.startedAt(), trials(state, lead).leadInSeconds());
        }
        return timed(state).stream().flatMap(Timed::cues);
    }

    private static Step.Trials trials(State state, Activity.LeadIn lead) {
        return (Step.Trials) Procedure.step(state, lead.place());
    }

    /** One as each whole second left begins, and the word to pull at the end. */
    private static Stream<Moment> leadIn(long start, double seconds) {
        List<Moment> moments = new ArrayList<>();
        for (int left = (int) seconds; left > 0; left--) {
            double since = seconds - left;
            moments.add(new Moment(Cue.LEAD_IN, after(start, since), since == 0));
        }
        moments.add(new Moment(Cue.GO, after(start, seconds), seconds == 0));
        return moments.stream();
    }

    /** Something of a known length that is running. */
    private record Timed(long start, double seconds, boolean halved) {
        Stream<Moment> cues() {
            List<Moment> moments = new ArrayList<>();
            if (halved && seconds >= SHORTEST_HALVED_SECONDS) {
                moments.add(new Moment(Cue.HALF_WAY, after(start, seconds / 2), false));
            }
            if (seconds > LAST_SECONDS) {
                long at = after(start, seconds - LAST_SECONDS);
                moments.add(new Moment(Cue.LAST_SECONDS, at, false));
            }
            moments.add(new Moment(Cue.NEXT, after(start, seconds), false));
            return moments.stream();
        }
    }

    private static List<Timed> timed(State state) {
        Activity activity = state.activity();
        if (activity instanceof Activity.Waiting waiting && waiting.startedAt().isPresent()) {
            Step.Countdown step = (Step.Countdown) Procedure.step(state, waiting.place());
            return List.of(new Timed(waiting.startedAt().getAsLong(), step.seconds(), true));
        }
        if (activity instanceof Activity.Exercising exercising
                && exercising.startedAt().isPresent()) {
            Step.Exercises step = (Step.Exercises) Procedure.step(state, exercising.place());
            double seconds = step.exercises().get(exercising.exercise()).seconds();
            return List.of(new Timed(exercising.startedAt().getAsLong(), seconds, true));
        }
        if (activity instanceof Activity.Gating gating && gating.startedAt().isPresent()) {
            Step.Gates step = (Step.Gates) Procedure.step(state, gating.place());
            double seconds = step.gates().get(gating.gate()).seconds();
            return List.of(new Timed(gating.startedAt().getAsLong(), seconds, true));
        }
        if (activity instanceof Activity.Resting resting) {
            Step.Trials step = (Step.Trials) Procedure.step(state, resting.place());
            return List.of(new Timed(resting.since(), step.restSeconds(), false));
        }
        return List.of();
    }

    /** Never a fraction of a nanosecond too early: by then the time would not be over yet. */
    private static long after(long start, double seconds) {
        return start + (long) Math.ceil(seconds * NANOS);
    }
}
