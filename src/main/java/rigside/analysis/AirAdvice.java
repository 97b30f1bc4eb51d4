package rigside.analysis;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rigside.measure.Ambient;
import rigside.measure.Numbers;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.protocol.Exercise;
import rigside.protocol.Gate;
import rigside.protocol.Measure;
import rigside.protocol.Protocol;
import rigside.protocol.Step;

/** Whether a protocol sees to it that the air holds enough particles for the level it requires. */
record AirAdvice(Protocol protocol) {

    /** One sentence without its stop for each fit factor whose air nothing looks at. */
    List<String> sentences() {
        return protocol.measures().stream().flatMap(each -> of(each).stream()).toList();
    }

    private Optional<String> of(Measure measure) {
        return measure.kind() instanceof Measure.FitFactor fit
                        && fit.required().isPresent()
                        && fit.sampleFlow() > 0
                ? shortest(measure.id())
                        .flatMap(each -> of(fit, fit.required().get().value(), each))
                : Optional.empty();
    }

    private Optional<String> of(Measure.FitFactor fit, double level, Exercise shortest) {
        double seconds = seconds(shortest);
        double fewest = Ambient.fewestFor(level, fit.sampleFlow() * seconds);
        boolean asked =
                gates().anyMatch(
                                gate ->
                                        gate.kind() == Gate.Kind.AMBIENT
                                                && gate.limit().si() >= fewest);
        return asked
                ? Optional.empty()
                : Optional.of(
                        "in the "
                                + Numbers.plain(seconds)
                                + " s of '"
                                + shortest.title()
                                + "' a mask that just reaches "
                                + Numbers.plain(level)
                                + " gives fewer than "
                                + Numbers.plain(Ambient.COUNTS_AT_LEVEL)
                                + " particles to count where the room holds less than "
                                + rounded(fewest)
                                + "; put a gate 'ambient' with at least that before it");
    }

    /** The exercise whose mask is sampled for the shortest time: it decides. */
    private Optional<Exercise> shortest(String measure) {
        return steps().filter(Step.Exercises.class::isInstance)
                .map(Step.Exercises.class::cast)
                .filter(step -> step.fitFactor().equals(Optional.of(measure)))
                .flatMap(step -> step.exercises().stream())
                .filter(each -> each.counted() && each.mask().isPresent())
                .min(Comparator.comparingDouble(AirAdvice::seconds));
    }

    private static double seconds(Exercise exercise) {
        return exercise.mask().map(window -> window.to() - window.from()).orElseThrow();
    }

    private Stream<Gate> gates() {
        return steps().filter(Step.Gates.class::isInstance)
                .flatMap(step -> ((Step.Gates) step).gates().stream());
    }

    private Stream<Step> steps() {
        return Stream.concat(protocol.before().stream(), protocol.donning().stream());
    }

    /** Two digits, upwards: it is a least. */
    private static Quantity rounded(double si) {
        double shown =
                new BigDecimal(Unit.PER_CUBIC_CENTIMETRE.fromSi(si))
                        .round(new MathContext(2, RoundingMode.UP))
                        .doubleValue();
        return new Quantity(shown, Unit.PER_CUBIC_CENTIMETRE);
    }
}
