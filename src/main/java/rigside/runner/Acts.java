package rigside.runner;

import java.util.Optional;
import rigside.protocol.Gate;
import rigside.protocol.Step;
import rigside.rig.Act;
import rigside.rig.Act.Kind;
import rigside.session.Activity;
import rigside.session.Donning;
import rigside.session.Place;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.State;

/** What the tester does, as a rig is told it. */
final class Acts {
    private Acts() {}

    static Act of(State state) {
        Optional<Donning> open = state.course().open();
        Activity activity = state.activity();
        if (activity instanceof Activity.Gating gating && isZero(state, gating)) {
            return new Act(Kind.FILTERED, gating.startedAt().orElse(0), 0, "", 0, 0, 0, 0);
        }
        if (open.isEmpty()) {
            return Act.NOTHING;
        }
        if (activity instanceof Activity.LeadIn lead) {
            return trial(state, Kind.EMPTYING, lead.startedAt(), lead.place(), lead.trial());
        }
        if (activity instanceof Activity.Pulling pulling) {
            return trial(state, Kind.PULL, pulling.startedAt(), pulling.place(), pulling.trial());
        }
        if (activity instanceof Activity.Tracing tracing) {
            return trial(state, Kind.PULL, tracing.pressedAt(), tracing.place(), tracing.trial());
        }
        if (activity instanceof Activity.Exercising exercising
                && exercising.startedAt().isPresent()
                && exercising.place().donning() > 0) {
            Place place = exercising.place();
            int again = again(state, new Slot.Mask(place, exercising.exercise()));
            return act(
                    Kind.EXERCISE,
                    exercising.startedAt().getAsLong(),
                    open.get(),
                    place,
                    exercising.exercise(),
                    again,
                    0);
        }
        Donning donning = open.get();
        return new Act(
                Kind.WEARING,
                donning.startedAt(),
                donning.number(),
                donning.condition(),
                0,
                0,
                0,
                0);
    }

    private static boolean isZero(State state, Activity.Gating gating) {
        Step.Gates step = (Step.Gates) Procedure.step(state, gating.place());
        return gating.startedAt().isPresent()
                && step.gates().get(gating.gate()).kind() == Gate.Kind.ZERO;
    }

    private static Act trial(State state, Kind kind, long since, Place place, int trial) {
        Step.Trials step = (Step.Trials) Procedure.step(state, place);
        return act(
                kind,
                since,
                state.course().open().orElseThrow(),
                place,
                trial,
                again(state, new Slot.Trial(place, trial)),
                kind == Kind.PULL ? step.target().si() : 0);
    }

    private static Act act(
            Kind kind,
            long since,
            Donning donning,
            Place place,
            int position,
            int again,
            double targetPa) {
        return new Act(
                kind,
                since,
                donning.number(),
                donning.condition(),
                place.step(),
                position,
                again,
                targetPa);
    }

    /** How often a gap was filled before. */
    static int again(State state, Slot slot) {
        return (int)
                state.captured().entries().stream()
                        .filter(entry -> entry.slot().equals(slot))
                        .count();
    }
}
