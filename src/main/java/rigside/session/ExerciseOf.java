package rigside.session;

/** The exercise a gap belongs to; -1 when it belongs to none. */
record ExerciseOf() implements Slot.Cases<Integer> {
    @Override
    public Integer field(Slot.Field slot) {
        return -1;
    }

    @Override
    public Integer ambient(Slot.Ambient slot) {
        return slot.exercise();
    }

    @Override
    public Integer mask(Slot.Mask slot) {
        return slot.exercise();
    }

    @Override
    public Integer pressure(Slot.Pressure slot) {
        return slot.exercise();
    }

    @Override
    public Integer trial(Slot.Trial slot) {
        return -1;
    }

    @Override
    public Integer gate(Slot.Gate slot) {
        return -1;
    }
}
