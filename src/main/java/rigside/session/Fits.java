package rigside.session;

import java.util.List;
import rigside.protocol.Step;

/** What an event's place must be for the event to fit the protocol; otherwise it does not apply. */
record Fits(State state) {

    Step.Checklist item(Place place, int item) {
        Step.Checklist step = step(place, Step.Checklist.class);
        within(item, step.items().size());
        return step;
    }

    Step.Exercises exercise(Place place, int exercise) {
        Step.Exercises step = step(place, Step.Exercises.class);
        within(exercise, step.exercises().size());
        return step;
    }

    Step.Gates gate(Place place, int gate) {
        Step.Gates step = step(place, Step.Gates.class);
        within(gate, step.gates().size());
        return step;
    }

    Step.Trials trial(Place place, int trial) {
        Step.Trials step = trials(place);
        within(trial, step.count());
        return step;
    }

    Step.Trials trials(Place place) {
        return step(place, Step.Trials.class);
    }

    void countdown(Place place) {
        step(place, Step.Countdown.class);
    }

    void note(Place place) {
        step(place, Step.Note.class);
    }

    void slot(Slot slot) {
        Step step = Procedure.step(state, begun(slot.place()));
        if (!Slots.of(slot.place(), step).contains(slot)) {
            throw new DoesNotApply("the protocol asks for nothing like it there");
        }
    }

    /** The slots of one exercise. */
    List<Slot> slotsOf(Place place, int exercise) {
        return Slots.of(place, exercise(place, exercise)).stream()
                .filter(slot -> Procedure.exerciseOf(slot) == exercise)
                .toList();
    }

    private <S extends Step> S step(Place place, Class<S> kind) {
        Step step = Procedure.step(state, begun(place));
        if (!kind.isInstance(step)) {
            throw new DoesNotApply("the step there is of another kind");
        }
        return kind.cast(step);
    }

    private Place begun(Place place) {
        if (place.donning() > state.course().donnings().size()) {
            throw new DoesNotApply("there is no donning " + place.donning());
        }
        return place;
    }

    private static void within(int index, int size) {
        if (index < 0 || index >= size) {
            throw new DoesNotApply("there is no " + (index + 1) + " of " + size + " there");
        }
    }
}
