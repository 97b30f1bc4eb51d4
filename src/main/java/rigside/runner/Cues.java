package rigside.runner;

import java.util.ArrayList;
import java.util.List;
import rigside.protocol.Step;
import rigside.rig.Cue;
import rigside.session.Activity;
import rigside.session.Event;
import rigside.session.Procedure;
import rigside.session.State;

/** What the tester has to notice without looking. */
final class Cues {
    private Cues() {}

    private static final double NANOS = 1e9;

    /** The cues of what has just happened. */
    static List<Cue> of(List<Event> events) {
        List<Cue> cues = new ArrayList<>();
        for (Event event : events) {
            if (event instanceof Event.TrialStopped) {
                cues.add(Cue.STOP);
            } else if (event instanceof Event.ExerciseFinished
                    || event instanceof Event.CountdownFinished
                    || event instanceof Event.RestFinished) {
                cues.add(Cue.NEXT);
            }
        }
        return List.copyOf(cues);
    }

    /**
     * The cues of a lead-in between two moments: one as each whole second left begins, and the word
     * to pull at its end.
     */
    static List<Cue> leadIn(State state, long before, long now) {
        if (!(state.activity() instanceof Activity.LeadIn lead)) {
            return List.of();
        }
        double length = ((Step.Trials) Procedure.step(state, lead.place())).leadInSeconds();
        double from = (before - lead.startedAt()) / NANOS;
        double to = (now - lead.startedAt()) / NANOS;
        List<Cue> cues = new ArrayList<>();
        for (int left = (int) length; left > 0; left--) {
            double begins = length - left;
            if (from <= begins && begins < to) {
                cues.add(Cue.LEAD_IN);
            }
        }
        if (from < length && length <= to) {
            cues.add(Cue.GO);
        }
        return List.copyOf(cues);
    }
}
