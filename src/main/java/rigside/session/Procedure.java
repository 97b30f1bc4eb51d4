package rigside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import rigside.protocol.Field;
import rigside.protocol.Gate;
import rigside.protocol.Protocol;
import rigside.protocol.Step;

/** What the protocol asks for next, given what has happened. */
public final class Procedure {
    private Procedure() {}

    /** The title of the form that holds the facts of a session. */
    public static final String FACTS = "About this session";

    /**
     * The steps of one part of the session, whatever the condition; their positions are the {@code
     * step} of a place.
     */
    public static List<Step> steps(Protocol protocol, Stage stage) {
        return switch (stage) {
            case BEFORE -> {
                List<Step> steps = new ArrayList<>();
                steps.add(new Step.Form(Step.Head.of(FACTS, ""), protocol.facts()));
                steps.addAll(protocol.before());
                yield List.copyOf(steps);
            }
            case DONNING -> protocol.donning();
            case AFTER -> protocol.after();
        };
    }

    /**
     * The step at a place.
     *
     * @throws DoesNotApply if the protocol has no such step
     */
    public static Step step(State state, Place place) {
        List<Step> steps = steps(state.protocol(), place.stage());
        if (place.step() >= steps.size()) {
            throw new DoesNotApply("the protocol has no step " + (place.step() + 1) + " there");
        }
        return steps.get(place.step());
    }

    /** Whether what waits to be started now is to start without a key. */
    static boolean startsByItself(State state) {
        if (state.isFromPaper()) {
            return false;
        }
        Activity activity = state.activity();
        Optional<Place> waits = Optional.empty();
        if (activity instanceof Activity.Waiting waiting && waiting.startedAt().isEmpty()) {
            waits = Optional.of(waiting.place());
        } else if (activity instanceof Activity.Exercising next && next.startedAt().isEmpty()) {
            waits = Optional.of(next.place());
        } else if (activity instanceof Activity.TrialReady ready) {
            waits = Optional.of(ready.place());
        }
        return waits.map(place -> step(state, place).startsByItself()).orElse(false);
    }

    /**
     * The field a gap belongs to.
     *
     * @throws DoesNotApply if the protocol has no such field there
     */
    public static Field field(State state, Slot.Field slot) {
        return step(state, slot.place()).fields().stream()
                .filter(field -> field.id().equals(slot.id()))
                .findFirst()
                .orElseThrow(
                        () ->
                                new DoesNotApply(
                                        "the protocol has no field '" + slot.id() + "' there"));
    }

    static Activity activity(State state) {
        if (state.course().closed()) {
            return new Activity.Closed();
        }
        if (state.doing().halted().isPresent()) {
            return new Activity.Halted(state.doing().halted().get());
        }
        return state.doing().running().orElseGet(() -> next(state));
    }

    private static Activity next(State state) {
        Course course = state.course();
        if (!course.cautionsRead()) {
            return new Activity.Cautions();
        }
        return switch (course.stage()) {
            case BEFORE -> firstOpen(state, Stage.BEFORE, 0).orElseGet(() -> firstDonning(state));
            case DONNING ->
                    course.open()
                            .map(
                                    open ->
                                            firstOpen(state, Stage.DONNING, open.number())
                                                    .or(() -> openFact(state))
                                                    .orElse(
                                                            new Activity.DonningDone(
                                                                    open.number())))
                            .orElseGet(() -> betweenDonnings(state));
            case AFTER -> firstOpen(state, Stage.AFTER, 0).orElse(new Activity.Closing());
        };
    }

    /** Where nothing is worn the session ends with what comes before a first donning. */
    private static Activity firstDonning(State state) {
        return state.protocol().purpose() == Protocol.Purpose.INSTRUMENT_CHECK
                ? new Activity.Closing()
                : Schedule.next(state);
    }

    /** A fact voided after the first donning is asked for again before the next one. */
    private static Activity betweenDonnings(State state) {
        return firstOpen(state, Stage.BEFORE, 0).orElseGet(() -> nextOrEnough(state));
    }

    /** A fact voided in a donning is asked for before its end: steps of it may depend on it. */
    private static Optional<Activity> openFact(State state) {
        return new Open(state, new Place(Stage.BEFORE, 0, 0))
                .form(new Step.Form(Step.Head.of(FACTS, ""), state.protocol().facts()));
    }

    private static Activity nextOrEnough(State state) {
        Optional<Look> last = state.captured().lastLook();
        if (last.isPresent() && last.get().round() == Schedule.completeRounds(state).size()) {
            boolean usedUp = last.get().planUsedUp();
            if (usedUp
                    || (last.get().enough()
                            && state.course().wentOnAt() != state.captured().looks().size())) {
                return new Activity.Recommended(!usedUp);
            }
        }
        return Schedule.next(state);
    }

