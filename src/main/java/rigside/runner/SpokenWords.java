package rigside.runner;

import java.util.Optional;
import rigside.protocol.Step;
import rigside.rig.Cue;
import rigside.session.Activity;
import rigside.session.Procedure;
import rigside.session.State;

/** What is said of a cue: titles of the protocol and plain words, never a value or a condition. */
public final class SpokenWords {
    private SpokenWords() {}

    /**
     * The words of a cue.
     *
     * @param state where the session stands after what is cued
     * @return empty for a cue that is best left to its tone
     */
    public static Optional<String> of(Cue cue, State state) {
        return switch (cue) {
            case LEAD_IN, START -> Optional.empty();
            case GO -> Optional.of("pull");
            case HALF_WAY -> Optional.of("half way");
            case LAST_SECONDS -> Optional.of("three seconds");
            case STOP ->
                    Optional.of(
                            state.activity() instanceof Activity.Halted ? "stopped" : "time taken");
            case NEXT -> Optional.of(next(state));
            case PROBLEM -> Optional.of("please look at the screen");
        };
    }

    private static String next(State state) {
        Activity activity = state.activity();
        if (activity instanceof Activity.Exercising exercising) {
            Step.Exercises step = (Step.Exercises) Procedure.step(state, exercising.place());
            return "next: " + step.exercises().get(exercising.exercise()).title();
        }
        if (activity instanceof Activity.TrialReady) {
            return "rested; the next inhalation when you are ready";
        }
        if (activity instanceof Activity.Filling) {
            return "over; the readings, please";
        }
        if (activity instanceof Activity.DonningDone) {
            return "over; this donning is done";
        }
        return "over; next step";
    }
}
