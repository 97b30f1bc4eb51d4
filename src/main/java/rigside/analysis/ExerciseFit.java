package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import rigside.measure.Ambient;
import rigside.measure.Counted;
import rigside.measure.FitFactors;
import rigside.measure.Penetration;
import rigside.protocol.Exercise;
import rigside.protocol.Measure;
import rigside.protocol.Step;
import rigside.protocol.Window;
import rigside.session.Place;
import rigside.session.Slot;

/**
 * What one exercise with a mask sample gives, from the concentrations there are.
 *
 * @param exercise its position in the step, from 0
 * @param slot the gap of its mask sample
 * @param mask its mask sample, if there is one
 * @param ambient the ambient samples around it: before, after, as far as there are any
 * @param penetration empty where the samples leave no fit factor to state
 * @param counted what was counted, where the volume is known
 */
record ExerciseFit(
        int exercise,
        Slot slot,
        Optional<FitFactors.Sample> mask,
        List<FitFactors.Sample> ambient,
        Optional<Penetration> penetration,
        Optional<Counted> counted) {

    /** The confidence of what counting leaves open. */
    static final double CONFIDENCE = 0.95;

    /**
     * A concentration in 1/m3.
     *
     * @param seconds how long it was sampled; 0 for as long as its window
     */
    record Read(double concentration, double seconds) {}

    /** By how much the ambient concentration changed over it, see {@link Ambient#change}. */
    OptionalDouble ambientChange() {
        return ambient.size() == 2
                        && ambient.get(0).concentration() + ambient.get(1).concentration() > 0
                ? OptionalDouble.of(
                        Ambient.change(
                                ambient.get(0).concentration(), ambient.get(1).concentration()))
                : OptionalDouble.empty();
    }

    /**
     * The exercises of a step that sample the mask, in order.
     *
     * @param read the concentration of a gap, if there is one
     */
    static List<ExerciseFit> of(
            Place place,
            Step.Exercises step,
            Measure.FitFactor kind,
            Function<Slot, Optional<Read>> read) {
        return new All(place, step, kind, read).all();
    }

    /** A sample and how long it really was, in seconds. */
    private record Timed(FitFactors.Sample sample, double seconds) {
        Counted.Sampled counted(double flow) {
            return new Counted.Sampled(sample.concentration(), flow * seconds);
        }
    }

    private record All(
            Place place,
            Step.Exercises step,
            Measure.FitFactor kind,
            Function<Slot, Optional<Read>> read) {

        List<ExerciseFit> all() {
            List<Timed> ambient = new ArrayList<>();
            double start = 0;
            for (int at = 0; at < step.exercises().size(); at++) {
                List<Window> windows = step.exercises().get(at).ambient();
                for (int window = 0; window < windows.size(); window++) {
                    timed(start, windows.get(window), new Slot.Ambient(place, at, window))
                            .ifPresent(ambient::add);
                }
                start += step.exercises().get(at).seconds();
            }
            List<ExerciseFit> all = new ArrayList<>();
            start = 0;
            for (int at = 0; at < step.exercises().size(); at++) {
                Exercise exercise = step.exercises().get(at);
                if (exercise.mask().isPresent()) {
                    Slot slot = new Slot.Mask(place, at);
                    all.add(fit(at, slot, timed(start, exercise.mask().get(), slot), ambient));
                }
                start += exercise.seconds();
            }
            return List.copyOf(all);
        }

        private ExerciseFit fit(int at, Slot slot, Optional<Timed> mask, List<Timed> ambient) {
            List<FitFactors.Sample> samples = ambient.stream().map(Timed::sample).toList();
            List<FitFactors.Sample> around =
                    mask.map(m -> FitFactors.around(samples, m.sample())).orElse(List.of());
            return new ExerciseFit(
                    at,
                    slot,
                    mask.map(Timed::sample),
                    around,
                    mask.flatMap(
                            m -> FitFactors.exercise(samples, m.sample(), kind.detectionLimit())),
                    mask.flatMap(m -> counted(m, around, ambient)));
        }

        private Optional<Counted> counted(
                Timed mask, List<FitFactors.Sample> around, List<Timed> ambient) {
            List<Counted.Sampled> drawn =
                    ambient.stream()
                            .filter(each -> around.contains(each.sample()))
                            .map(each -> each.counted(kind.sampleFlow()))
                            .toList();
            return Counted.of(mask.counted(kind.sampleFlow()), drawn);
        }

        /** A concentration with its time, reckoned as if every exercise took its length. */
        private Optional<Timed> timed(double start, Window window, Slot slot) {
            return read.apply(slot)
                    .filter(each -> each.concentration() >= 0 && Scale.holds(each.concentration()))
                    .map(
                            each ->
                                    new Timed(
                                            new FitFactors.Sample(
                                                    start + window.from(),
                                                    start + window.to(),
                                                    each.concentration()),
                                            each.seconds() > 0
                                                    ? each.seconds()
                                                    : window.to() - window.from()));
        }
    }
}
