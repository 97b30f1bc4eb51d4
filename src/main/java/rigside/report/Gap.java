package rigside.report;

import rigside.session.Slot;

/**
 * Which of the step's exercises, trials or gates an entry is of.
 *
 * @param kind what was asked for, in a word
 * @param position which exercise, trial or gate of the step, from 1; 0 where there is none
 * @param field the id of the fact or field; empty where it is none
 */
record Gap(String kind, int position, String field) {
    private static final Slot.Cases<Gap> OF =
            new Slot.Cases<>() {
                @Override
                public Gap field(Slot.Field slot) {
                    return new Gap(Spelt.word(slot.getClass()), 0, slot.id());
                }

                @Override
                public Gap ambient(Slot.Ambient slot) {
                    return at(slot, slot.exercise());
                }

                @Override
                public Gap mask(Slot.Mask slot) {
                    return at(slot, slot.exercise());
                }

                @Override
                public Gap pressure(Slot.Pressure slot) {
                    return at(slot, slot.exercise());
                }

                @Override
                public Gap trial(Slot.Trial slot) {
                    return at(slot, slot.trial());
                }

                @Override
                public Gap gate(Slot.Gate slot) {
                    return at(slot, slot.gate());
                }

                private Gap at(Slot slot, int position) {
                    return new Gap(Spelt.word(slot.getClass()), position + 1, "");
                }
            };

    static Gap of(Slot slot) {
        return slot.match(OF);
    }
}
