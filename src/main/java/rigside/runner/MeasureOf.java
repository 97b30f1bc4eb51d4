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
                    step instanceof Step.Form form && asked.exercise() < form.fields().size()
                            ? typed(form.fields().get(asked.exercise()).id()).map(Measure::id)
                            : Optional.empty();
        };
    }

    /** The measure that a typed field is the value of. */
    Optional<Measure> typed(String field) {
        return protocol.measures().stream()
                .filter(
                        measure ->
                                measure.kind() instanceof Measure.TypedNumber typed
                                        && typed.field().equals(field))
                .findFirst();
    }

    /** The number field of a form in a donning; empty for any other id. */
    static Optional<Field.Numeric> field(Protocol protocol, String id) {
        return protocol.donning().stream()
                .filter(Step.Form.class::isInstance)
                .flatMap(step -> ((Step.Form) step).fields().stream())
                .filter(field -> field.id().equals(id))
                .map(Field::answer)
                .filter(Field.Numeric.class::isInstance)
                .map(Field.Numeric.class::cast)
                .findFirst();
    }

    /** A size in a unit as one in SI: a unit's zero does not enter. */
    static double sizeSi(double size, Unit unit) {
        return unit.toSi(size) - unit.toSi(0);
    }
}
