package rigside.runner;

import java.util.Optional;
import java.util.OptionalDouble;
import rigside.analysis.Live;
import rigside.analysis.Shown;
import rigside.protocol.Gate;
import rigside.protocol.Step;
import rigside.rig.Rig;
import rigside.rig.Sample;
import rigside.rig.Signal;
import rigside.rig.Span;
import rigside.session.Activity;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.State;

/**
 * What particle counters give of the windows under way. Taken anew twice a second: digits that
 * change more often cannot be read.
 */
final class LiveReadings {
    private static final double EVERY_SECONDS = 0.5;

    private final Rig rig;
    private Live last = Live.NONE;
    private long takenAt;
    private Optional<Activity> takenOf = Optional.empty();

    LiveReadings(Rig rig) {
        this.rig = rig;
    }

    /** What is given until now, in nanoseconds of session time. */
    Live at(State state, Shown shown, long now) {
        Activity activity = state.activity();
        boolean fresh =
                takenOf.equals(Optional.of(activity))
                        && now - takenAt < EVERY_SECONDS * 1e9 * state.speed();
        if (!fresh) {
            last = take(state, shown, activity, now);
            takenAt = now;
            takenOf = Optional.of(activity);
        }
        return last;
    }

    private Live take(State state, Shown shown, Activity activity, long now) {
        return counted(state, shown, activity, now)
                .withAmiss(
                        activity instanceof Activity.Filling filling
                                ? new Unanswered(rig).why(state, filling.slot())
                                : new Tube(rig)
                                        .now(state, now)
                                        .map(words -> Tube.NAME + ": " + words));
    }

    private Live counted(State state, Shown shown, Activity activity, long now) {
        if (activity instanceof Activity.Gating gating && gating.startedAt().isPresent()) {
            return gate(state, gating, now);
        }
        if (activity instanceof Activity.Exercising exercising
                && exercising.startedAt().isPresent()) {
            return Live.exercises(
                    state,
                    shown,
                    exercising.place(),
                    exercising.exercise(),
                    slot -> sampled(state, slot, now));
        }
        return Live.NONE;
    }

    private Live gate(State state, Activity.Gating gating, long now) {
        Step.Gates step = (Step.Gates) Procedure.step(state, gating.place());
        boolean zero = step.gates().get(gating.gate()).kind() == Gate.Kind.ZERO;
        Slot.Gate slot = new Slot.Gate(gating.place(), gating.gate());
        return Live.gate(
                Windows.gate(state, slot)
                        .flatMap(span -> sample(zero ? Signal.MASK : Signal.AMBIENT, span, now))
                        .map(sample -> OptionalDouble.of(sample.mean()))
                        .orElse(OptionalDouble.empty()));
    }

    private Optional<Live.Sampled> sampled(State state, Slot slot, long now) {
        if (slot instanceof Slot.Ambient ambient) {
            return sampled(Signal.AMBIENT, Windows.ambient(state, ambient), now);
        }
        return slot instanceof Slot.Mask mask
                ? sampled(Signal.MASK, Windows.mask(state, mask), now)
                : Optional.empty();
    }

    private Optional<Live.Sampled> sampled(Signal signal, Optional<Span> window, long now) {
        return window.flatMap(
                span ->
                        sample(signal, span, now)
                                .map(
                                        sample ->
                                                new Live.Sampled(
                                                        sample.mean(),
                                                        sample.seconds(),
                                                        now < span.to())));
    }

    /** The part of a window that is over; one that is over as a whole counts as it will. */
    private Optional<Sample> sample(Signal signal, Span span, long now) {
        if (now <= span.from()) {
            return Optional.empty();
        }
        Span soFar = new Span(span.from(), Math.min(span.to(), now), span.switched());
        return rig.sample(signal, soFar)
                .filter(sample -> now < span.to() ? sample.count() > 0 : sample.isUsable());
    }
}
