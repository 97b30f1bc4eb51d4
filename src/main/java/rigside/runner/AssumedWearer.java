package rigside.runner;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.measure.Unit;
import rigside.protocol.Condition;
import rigside.protocol.Field;
import rigside.protocol.Measure;
import rigside.protocol.Measure.Compared;
import rigside.protocol.Protocol;
import rigside.rig.Wearer;
import rigside.rig.Wearer.Behaviour;
import rigside.rig.Wearer.Level;
import rigside.rig.Wearer.Scatter;

/**
 * The invented wearer of whom is true what a rehearsal assumes. Measures that nothing is assumed of
 * are as a rig file tells; without one they do not differ, and spread as the protocol expects.
 */
public final class AssumedWearer {
    private static final String TITLE = "invented for a rehearsal";

    /** Where a number's range tells no middle. */
    private static final double SOME_NUMBER = 10;

    /** Where the protocol expects no spread: this share of what would matter; ours, no source. */
    private static final double SHARE_OF_BAND = 0.5;

    /** The room wavers by at most this share of the spread of fit factors. */
    private static final double SHARE_OF_ROOM = 0.1;

    private final Protocol protocol;
    private final Optional<Wearer> told;
    private final Assumed assumed;
    private final Wearer base;

    private AssumedWearer(Protocol protocol, Optional<Wearer> told, Assumed assumed) {
        this.protocol = protocol;
        this.told = told;
        this.assumed = assumed;
        this.base = told.orElseGet(() -> Rigs.plain(protocol));
    }

    /**
     * That wearer.
     *
     * @param told who a rig file describes, if there is one
     */
    public static Wearer of(Protocol protocol, Optional<Wearer> told, Assumed assumed) {
        AssumedWearer made = new AssumedWearer(protocol, told, assumed);
        boolean asTold =
                told.isPresent() && protocol.measures().stream().noneMatch(made::isAltered);
        return asTold || protocol.conditions().isEmpty() ? made.base : made.wearer();
    }

    private Wearer wearer() {
        Map<String, Behaviour> conditions = new LinkedHashMap<>();
        Behaviour reference = base.behaviour(protocol.reference().id());
        for (Condition condition : protocol.conditions()) {
            Behaviour behaviour = told.isPresent() ? base.behaviour(condition.id()) : reference;
            for (Measure measure : protocol.measures()) {
                if (isAltered(measure)) {
                    behaviour = behaviour.with(measure.id(), level(condition.id(), measure));
                }
            }
            conditions.put(condition.id(), behaviour);
        }
        return new Wearer(
                told.map(Wearer::title).orElse(TITLE),
                base.ambient(),
                Math.min(base.ambientSpread(), SHARE_OF_ROOM * leastSpreadOfFit(conditions)),
                conditions,
                base.otherwise(),
                base.gauge());
    }

    private boolean isAltered(Measure measure) {
        if (!isInvented(protocol, measure)) {
            return false;
        }
        boolean isTold = told.isPresent() && reference(measure).isPresent();
        return assumed.mentions(measure.id()) || (measure.compared().isPresent() && !isTold);
    }

    /** Whether a rehearsal can bring about what is asked of a measure. */
    static boolean isInvented(Protocol protocol, Measure measure) {
        boolean isTyped =
                measure.kind() instanceof Measure.TypedNumber
                        || measure.kind() instanceof Measure.Calculated;
        return !isTyped || new MeasureOf(protocol).field(measure).isPresent();
    }

    private Optional<Level> reference(Measure measure) {
        return toldOf(base.behaviour(protocol.reference().id()), measure);
    }

    private Level level(String condition, Measure measure) {
        Level like = reference(measure).orElseGet(() -> middle(measure));
        Level own = told.flatMap(file -> toldOf(file.behaviour(condition), measure)).orElse(like);
        OptionalDouble change = assumed.change(condition, measure.id());
        boolean isReference = condition.equals(protocol.reference().id());
        double median =
                change.isPresent() && !isReference
                        ? changed(like.median(), change.getAsDouble(), measure)
                        : own.median();
        Spreading spreading = Spreading.of(protocol, measure, condition);
        OptionalDouble asked = assumed.spread(condition, measure.id());
        boolean known =
                told.flatMap(file -> toldOf(file.behaviour(condition), measure)).isPresent();
        if (asked.isEmpty() && (known || measure.compared().isEmpty())) {
            return new Level(median, own.between(), own.within(), own.scatter(), own.dimension());
        }
        boolean ratio = measure.scale() == Compared.Scale.RATIO;
        double spread = asked.orElseGet(() -> expected(measure.compared().orElseThrow()));
        return spreading.level(
                like,
                median,
                ratio ? spread : MeasureOf.sizeSi(spread, measure.unit()),
                ratio ? Scatter.BY_FACTORS : Scatter.BY_AMOUNTS);
    }

    private static double changed(double median, double change, Measure measure) {
        return measure.scale() == Compared.Scale.RATIO
                ? median * Math.exp(change)
                : median + MeasureOf.sizeSi(change, measure.unit());
    }

    private static double expected(Compared compared) {
        return compared.expectedSpread()
                .orElse(SHARE_OF_BAND * Math.min(compared.bandHigh(), -compared.bandLow()));
    }

    /** What a behaviour tells of a measure; empty for a typed number it is silent about. */
    static Optional<Level> toldOf(Behaviour behaviour, Measure measure) {
        return Optional.ofNullable(behaviour.measures().get(measure.id()))
                .or(() -> measure.kind().match(new OfKind(behaviour)));
    }

    private record OfKind(Behaviour behaviour) implements Measure.Kind.Cases<Optional<Level>> {
        @Override
        public Optional<Level> fitFactor(Measure.FitFactor kind) {
            return Optional.of(behaviour.fitFactor());
        }

        @Override
        public Optional<Level> timedInhalation(Measure.TimedInhalation kind) {
            return Optional.of(behaviour.inhalation());
        }

        @Override
        public Optional<Level> pressureTrace(Measure.PressureTrace kind) {
            return Optional.of(behaviour.peak());
        }

        @Override
        public Optional<Level> typedNumber(Measure.TypedNumber kind) {
            return Optional.empty();
        }

        @Override
        public Optional<Level> calculated(Measure.Calculated kind) {
            return Optional.empty();
        }
    }

    /** A number in the middle of what its field takes. */
    private Level middle(Measure measure) {
        Field field = new MeasureOf(protocol).field(measure).orElseThrow();
        Unit unit = field.unit().orElseThrow();
        if (field.answer() instanceof Field.Scale scale) {
            return new Level((scale.from() + scale.to()) / 2.0, 0, 0, unit.dimension());
        }
        Field.Numeric number = (Field.Numeric) field.answer();
        double from = number.from().orElse(0);
        double middle = number.to().isPresent() ? (from + number.to().getAsDouble()) / 2 : from;
        return new Level(unit.toSi(middle == 0 ? SOME_NUMBER : middle), 0, 0, unit.dimension());
    }

    private double leastSpreadOfFit(Map<String, Behaviour> conditions) {
        return protocol.measures().stream()
                .filter(this::isAltered)
                .filter(measure -> measure.kind() instanceof Measure.FitFactor)
                .flatMapToDouble(
                        measure ->
                                conditions.entrySet().stream()
                                        .mapToDouble(
                                                each ->
                                                        Spreading.of(
                                                                        protocol,
                                                                        measure,
                                                                        each.getKey())
                                                                .spread(
                                                                        each.getValue()
                                                                                .measures()
                                                                                .get(
                                                                                        measure
                                                                                                .id()))))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
