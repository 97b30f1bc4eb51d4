package rigside.runner;

import java.util.List;
import java.util.Optional;
import rigside.measure.Unit;
import rigside.protocol.Field;
import rigside.protocol.Measure;
import rigside.protocol.Protocol;
import rigside.protocol.Step;
import rigside.rig.Asked;
import rigside.rig.MeasureAsked;

/** Which measure of a protocol a rig is asked about. */
record MeasureOf(Protocol protocol) implements MeasureAsked {
    @Override
    public Optional<String> of(Asked asked) {
        List<Step> steps = protocol.donning();
        if (asked.donning() == 0 || asked.step() >= steps.size()) {
            return Optional.empty();
        }
        Step step = steps.get(asked.step());
        return switch (asked.kind()) {
            case AMBIENT, ZERO, ROOM -> Optional.empty();
            case MASK ->
                    step instanceof Step.Exercises exercises
                            ? exercises.fitFactor()
                            : Optional.empty();
            case PRESSURE ->
                    step instanceof Step.Exercises exercises
                            ? exercises.pressureTrace()
                            : Optional.empty();
            case INHALATION ->
                    step instanceof Step.Trials trials
                            ? Optional.of(trials.measure())
                            : Optional.empty();
            case TYPED ->
                    asked.exercise() < step.fields().size()
                            ? typed(step.fields().get(asked.exercise()).id()).map(Measure::id)
                            : Optional.empty();
        };
    }

    /**
     * The measure that a typed field is the value of, or else the first one calculated from it that
     * a rehearsal brings about by it.
     */
    Optional<Measure> typed(String field) {
        Optional<Measure> typed =
                protocol.measures().stream()
                        .filter(
                                measure ->
                                        measure.kind() instanceof Measure.TypedNumber number
                                                && number.field().equals(field))
                        .findFirst();
        return typed.isPresent()
                ? typed
                : protocol.measures().stream()
                        .filter(measure -> lever(measure).equals(Optional.of(field)))
                        .findFirst();
    }

    /** The field by which a rehearsal brings a measure's value about; empty if there is none. */
    Optional<Field> field(Measure measure) {
        Optional<String> id =
                measure.kind() instanceof Measure.TypedNumber typed
                        ? Optional.of(typed.field())
                        : lever(measure);
        return id.filter(each -> typed(each).equals(Optional.of(measure)))
                .flatMap(
                        each ->
                                protocol.donning().stream()
                                        .flatMap(step -> step.fields().stream())
                                        .filter(field -> field.id().equals(each))
                                        .findFirst());
    }

    /**
     * Of a calculated measure the field that changes it by just as much as itself is changed, the
     * others being as they are: by the same factor on the scale of ratios, by the same amount on
     * that of differences.
     */
    private static Optional<String> lever(Measure measure) {
        if (!(measure.kind() instanceof Measure.Calculated calculated)) {
            return Optional.empty();
        }
        boolean isRatio = measure.scale() == Measure.Compared.Scale.RATIO;
        boolean isAlone = calculated.of().stream().distinct().count() == 1;
        boolean moves =
                switch (calculated.function()) {
                    case RATIO, PRODUCT -> isRatio && !isAlone;
                    case DIFFERENCE -> !isRatio && !isAlone;
                    case MEAN, MEDIAN, SMALLEST, LARGEST -> isAlone;
                    case GEOMETRIC_MEAN, SUM -> isRatio && isAlone;
                    case RANGE -> false;
                };
        return moves ? Optional.of(calculated.of().get(0)) : Optional.empty();
    }

    /** A size in a unit as one in SI: a unit's zero does not enter. */
    static double sizeSi(double size, Unit unit) {
        return unit.toSi(size) - unit.toSi(0);
    }
}
