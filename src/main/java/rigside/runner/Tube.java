package rigside.runner;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rigside.protocol.Gate;
import rigside.protocol.Step;
import rigside.rig.FeedTrouble;
import rigside.rig.FeedTrouble.Kind;
import rigside.rig.Reading;
import rigside.rig.Rig;
import rigside.rig.Signal;
import rigside.rig.Span;
import rigside.session.Activity;
import rigside.session.Place;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.State;

/** Whether a counter whose lines say it has its tube on the side that is wanted. */
final class Tube {
    /** By this word its trouble stands beside that of instruments. */
    static final String NAME = "sample tube";

    /** So long a hand may take to switch it; own judgement, no source. */
    private static final long SWITCHING = 2_000_000_000L;

    private final Rig rig;
    private Optional<Wanted> told = Optional.empty();

    Tube(Rig rig) {
        this.rig = rig;
    }

    /** What the tube should be on, and from which session time on, in nanoseconds. */
    private record Wanted(Signal side, long since) {}

    /** What is to be said now: once in each window, and when it is over. */
    List<FeedTrouble> pass(State state, long now) {
        Optional<Wanted> wanted = wanted(state, now);
        Optional<FeedTrouble> over = over(wanted, now);
        Optional<Signal> astray = wanted.flatMap(this::astray);
        if (told.isPresent() || astray.isEmpty()) {
            return over.stream().toList();
        }
        told = wanted;
        String words = NAME + ": " + words(astray.get(), wanted.get().side());
        return Stream.concat(
                        over.stream(),
                        Stream.of(new FeedTrouble(NAME, Kind.WRONG_SIDE, now, words)))
                .toList();
    }

    private Optional<FeedTrouble> over(Optional<Wanted> wanted, long now) {
        if (told.isEmpty() || (told.equals(wanted) && wanted.flatMap(this::astray).isPresent())) {
            return Optional.empty();
        }
        String words =
                told.equals(wanted)
                        ? "the counter says it is on " + place(wanted.get().side()) + " now"
                        : "it was on the wrong side until its time was over";
        told = Optional.empty();
        return Optional.of(new FeedTrouble(NAME, Kind.BACK, now, NAME + ": " + words));
    }

    /** In words when it is on the wrong side now; empty when not, or when no line says it. */
    Optional<String> now(State state, long now) {
        return wanted(state, now)
                .flatMap(wanted -> astray(wanted).map(side -> words(side, wanted.side())));
    }

    /** In words when it was on the wrong side for most of what a value is asked for. */
    Optional<String> before(State state, Slot slot) {
        Optional<Signal> side = side(state, slot);
        Optional<Span> span = span(state, slot);
        if (side.isEmpty() || span.isEmpty()) {
            return Optional.empty();
        }
        long right = said(side.get(), span.get());
        long wrong = said(other(side.get()), span.get());
        return wrong > right
                ? Optional.of(
                        "the counter said it was on "
                                + place(other(side.get()))
                                + " ("
                                + wrong
                                + " of "
                                + (wrong + right)
                                + " readings)")
                : Optional.empty();
    }

    private long said(Signal side, Span span) {
        return rig.readings(side, span.from(), span.to()).stream()
                .filter(reading -> reading.side().isPresent())
                .count();
    }

    /** The side the last reading says, where it is not the one wanted. */
    private Optional<Signal> astray(Wanted wanted) {
        return rig.latest(other(wanted.side()))
                .filter(reading -> reading.at() >= wanted.since() + SWITCHING)
                .flatMap(Reading::side);
    }

    private static String words(Signal is, Signal wanted) {
        return "the counter says it is on " + place(is) + ", not on " + place(wanted);
    }

    private static String place(Signal side) {
        return side == Signal.AMBIENT ? "the room" : "the mask";
    }

    private static Signal other(Signal side) {
        return side == Signal.AMBIENT ? Signal.MASK : Signal.AMBIENT;
    }

    private static Optional<Wanted> wanted(State state, long now) {
        return slots(state)
                .flatMap(
                        slot ->
                                span(state, slot)
                                        .filter(span -> span.from() <= now && now < span.to())
                                        .flatMap(
                                                span ->
                                                        side(state, slot)
                                                                .map(
                                                                        side ->
                                                                                new Wanted(
                                                                                        side,
                                                                                        span
                                                                                                .from())))
                                        .stream())
                .findFirst();
    }

    /** What is sampled while the step that runs lasts. */
    private static Stream<Slot> slots(State state) {
        Activity activity = state.activity();
        if (activity instanceof Activity.Gating gating && gating.startedAt().isPresent()) {
            return Stream.of(new Slot.Gate(gating.place(), gating.gate()));
        }
        if (activity instanceof Activity.Exercising exercising
                && exercising.startedAt().isPresent()) {
            Place place = exercising.place();
            int at = exercising.exercise();
            Step.Exercises step = (Step.Exercises) Procedure.step(state, place);
            Stream<Slot> ambient =
                    IntStream.range(0, step.exercises().get(at).ambient().size())
                            .mapToObj(window -> new Slot.Ambient(place, at, window));
            return Stream.concat(ambient, Stream.of(new Slot.Mask(place, at)));
        }
        return Stream.empty();
    }

    /** Which concentration a gap asks for, if one. */
    static Optional<Signal> side(State state, Slot slot) {
        if (slot instanceof Slot.Gate gate) {
            Step.Gates step = (Step.Gates) Procedure.step(state, gate.place());
            boolean zero = step.gates().get(gate.gate()).kind() == Gate.Kind.ZERO;
            return Optional.of(zero ? Signal.MASK : Signal.AMBIENT);
        }
        if (slot instanceof Slot.Ambient) {
            return Optional.of(Signal.AMBIENT);
        }
        return slot instanceof Slot.Mask ? Optional.of(Signal.MASK) : Optional.empty();
    }

    /** When it is sampled. */
    static Optional<Span> span(State state, Slot slot) {
        if (slot instanceof Slot.Gate gate) {
            return Windows.gate(state, gate);
        }
        if (slot instanceof Slot.Ambient ambient) {
            return Windows.ambient(state, ambient);
        }
        return slot instanceof Slot.Mask mask ? Windows.mask(state, mask) : Optional.empty();
    }
}
