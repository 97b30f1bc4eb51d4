package rigside.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rigside.measure.FitFactors;
import rigside.measure.Unit;
import rigside.protocol.Measure;
import rigside.protocol.Step;
import rigside.session.Donning;
import rigside.session.State;

/** Donnings during which the ambient concentration moved more than the protocol lets pass. */
record AirFlags(State state, Measure measure, List<DonningValue> values) {

    /** One for each donning that counts, about the exercise over which it moved most. */
    List<Flag> all() {
        return measure.kind() instanceof Measure.FitFactor kind
                ? values.stream()
                        .filter(DonningValue::counts)
                        .flatMap(value -> flag(kind, value).stream())
                        .toList()
                : List.of();
    }

    /** An exercise over which it moved. */
    private record Moved(Step.Exercises step, ExerciseFit fit, double change) {}

    private Optional<Flag> flag(Measure.FitFactor kind, DonningValue value) {
        Donning donning = state.course().donning(value.donning()).orElseThrow();
        Sight sight = new Sight(Evidence.of(state), donning);
        return sight.steps(Step.Exercises.class).stream()
                .filter(placed -> placed.step().fitFactor().equals(Optional.of(measure.id())))
                .flatMap(
                        placed ->
                                ExerciseFit.of(
                                                placed.place(),
                                                placed.step(),
                                                kind,
                                                sight::concentration)
                                        .stream()
                                        .filter(fit -> fit.ambientChange().isPresent())
                                        .map(
                                                fit ->
                                                        new Moved(
                                                                placed.step(),
                                                                fit,
                                                                fit.ambientChange().getAsDouble())))
                .filter(moved -> Math.abs(moved.change()) > moved.step().ambientMayMove())
                .max(Comparator.comparingDouble(moved -> Math.abs(moved.change())))
                .map(
                        moved ->
                                new Flag(
                                        Flag.Kind.AIR_MOVED,
                                        reason(moved),
                                        List.of(value.donning()),
                                        List.of()));
    }

    private static String reason(Moved moved) {
        List<FitFactors.Sample> around = moved.fit().ambient();
        return "the ambient concentration changed from "
                + shown(around.get(0), moved.step().unit())
                + " to "
                + shown(around.get(1), moved.step().unit())
                + ", by "
                + Digits.percent(Math.abs(moved.change()))
                + " of their mean, around '"
                + moved.step().exercises().get(moved.fit().exercise()).title()
                + "'; the protocol lets "
                + Digits.percent(moved.step().ambientMayMove())
                + " pass. The fit factor there takes their mean and can be off by up to "
                + Digits.percent(Math.abs(moved.change()) / 2)
                + ". See what moves the air: doors, windows, somebody passing.";
    }

    private static String shown(FitFactors.Sample sample, Unit unit) {
        return Digits.three(unit.fromSi(sample.concentration())) + " " + unit.symbol();
    }
}
