package rigside.runner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.protocol.Measure.Compared.Scale;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;
import rigside.rig.Wearer;
import rigside.rig.Wearer.Level;
import rigside.rig.Wearer.Scatter;

/**
 * What is true of an invented wearer in one comparison.
 *
 * @param measure what is compared
 * @param condition the id of the condition compared with the reference
 * @param change on the analysis scale: of a ratio the natural log, of a difference in the measure's
 *     unit
 * @param reference standard deviation of a value of the reference, on that scale
 * @param spread standard deviation of a value of the condition, on that scale
 */
public record Truth(
        Measure measure, String condition, double change, double reference, double spread) {

    /** One for each comparison of the protocol, in its order. */
    public static List<Truth> of(Protocol protocol, Wearer wearer) {
        List<Truth> all = new ArrayList<>();
        for (Measure measure : protocol.measures()) {
            if (measure.compared().isPresent()) {
                for (Condition each :
                        protocol.conditions().subList(1, protocol.conditions().size())) {
                    of(protocol, wearer, measure, each.id()).ifPresent(all::add);
                }
            }
        }
        return List.copyOf(all);
    }

    /**
     * Standard deviation of what one round gives, on the analysis scale: of the difference within a
     * round, or of one value where values stand for themselves.
     */
    double roundSpread(Plan.Design design) {
        double both = Math.hypot(reference, spread);
        return design == Plan.Design.ROUNDS ? both : both / Math.sqrt(2);
    }

    /**
     * Standard deviation of a donning's value, on the analysis scale, of a measure that is only
     * recorded.
     */
    public static OptionalDouble spread(
            Protocol protocol, Wearer wearer, Measure measure, String condition) {
        return AssumedWearer.toldOf(wearer.behaviour(condition), measure).stream()
                .mapToDouble(level -> spread(protocol, measure, condition, level))
                .findFirst();
    }

    private static Optional<Truth> of(
            Protocol protocol, Wearer wearer, Measure measure, String condition) {
        String first = protocol.reference().id();
        Optional<Level> reference = AssumedWearer.toldOf(wearer.behaviour(first), measure);
        Optional<Level> other = AssumedWearer.toldOf(wearer.behaviour(condition), measure);
        if (reference.isEmpty() || other.isEmpty()) {
            return Optional.empty();
        }
        boolean ratio = measure.scale() == Scale.RATIO;
        double one = reference.get().median();
        double two = other.get().median();
        return Optional.of(
                new Truth(
                        measure,
                        condition,
                        ratio ? Math.log(two / one) : inUnit(two - one, measure),
                        spread(protocol, measure, first, reference.get()),
                        spread(protocol, measure, condition, other.get())));
    }

    private static double spread(
            Protocol protocol, Measure measure, String condition, Level level) {
        double spread = Spreading.of(protocol, measure, condition).spread(level);
        double median = level.median();
        boolean byFactors = level.scatter() == Scatter.BY_FACTORS;
        if (measure.scale() == Scale.RATIO) {
            return byFactors ? spread : spread / median;
        }
        return inUnit(byFactors ? spread * median : spread, measure);
    }

    private static double inUnit(double sizeSi, Measure measure) {
        return sizeSi / MeasureOf.sizeSi(1, measure.unit());
    }
}
