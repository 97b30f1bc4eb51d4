package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.measure.FitFactors;
import rigside.measure.Penetration;
import rigside.measure.Quantity;
import rigside.protocol.Measure;
import rigside.protocol.Step;
import rigside.session.Slot;

/** The fit factor of one donning. */
final class FitFactorValue {

    private final Sight sight;
    private final Measure measure;
    private final Measure.FitFactor kind;
    private final List<Part> parts = new ArrayList<>();
    private final List<Optional<Penetration>> counted = new ArrayList<>();
    private final List<Slot> slots = new ArrayList<>();

    /**
     * Of the counted exercises with a value, what a step of 1/m3 in the mask adds to penetration.
     */
    private double perStep;

    FitFactorValue(Sight sight, Measure measure, Measure.FitFactor kind) {
        this.sight = sight;
        this.measure = measure;
        this.kind = kind;
        for (Sight.Placed<Step.Exercises> placed : sight.steps(Step.Exercises.class)) {
            if (placed.step().fitFactor().equals(Optional.of(measure.id()))) {
                add(placed);
            }
        }
    }

    DonningValue value() {
        Optional<Penetration> overall = FitFactors.overall(counted);
        return new DonningValue(
                sight.donning().number(),
                sight.donning().round(),
                sight.donning().condition(),
                Values.standing(sight, overall.isPresent()),
                shown(overall),
                shown(overall.map(Penetration::halved)),
                resolution(),
                overall.filter(Penetration::bounded).isPresent(),
                overall.filter(Penetration::unresolved).isPresent(),
                level(counted, rule()),
                parts,
                sight.entries(slots),
                Values.missing(parts));
    }

    private void add(Sight.Placed<Step.Exercises> placed) {
        List<FitFactors.Sample> ambient = new ArrayList<>();
        List<Step.Exercise> exercises = placed.step().exercises();
        double start = 0;
        for (int at = 0; at < exercises.size(); at++) {
            for (int window = 0; window < exercises.get(at).ambient().size(); window++) {
                Slot slot = new Slot.Ambient(placed.place(), at, window);
                slots.add(slot);
                sample(start, exercises.get(at).ambient().get(window), slot)
                        .ifPresent(ambient::add);
            }
            start += exercises.get(at).seconds();
        }
        start = 0;
        for (int at = 0; at < exercises.size(); at++) {
            if (exercises.get(at).mask().isPresent()) {
                Slot slot = new Slot.Mask(placed.place(), at);
                slots.add(slot);
                add(exercises.get(at), start, slot, ambient);
            }
            start += exercises.get(at).seconds();
        }
    }

    private void add(
            Step.Exercise exercise, double start, Slot slot, List<FitFactors.Sample> ambient) {
        Optional<FitFactors.Sample> mask = sample(start, exercise.mask().orElseThrow(), slot);
        Optional<Penetration> penetration =
                mask.flatMap(m -> FitFactors.exercise(ambient, m, kind.detectionLimit()));
        if (exercise.counted()) {
            counted.add(penetration);
            penetration.ifPresent(
                    known -> perStep += 1 / FitFactors.ambient(ambient, mask.get()).getAsDouble());
        }
        parts.add(
                new Part(
                        exercise.title(),
                        shown(penetration),
                        penetration.filter(Penetration::bounded).isPresent(),
                        exercise.counted(),
                        level(List.of(penetration), FitFactors.Rule.OVERALL),
                        sight.entries(List.of(slot)),
                        penetration.isPresent() ? "" : why(slot, mask, ambient)));
    }

    /**
     * One step of the mask readings, relative to the fit factor. All exercises are taken to be
     * rounded alike, since a steady reading is: step * sum(1 / ambient) / sum(mask / ambient).
     */
    private double resolution() {
        double sum =
                counted.stream().flatMap(Optional::stream).mapToDouble(Penetration::high).sum();
        double step = kind.readingStep() > 0 ? kind.readingStep() : sight.maskStep();
        return sum > 0 ? step * perStep / sum : 0;
    }

    /** A concentration with its time, reckoned as if every exercise took its declared length. */
    private Optional<FitFactors.Sample> sample(double start, Step.Window window, Slot slot) {
        return sight.number(slot)
                .map(Quantity::si)
                .filter(concentration -> concentration >= 0 && Scale.holds(concentration))
                .map(
                        concentration ->
                                new FitFactors.Sample(
                                        start + window.from(), start + window.to(), concentration));
    }

    private String why(
            Slot slot, Optional<FitFactors.Sample> mask, List<FitFactors.Sample> ambient) {
        if (sight.number(slot).isEmpty()) {
            return sight.whyEmpty(slot);
        }
        if (mask.isEmpty()) {
            return sight.number(slot).get().si() < 0
                    ? "the mask concentration is below 0"
                    : "the mask concentration is too large or too small to reckon with";
        }
        if (ambient.isEmpty()) {
            return "no ambient concentration";
        }
        return FitFactors.ambient(ambient, mask.get()).orElse(0) == 0
                ? "the ambient concentration is 0"
                : "the mask concentration is 0 and the protocol states no detection limit";
    }

    private OptionalDouble shown(Optional<Penetration> penetration) {
        return penetration.isPresent()
                ? OptionalDouble.of(measure.unit().fromSi(penetration.get().fitFactor()))
                : OptionalDouble.empty();
    }

    private FitFactors.Rule rule() {
        return kind.required()
                .map(
                        level ->
                                switch (level.rule()) {
                                    case OVERALL -> FitFactors.Rule.OVERALL;
                                    case EVERY_EXERCISE -> FitFactors.Rule.EVERY_EXERCISE;
                                })
                .orElse(FitFactors.Rule.OVERALL);
    }

    private Level level(List<Optional<Penetration>> exercises, FitFactors.Rule rule) {
        if (kind.required().isEmpty()) {
            return Level.NONE;
        }
        double required = kind.required().get().value();
        if (FitFactors.passes(exercises, required, rule)) {
            return Level.REACHED;
        }
        return FitFactors.fallsShort(exercises, required, rule) ? Level.MISSED : Level.OPEN;
    }
}
