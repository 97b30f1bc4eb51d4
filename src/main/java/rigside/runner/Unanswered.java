package rigside.runner;

import java.util.Optional;
import rigside.rig.Rig;
import rigside.rig.Sample;
import rigside.rig.Signal;
import rigside.rig.Span;
import rigside.session.Slot;
import rigside.session.State;

/** Why instruments that are there did not give a value, for the tester who is asked for it. */
record Unanswered(Rig rig) {

    /** In words that begin with who did not answer; empty where no instrument could have. */
    Optional<String> why(State state, Slot slot) {
        if (slot instanceof Slot.Pressure) {
            return new Traces(rig).isAttached()
                    ? Optional.of("gauge: no whole breath was found in its window")
                    : Optional.empty();
        }
        return new Tube(rig)
                .before(state, slot)
                .map(words -> Tube.NAME + ": " + words)
                .or(() -> sample(state, slot).flatMap(Unanswered::lacking));
    }

    private Optional<Sample> sample(State state, Slot slot) {
        Optional<Signal> side = Tube.side(state, slot);
        Optional<Span> span = Tube.span(state, slot);
        return side.isEmpty() || span.isEmpty()
                ? Optional.empty()
                : rig.sample(side.get(), span.get());
    }

    private static Optional<String> lacking(Sample sample) {
        if (sample.isUsable()) {
            return Optional.empty();
        }
        if (sample.count() == 0) {
            return Optional.of("counter: it gave nothing in its window that counts");
        }
        return Optional.of(
                Double.isFinite(sample.expected())
                        ? "counter: only "
                                + sample.count()
                                + " of about "
                                + Math.round(sample.expected())
                                + " readings in its window, settling left out; half are needed"
                        : "counter: it was silent for too much of its window");
    }
}
