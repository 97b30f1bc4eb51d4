package rigside.runner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import rigside.protocol.Exercise;
import rigside.protocol.Step.Exercises;
import rigside.protocol.Step.Gates;
import rigside.protocol.Window;
import rigside.rig.Span;
import rigside.session.Place;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.State;

/** When the samples of an exercise were taken, in session time; empty if it never began. */
final class Windows {
    private static final double NANOS = 1e9;

    private Windows() {}

    static Optional<Span> ambient(State state, Slot.Ambient slot) {
        return exercise(state, slot.place(), slot.exercise())
                .map(exercise -> exercise.ambient().get(slot.window()))
                .flatMap(
                        window ->
                                sample(
                                        state,
                                        slot.place(),
                                        new Taken(slot.exercise(), window, true)));
    }

    static Optional<Span> mask(State state, Slot.Mask slot) {
        return exercise(state, slot.place(), slot.exercise())
                .flatMap(Exercise::mask)
                .flatMap(
                        window ->
                                sample(
                                        state,
                                        slot.place(),
                                        new Taken(slot.exercise(), window, false)));
    }

    static Optional<Span> pressure(State state, Slot.Pressure slot) {
        return exercise(state, slot.place(), slot.exercise())
                .flatMap(Exercise::pressure)
                .flatMap(window -> span(state, slot.place(), slot.exercise(), window, false));
    }

    /** The tube may have been anywhere before. */
    static Optional<Span> gate(State state, Slot.Gate slot) {
        return Procedure.step(state, slot.place()) instanceof Gates step
                ? span(
                        state,
                        slot.place(),
                        slot.gate(),
                        new Window(0, step.gates().get(slot.gate()).seconds()),
                        true)
                : Optional.empty();
    }

    private static Optional<Exercise> exercise(State state, Place place, int exercise) {
        return Procedure.step(state, place) instanceof Exercises step
                ? Optional.of(step.exercises().get(exercise))
                : Optional.empty();
    }

    private static Optional<Span> span(
            State state, Place place, int exercise, Window window, boolean switched) {
        OptionalLong begun = state.course().begun(place, exercise);
        return begun.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Span(
                                begun.getAsLong() + Math.round(window.from() * NANOS),
                                begun.getAsLong() + Math.round(window.to() * NANOS),
                                switched));
    }

    /** A sample of the step, in the order of time. */
    private record Taken(int exercise, Window window, boolean ambient) {}

    /**
     * Whether the sample before it in the step was taken on the other side of the tube; before the
     * first one the tube may have been anywhere.
     */
    private static boolean switched(State state, Place place, Taken sample) {
        List<Taken> all = taken(((Exercises) Procedure.step(state, place)).exercises());
        int at = all.indexOf(sample);
        return at == 0 || all.get(at - 1).ambient() != sample.ambient();
    }

    private static Optional<Span> sample(State state, Place place, Taken sample) {
        return span(
                state, place, sample.exercise(), sample.window(), switched(state, place, sample));
    }

    private static List<Taken> taken(List<Exercise> exercises) {
        List<Taken> all = new ArrayList<>();
        for (int at = 0; at < exercises.size(); at++) {
            List<Taken> here = new ArrayList<>();
            for (Window window : exercises.get(at).ambient()) {
                here.add(new Taken(at, window, true));
            }
            int exercise = at;
            exercises
                    .get(at)
                    .mask()
                    .ifPresent(window -> here.add(new Taken(exercise, window, false)));
            here.sort(Comparator.comparingDouble(each -> each.window().from()));
            all.addAll(here);
        }
        return all;
    }
}
