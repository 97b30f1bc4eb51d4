package rigside.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rigside.protocol.Exercise;
import rigside.protocol.Field;
import rigside.protocol.Step;

/** The gaps a step has to fill, in the order they are asked. */
record Slots(Place place) implements Step.Cases<List<Slot>> {

    static List<Slot> of(Place place, Step step) {
        return step.match(new Slots(place));
    }

    @Override
    public List<Slot> checklist(Step.Checklist step) {
        return List.of();
    }

    @Override
    public List<Slot> form(Step.Form step) {
        return fields(step.fields());
    }

    @Override
    public List<Slot> countdown(Step.Countdown step) {
        return List.of();
    }

    @Override
    public List<Slot> exercises(Step.Exercises step) {
        List<Slot> slots = new ArrayList<>();
        for (int exercise = 0; exercise < step.exercises().size(); exercise++) {
            slots.addAll(windows(exercise, step.exercises().get(exercise)));
        }
        return List.copyOf(slots);
    }

    @Override
    public List<Slot> trials(Step.Trials step) {
        List<Slot> slots = new ArrayList<>();
        for (int trial = 0; trial < step.count(); trial++) {
            slots.add(new Slot.Trial(place, trial));
        }
        return List.copyOf(slots);
    }

    @Override
    public List<Slot> observations(Step.Observations step) {
        return fields(step.fields());
    }

    @Override
    public List<Slot> note(Step.Note step) {
        return List.of();
    }

    @Override
    public List<Slot> gates(Step.Gates step) {
        List<Slot> slots = new ArrayList<>();
        for (int gate = 0; gate < step.gates().size(); gate++) {
            slots.add(new Slot.Gate(place, gate));
        }
        return List.copyOf(slots);
    }

    private List<Slot> fields(List<Field> fields) {
        return fields.stream().<Slot>map(field -> new Slot.Field(place, field.id())).toList();
    }

    /** An exercise's windows by the time they open. */
    private List<Slot> windows(int exercise, Exercise what) {
        record Timed(double from, Slot slot) {}
        List<Timed> timed = new ArrayList<>();
        for (int window = 0; window < what.ambient().size(); window++) {
            timed.add(
                    new Timed(
                            what.ambient().get(window).from(),
                            new Slot.Ambient(place, exercise, window)));
        }
        what.mask()
                .ifPresent(
                        mask -> timed.add(new Timed(mask.from(), new Slot.Mask(place, exercise))));
        what.pressure()
                .ifPresent(
                        pressure ->
                                timed.add(
                                        new Timed(
                                                pressure.from(),
                                                new Slot.Pressure(place, exercise))));
        return timed.stream()
                .sorted(Comparator.comparingDouble(Timed::from))
                .map(Timed::slot)
                .toList();
    }
}
