package rigside.desk;

import rigside.protocol.Step;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.State;

/** What an entry is the value of, in words. */
record SlotWords(State state) implements Slot.Cases<String> {

    static String of(State state, Slot slot) {
        return slot.match(new SlotWords(state));
    }

    @Override
    public String field(Slot.Field slot) {
        return Procedure.field(state, slot).ask();
    }

    @Override
    public String ambient(Slot.Ambient slot) {
        return exercise(slot, slot.exercise()) + ", ambient";
    }

    @Override
    public String mask(Slot.Mask slot) {
        return exercise(slot, slot.exercise()) + ", mask";
    }

    @Override
    public String pressure(Slot.Pressure slot) {
        return exercise(slot, slot.exercise()) + ", pressure";
    }

    @Override
    public String trial(Slot.Trial slot) {
        return Procedure.step(state, slot.place()).title() + ", trial " + (slot.trial() + 1);
    }

    private String exercise(Slot slot, int exercise) {
        Step.Exercises step = (Step.Exercises) Procedure.step(state, slot.place());
        return step.exercises().get(exercise).title();
    }
}
