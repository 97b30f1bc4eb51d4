package rigside.runner;

import java.util.Optional;
import rigside.protocol.Gate;
import rigside.protocol.Step;
import rigside.rig.Asked;
import rigside.rig.Asked.Kind;
import rigside.rig.Span;
import rigside.session.Activity;
import rigside.session.Donning;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.State;

/** What the rig is to be asked now. */
final class RigQuestions {
    private RigQuestions() {}

    /** The question for the reading that waits, if an instrument could give it. */
    static Optional<Asked> reading(State state, Slot slot) {
        Optional<Donning> open = state.course().open();
        return open.isEmpty() && !(slot instanceof Slot.Gate)
                ? Optional.empty()
                : slot.match(new OfSlot(state, open));
    }

    /** The question for the number that is typed in a form of a donning, if it may be read off. */
    static Optional<Asked> typed(State state, Slot.Field slot) {
        Optional<Donning> open = state.course().open();
        if (open.isEmpty()) {
            return Optional.empty();
        }
        int position = Procedure.step(state, slot.place()).asks().indexOf(slot.id());
        return Optional.of(
                new Asked(
                        Kind.TYPED,
                        open.get().number(),
                        open.get().condition(),
                        slot.place().step(),
                        position,
                        0,
                        Acts.again(state, slot)));
    }

    /** The question how long the inhalation under way takes. */
    static Optional<Asked> pull(State state, Activity.Pulling pulling) {
        return reading(state, new Slot.Trial(pulling.place(), pulling.trial()));
    }

    /** Only gates are asked for without a donning. */
    private record OfSlot(State state, Optional<Donning> donning)
            implements Slot.Cases<Optional<Asked>> {
        @Override
        public Optional<Asked> field(Slot.Field slot) {
            return Optional.empty();
        }

        @Override
        public Optional<Asked> ambient(Slot.Ambient slot) {
            return asked(
                    Kind.AMBIENT,
                    slot.exercise(),
                    slot.window(),
                    slot,
                    Windows.ambient(state, slot));
        }

        @Override
        public Optional<Asked> mask(Slot.Mask slot) {
            return asked(Kind.MASK, slot.exercise(), 0, slot, Windows.mask(state, slot));
        }

        @Override
        public Optional<Asked> pressure(Slot.Pressure slot) {
            return asked(Kind.PRESSURE, slot.exercise(), 0, slot, Windows.pressure(state, slot));
        }

        @Override
        public Optional<Asked> trial(Slot.Trial slot) {
            return asked(Kind.INHALATION, slot.trial(), 0, slot, Optional.empty());
        }

        @Override
        public Optional<Asked> gate(Slot.Gate slot) {
            Step.Gates step = (Step.Gates) Procedure.step(state, slot.place());
            boolean zero = step.gates().get(slot.gate()).kind() == Gate.Kind.ZERO;
            return asked(
                    zero ? Kind.ZERO : Kind.ROOM, slot.gate(), 0, slot, Windows.gate(state, slot));
        }

        private Optional<Asked> asked(
                Kind kind, int position, int window, Slot slot, Optional<Span> span) {
            int again = Acts.again(state, slot);
            return Optional.of(
                    new Asked(
                            kind,
                            donning.map(Donning::number).orElse(0),
                            donning.map(Donning::condition).orElse(""),
                            slot.place().step(),
                            position,
                            window,
                            again,
                            span));
        }
    }
}
