package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.measure.Counted;
import rigside.measure.FitFactors;
import rigside.measure.Penetration;
import rigside.measure.Quantity;
import rigside.protocol.Exercise;
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
    private final List<Optional<Counted>> counts = new ArrayList<>();
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
                sight.restsOn(
                        sight.entries(slots),
                        step ->
                                step instanceof Step.Exercises exercises
                                        && exercises.fitFactor().equals(Optional.of(measure.id()))),
                Values.missing(parts),
                overall.flatMap(known -> counting()));
    }

    private void add(Sight.Placed<Step.Exercises> placed) {
        List<Exercise> exercises = placed.step().exercises();
        for (int at = 0; at < exercises.size(); at++) {
            for (int window = 0; window < exercises.get(at).ambient().size(); window++) {
                slots.add(new Slot.Ambient(placed.place(), at, window));
            }
        }
        for (ExerciseFit fit :
                ExerciseFit.of(placed.place(), placed.step(), kind, sight::concentration)) {
            slots.add(fit.slot());
            add(exercises.get(fit.exercise()), fit);
        }
    }

    private void add(Exercise exercise, ExerciseFit fit) {
        if (exercise.counted()) {
            counted.add(fit.penetration());
            counts.add(fit.counted());
            fit.penetration()
                    .ifPresent(
                            known ->
                                    perStep +=
                                            1
                                                    / FitFactors.ambient(
                                                                    fit.ambient(), fit.mask().get())
                                                            .getAsDouble());
        }
        parts.add(
                new Part(
                        exercise.title(),
                        shown(fit.penetration()),
                        fit.penetration().filter(Penetration::bounded).isPresent(),
                        exercise.counted(),
                        level(List.of(fit.penetration()), FitFactors.Rule.OVERALL),
                        sight.entries(List.of(fit.slot())),
                        fit.penetration().isPresent() ? "" : why(fit)));
    }

    /** What counting leaves open; nothing is known of it where it is not known of an exercise. */
    private Optional<Counted.Limits> counting() {
        List<Counted> known = counts.stream().flatMap(Optional::stream).toList();
        return known.isEmpty() || known.size() < counts.size()
                ? Optional.empty()
                : Optional.of(Counted.limits(known, ExerciseFit.CONFIDENCE));
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

    private String why(ExerciseFit fit) {
        Optional<Quantity> read = sight.number(fit.slot());
        if (read.isEmpty()) {
            return sight.whyEmpty(fit.slot());
        }
        if (fit.mask().isEmpty()) {
            return read.get().si() < 0
                    ? "the mask concentration is below 0"
                    : "the mask concentration is too large or too small to reckon with";
        }
        if (fit.ambient().isEmpty()) {
            return "no ambient concentration";
        }
        return FitFactors.ambient(fit.ambient(), fit.mask().get()).orElse(0) == 0
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
