package rigside.runner;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.protocol.Step;
import rigside.rig.Asked;
import rigside.rig.Rig;
import rigside.rig.Sample;
import rigside.rig.Signal;
import rigside.rig.Span;
import rigside.session.Activity;
import rigside.session.Input;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.Source;
import rigside.session.State;

/** What the rig gives to a session by itself: readings that are waited for, the end of a pull. */
record RigAnswers(Rig rig) {
    private static final double NANOS = 1e9;

    private static final double MILLISECOND = 1e-3;

    /** An input the rig gives, and when. */
    record Due(Input input, long at) {}

    /** The same input, saying whether the pressure is followed where that matters. */
    Input seen(Input input) {
        return input instanceof Input.TriggerPressed
                ? new Input.TriggerPressed(traces().isFollowed())
                : input;
    }

    private Traces traces() {
        return new Traces(rig);
    }

    /** What the rig gives until now; empty when it has to be typed, or nothing is asked. */
    Optional<Due> due(State state, long now) {
        Activity activity = state.activity();
        if (activity instanceof Activity.Filling filling) {
            return reading(state, filling.slot()).map(input -> new Due(input, now));
        }
        if (activity instanceof Activity.Pulling pulling) {
            OptionalDouble seconds = answer(RigQuestions.pull(state, pulling));
            if (seconds.isPresent() && end(pulling, seconds.getAsDouble()) <= now) {
                return Optional.of(
                        new Due(
                                new Input.PullEnded(seconds.getAsDouble(), traces().isFollowed()),
                                end(pulling, seconds.getAsDouble())));
            }
        }
        if (activity instanceof Activity.Tracing tracing) {
            return traces().pull(state, tracing, now).map(input -> new Due(input, now));
        }
        return Optional.empty();
    }

    /** When the rig next gives something by itself, in nanoseconds of session time, if it knows. */
    OptionalLong next(State state) {
        if (state.activity() instanceof Activity.Pulling pulling) {
            OptionalDouble seconds = answer(RigQuestions.pull(state, pulling));
            if (seconds.isPresent()) {
                return OptionalLong.of(end(pulling, seconds.getAsDouble()));
            }
        }
        return state.activity() instanceof Activity.Tracing tracing
                ? OptionalLong.of(Traces.due(tracing))
                : OptionalLong.empty();
    }

    private static long end(Activity.Pulling pulling, double seconds) {
        return pulling.startedAt() + Math.round(seconds * NANOS);
    }

    private Optional<Input> reading(State state, Slot slot) {
        if (slot instanceof Slot.Pressure pressure && traces().isAttached()) {
            return traces().breaths(state, pressure);
        }
        Optional<Asked> asked = RigQuestions.reading(state, slot);
        OptionalDouble si = answer(asked);
        if (si.isEmpty()) {
            return Optional.empty();
        }
        Unit unit = unit(Procedure.step(state, slot.place()), slot);
        Source source = rig.simulated() ? Source.SIMULATED : Source.INSTRUMENT;
        return Optional.of(
                new Input.ReadingArrived(
                        slot,
                        new Quantity(unit.fromSi(si.getAsDouble()), unit),
                        source,
                        sampled(slot, asked)));
    }

    /**
     * How long a concentration was really sampled, in whole milliseconds; 0 for as long as its
     * window.
     */
    private double sampled(Slot slot, Optional<Asked> asked) {
        Optional<Span> span = asked.flatMap(Asked::span);
        Optional<Signal> signal = signal(slot);
        if (span.isEmpty() || signal.isEmpty()) {
            return 0;
        }
        double seconds = rig.sample(signal.get(), span.get()).map(Sample::seconds).orElse(0.0);
        double whole = (span.get().to() - span.get().from()) / NANOS;
        return Math.abs(seconds - whole) < MILLISECOND ? 0 : Math.rint(seconds * 1000) / 1000;
    }

    private static Optional<Signal> signal(Slot slot) {
        if (slot instanceof Slot.Ambient) {
            return Optional.of(Signal.AMBIENT);
        }
        return slot instanceof Slot.Mask ? Optional.of(Signal.MASK) : Optional.empty();
    }

    /** The unit a gap of a step is typed in. */
    static Unit unit(Step step, Slot slot) {
        if (step instanceof Step.Gates gates) {
            return gates.unit();
        }
        Step.Exercises exercises = (Step.Exercises) step;
        return slot instanceof Slot.Pressure ? exercises.pressureUnit() : exercises.unit();
    }

    private OptionalDouble answer(Optional<Asked> asked) {
        return asked.isPresent() ? rig.answer(asked.get()) : OptionalDouble.empty();
    }
}
