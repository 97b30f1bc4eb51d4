package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import rigside.measure.Ambient;
import rigside.measure.Counted;
import rigside.measure.Penetration;
import rigside.protocol.Measure;
import rigside.protocol.Plan;
import rigside.protocol.Step;
import rigside.session.Place;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.State;

/**
 * What particle counters give while something is under way, as far as it may be seen. Fit factors
 * of the open donning's exercises are out as those of finished ones are; that the air of the room
 * moved gives nothing away and is always said.
 *
 * @param concentration the mean so far of what is sampled just now, in 1/m3; empty without an
 *     instrument, between windows, and where it is concealed
 * @param fits the fit factor of each exercise so far, in order; empty where it is concealed
 * @param ambientChange by how much the ambient concentration changed from the sample before to the
 *     last one, as a share of their mean; empty before there are two, and where it is concealed
 * @param ambientMoved whether it changed by more, from any sample to the next, than the protocol
 *     lets pass
 * @param amiss in words, what is wrong with what is sampled, or why it gave no value: the tube on
 *     the other side than wanted, too few readings
 */
public record Live(
        OptionalDouble concentration,
        List<Fit> fits,
        OptionalDouble ambientChange,
        boolean ambientMoved,
        Optional<String> amiss) {
    /** Nothing is followed. */
    public static final Live NONE =
            new Live(OptionalDouble.empty(), List.of(), OptionalDouble.empty(), false);

    public Live {
        fits = List.copyOf(fits);
    }

    /** With nothing wrong, as far as is known. */
    public Live(
            OptionalDouble concentration,
            List<Fit> fits,
            OptionalDouble ambientChange,
            boolean ambientMoved) {
        this(concentration, fits, ambientChange, ambientMoved, Optional.empty());
    }

    /** The same with what is wrong with what is sampled. */
    public Live withAmiss(Optional<String> words) {
        return new Live(concentration, fits, ambientChange, ambientMoved, words);
    }

    /**
     * The fit factor of one exercise so far.
     *
     * @param exercise its position in the step, from 0
     * @param value a lower bound where {@code bounded}
     * @param counting what counting alone leaves open, with 95 % confidence; empty where the volume
     *     sampled is not known
     */
    public record Fit(
            int exercise, double value, boolean bounded, Optional<Counted.Limits> counting) {}

    /**
     * A mean so far.
     *
     * @param concentration in 1/m3
     * @param seconds how long it was sampled
     * @param open whether it is sampled just now
     */
    public record Sampled(double concentration, double seconds, boolean open) {}

    /** The fit factor so far of one exercise, if it can be stated and seen. */
    public Optional<Fit> fit(int exercise) {
        return fits.stream().filter(each -> each.exercise() == exercise).findFirst();
    }

    /** What a gate reads: it gives nothing away. */
    public static Live gate(OptionalDouble concentration) {
        return new Live(concentration, List.of(), OptionalDouble.empty(), false);
    }

    /**
     * What the exercises of a step give so far.
     *
     * @param now the exercise that runs, from 0
     * @param sampled what instruments gave of a gap until now; what is captured goes before it
     */
    public static Live exercises(
            State state,
            Shown shown,
            Place place,
            int now,
            Function<Slot, Optional<Sampled>> sampled) {
        Step.Exercises step = (Step.Exercises) Procedure.step(state, place);
        Optional<Measure.FitFactor> kind =
                step.fitFactor()
                        .flatMap(state.protocol()::measure)
                        .map(measure -> (Measure.FitFactor) measure.kind());
        if (kind.isEmpty()) {
            return NONE;
        }
        Evidence evidence = Evidence.of(state);
        Optional<Sight> sight = state.course().open().map(open -> new Sight(evidence, open));
        Function<Slot, Optional<ExerciseFit.Read>> read =
                slot ->
                        sight.flatMap(each -> each.concentration(slot))
                                .or(
                                        () ->
                                                sampled.apply(slot)
                                                        .map(
                                                                live ->
                                                                        new ExerciseFit.Read(
                                                                                live
                                                                                        .concentration(),
                                                                                live.seconds())));
        boolean out = shown.result() || state.protocol().plan().result() == Plan.Until.DONNING_ENDS;
        List<Double> changes = changes(place, step, read);
        return new Live(
                out ? open(place, step, now, sampled) : OptionalDouble.empty(),
                out ? fits(ExerciseFit.of(place, step, kind.get(), read)) : List.of(),
                out && !changes.isEmpty()
                        ? OptionalDouble.of(changes.get(changes.size() - 1))
                        : OptionalDouble.empty(),
                changes.stream().anyMatch(each -> Math.abs(each) > step.ambientMayMove()));
    }

    private static OptionalDouble open(
            Place place, Step.Exercises step, int now, Function<Slot, Optional<Sampled>> sampled) {
        List<Slot> slots = new ArrayList<>(List.of(new Slot.Mask(place, now)));
        for (int window = 0; window < step.exercises().get(now).ambient().size(); window++) {
            slots.add(new Slot.Ambient(place, now, window));
        }
        return slots.stream()
                .flatMap(slot -> sampled.apply(slot).stream())
                .filter(Sampled::open)
                .mapToDouble(Sampled::concentration)
                .findFirst();
    }

    private static List<Fit> fits(List<ExerciseFit> all) {
        return all.stream()
                .filter(each -> each.penetration().isPresent())
                .map(
                        each -> {
                            Penetration known = each.penetration().get();
                            return new Fit(
                                    each.exercise(),
                                    known.fitFactor(),
                                    known.bounded(),
                                    each.counted()
                                            .map(
                                                    counted ->
                                                            Counted.limits(
                                                                    List.of(counted),
                                                                    ExerciseFit.CONFIDENCE)));
                        })
                .toList();
    }

    /** From each ambient sample to the next. */
    private static List<Double> changes(
            Place place, Step.Exercises step, Function<Slot, Optional<ExerciseFit.Read>> read) {
        List<Double> ambient = new ArrayList<>();
        for (int at = 0; at < step.exercises().size(); at++) {
            for (int window = 0; window < step.exercises().get(at).ambient().size(); window++) {
                read.apply(new Slot.Ambient(place, at, window))
                        .map(ExerciseFit.Read::concentration)
                        .filter(concentration -> concentration > 0)
                        .ifPresent(ambient::add);
            }
        }
        List<Double> changes = new ArrayList<>();
        for (int at = 1; at < ambient.size(); at++) {
            changes.add(Ambient.change(ambient.get(at - 1), ambient.get(at)));
        }
        return changes;
    }
}
