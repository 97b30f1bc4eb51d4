package rigside.session;

/** What an entry is the value of: one gap the procedure has to fill. */
public sealed interface Slot {
    Place place();

    <R> R match(Cases<R> cases);

    /** One case for each kind of gap. */
    interface Cases<R> {
        R field(Field slot);

        R ambient(Ambient slot);

        R mask(Mask slot);

        R pressure(Pressure slot);

        R trial(Trial slot);

        R gate(Gate slot);
    }

    /**
     * A fact, or a field of a form or of observations.
     *
     * @param id the field's word
     */
    record Field(Place place, String id) implements Slot {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.field(this);
        }
    }

    /**
     * An ambient concentration.
     *
     * @param exercise its position in the step, from 0
     * @param window which of the exercise's ambient windows, from 0
     */
    record Ambient(Place place, int exercise, int window) implements Slot {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.ambient(this);
        }
    }

    /**
     * A concentration inside the mask.
     *
     * @param exercise its position in the step, from 0
     */
    record Mask(Place place, int exercise) implements Slot {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.mask(this);
        }
    }

    /**
     * A peak inhalation pressure.
     *
     * @param exercise its position in the step, from 0
     */
    record Pressure(Place place, int exercise) implements Slot {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.pressure(this);
        }
    }

    /**
     * The time of one inhalation, in seconds.
     *
     * @param trial its position in the step, from 0; a retake keeps the position
     */
    record Trial(Place place, int trial) implements Slot {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.trial(this);
        }
    }

    /**
     * A concentration read before a test starts.
     *
     * @param gate its position in the step, from 0
     */
    record Gate(Place place, int gate) implements Slot {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.gate(this);
        }
    }
}