    private static Optional<Activity> firstOpen(State state, Stage stage, int donning) {
        List<Step> steps = steps(state.protocol(), stage);
        return Applicable.steps(state, stage, donning).stream()
                .flatMap(
                        at ->
                                steps
                                        .get(at)
                                        .match(new Open(state, new Place(stage, donning, at)))
                                        .stream())
                .findFirst();
    }

    /** What a step still asks for; empty when it is done. */
    private record Open(State state, Place place) implements Step.Cases<Optional<Activity>> {
        @Override
        public Optional<Activity> checklist(Step.Checklist step) {
            int confirmed = state.course().progress(place);
            return confirmed < step.items().size()
                    ? Optional.of(new Activity.Checking(place, confirmed))
                    : Optional.empty();
        }

        @Override
        public Optional<Activity> form(Step.Form step) {
            return firstGap(Slots.of(place, step));
        }

        @Override
        public Optional<Activity> countdown(Step.Countdown step) {
            return state.course().progress(place) > 0
                    ? Optional.empty()
                    : Optional.of(new Activity.Waiting(place, OptionalLong.empty()));
        }

        @Override
        public Optional<Activity> exercises(Step.Exercises step) {
            int finished = state.course().progress(place);
            boolean all = finished == step.exercises().size();
            if (all || step.entering() == Step.Exercises.Entering.AFTER_EACH) {
                Optional<Activity> gap =
                        firstGap(
                                Slots.of(place, step).stream()
                                        .filter(slot -> exerciseOf(slot) < finished)
                                        .toList());
                if (gap.isPresent()) {
                    return gap;
                }
            }
            return all
                    ? Optional.empty()
                    : Optional.of(new Activity.Exercising(place, finished, OptionalLong.empty()));
        }

        @Override
        public Optional<Activity> trials(Step.Trials step) {
            return Slots.of(place, step).stream()
                    .filter(slot -> !state.captured().isSettled(slot))
                    .findFirst()
                    .map(slot -> trial(((Slot.Trial) slot).trial(), step.restSeconds()));
        }

        @Override
        public Optional<Activity> observations(Step.Observations step) {
            return firstGap(Slots.of(place, step));
        }

        @Override
        public Optional<Activity> note(Step.Note step) {
            return state.course().progress(place) > 0
                    ? Optional.empty()
                    : Optional.of(new Activity.Reading(place));
        }

        @Override
        public Optional<Activity> gates(Step.Gates step) {
            for (int gate = 0; gate < step.gates().size(); gate++) {
                Optional<Activity> open = gate(step.gates().get(gate), gate);
                if (open.isPresent()) {
                    return open;
                }
            }
            return Optional.empty();
        }

        private Optional<Activity> gate(Gate gate, int at) {
            Slot slot = new Slot.Gate(place, at);
            Optional<Entry> read = state.captured().standing(slot);
            if (state.captured().isLeftOut(slot) || read.filter(e -> opens(gate, e)).isPresent()) {
                return Optional.empty();
            }
            if (read.isPresent()) {
                return Optional.of(new Activity.GateMissed(place, at, read.get().number()));
            }
            return state.isFromPaper() || state.course().progress(place) > at
                    ? Optional.of(new Activity.Filling(slot))
                    : Optional.of(new Activity.Gating(place, at, OptionalLong.empty()));
        }

        private static boolean opens(Gate gate, Entry entry) {
            return entry.value() instanceof Value.Measured read && gate.isMetBy(read.quantity());
        }

        /** On paper the time is there already: no lead-in, no rest. */
        private Activity trial(int trial, double restSeconds) {
            if (state.isFromPaper()) {
                return new Activity.Filling(new Slot.Trial(place, trial));
            }
            OptionalLong since = state.doing().pulledAt();
            boolean rests = since.isPresent() && state.doing().restedSeconds() < restSeconds;
            return rests
                    ? new Activity.Resting(place, trial, since.getAsLong())
                    : new Activity.TrialReady(place, trial);
        }

        private Optional<Activity> firstGap(List<Slot> slots) {
            return slots.stream()
                    .filter(slot -> !state.captured().isSettled(slot))
                    .findFirst()
                    .map(Activity.Filling::new);
        }
    }

    /** The position of the exercise a slot belongs to; -1 when it belongs to none. */
    static int exerciseOf(Slot slot) {
        return slot.match(new ExerciseOf());
    }
}
