package rigside.protocol;

import java.util.Map;
import java.util.Optional;
import rigside.measure.Dimension;
import rigside.measure.FreeBreathing.Zero;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.protocol.Measure.Compared;
import rigside.protocol.Measure.Level;
import rigside.yaml.Entry;
import rigside.yaml.Fields;
import rigside.yaml.Value;

/** Reads one measure. */
final class MeasureReader {
    static final double HIGHEST_LEVEL = 1e6;

    /** Keys that belong to one kind only. */
    private static final Map<String, MeasureKind> KEYS =
            Map.of(
                    "detection-limit", MeasureKind.FIT_FACTOR,
                    "required", MeasureKind.FIT_FACTOR,
                    "sample-flow", MeasureKind.FIT_FACTOR,
                    "vital-capacity", MeasureKind.TIMED_INHALATION,
                    "zero", MeasureKind.PRESSURE_TRACE,
                    "field", MeasureKind.TYPED_NUMBER,
                    "function", MeasureKind.CALCULATED,
                    "of", MeasureKind.CALCULATED);

    private MeasureReader() {}

    static Value<Measure> read(Entry entry, Known known) {
        known.measures.expect();
        return entry.fields(
                fields -> {
                    Value<String> id = known.measures.declare(fields.required("id"));
                    Value<String> title = known.measures.title(fields.required("title"));
                    return fields.deciding("kind", "fit-factor")
                            .oneOf(MeasureKind.class)
                            .then(kind -> ofKind(fields, id, title, kind, known));
                });
    }

    private static Value<Measure> ofKind(
            Fields fields, Value<String> id, Value<String> title, MeasureKind kind, Known known) {
        fields.is(MeasureElements.of(kind));
        id.toOptional()
                .ifPresent(
                        word -> {
                            known.kinds.put(word, kind);
                            known.measureIds.put(word, id);
                        });
        Value<Unit> unit = unit(fields, kind);
        Value<Double> resolution = resolution(fields, kind, unit);
        Value<Optional<Compared>> compared = ComparedReader.read(fields, unit);
        if (compared.orElse(Optional.empty()).isPresent()) {
            id.toOptional().ifPresent(known.compared::add);
        }
        Value<? extends Measure.Kind> details = details(fields, id, kind, unit, known);
        return fields.make(
                () ->
                        new Measure(
                                id.get(),
                                title.get(),
                                details.get(),
                                unit.get(),
                                resolution.get(),
                                compared.get()));
    }

    private static Value<Unit> unit(Fields fields, MeasureKind kind) {
        if (kind.isStated()) {
            return UnitText.unit(fields.required("unit"));
        }
        if (kind == MeasureKind.FIT_FACTOR) {
            fields.refused("unit", "has no place here", "delete it: a fit factor has no unit");
            return fields.value(Unit.ONE);
        }
        Entry entry = fields.optional("unit");
        return entry.isGiven() ? UnitText.unit(entry, kind.dimension) : fields.value(kind.unit);
    }

    private static Value<Double> resolution(Fields fields, MeasureKind kind, Value<Unit> unit) {
        if (kind == MeasureKind.FIT_FACTOR) {
            return fields.value(kind.resolution);
        }
        Entry entry =
                kind.isStated() ? fields.required("resolution") : fields.optional("resolution");
        return unit.then(
                shown ->
                        entry.isGiven()
                                ? QuantityText.quantity(entry.line(), shown.dimension())
                                        .map(step -> QuantityText.differenceIn(step, shown))
                                        .must(
                                                step -> step > 0,
                                                step -> "'resolution' must be above 0",
                                                "write the smallest step the reading can show,"
                                                        + " such as '0.1 s'")
                                : unit.map(same -> kind.resolution / shown.toSi(1)));
    }

    private static Value<? extends Measure.Kind> details(
            Fields fields, Value<String> id, MeasureKind kind, Value<Unit> unit, Known known) {
        KEYS.forEach(
                (key, owner) -> {
                    if (owner != kind) {
                        fields.refused(
                                key,
                                "is for measures of kind " + owner.word(),
                                "delete it, or change 'kind'");
                    }
                });
        return switch (kind) {
            case FIT_FACTOR -> fitFactor(fields, known);
            case TIMED_INHALATION -> timedInhalation(fields, known);
            case PRESSURE_TRACE -> pressureTrace(fields);
            case TYPED_NUMBER -> {
                Value<String> field = fields.required("field").line();
                known.typed.add(new Known.Typed(id, field, unit));
                yield field.map(Measure.TypedNumber::new);
            }
            case CALCULATED -> {
                CalculatedText text = CalculatedText.read(fields, id, unit);
                known.calculated.add(text);
                yield text.kind();
            }
        };
    }

    /** The gauge's own zero unless the file says otherwise: most masks have exhalation valves. */
    private static Value<Measure.PressureTrace> pressureTrace(Fields fields) {
        Value<Zero> zero = fields.optional("zero").oneOf(Zero.class);
        return fields.value(new Measure.PressureTrace(zero.orElse(Zero.GAUGE)));
    }

    private static Value<Measure.FitFactor> fitFactor(Fields fields, Known known) {
        Value<Double> limit =
                concentration(
                        fields,
                        "detection-limit",
                        "write the lowest concentration the counter resolves, or delete it");
        Value<Double> step =
                concentration(
                        fields,
                        "resolution",
                        "write the smallest step its concentrations can show, such as '0.1 /cm3'");
        Value<Level> level = fields.optional("required").fields(MeasureReader::level);
        Value<Double> flow = flow(fields.optional("sample-flow"));
        flow.toOptional().ifPresent(known.flows::add);
        return fields.value(
                new Measure.FitFactor(
                        limit.orElse(0.0), step.orElse(0.0), level.toOptional(), flow.orElse(0.0)));
    }

    /** What a counter draws, in m3/s. */
    private static Value<Double> flow(Entry entry) {
        return QuantityText.quantity(entry.line(), Dimension.FLOW)
                .must(
                        quantity -> quantity.value() > 0,
                        quantity -> "'sample-flow' is '" + quantity + "', must be above 0",
                        "write the flow the counter counts in, such as '0.1 L/min', or delete it")
                .map(Quantity::si);
    }

    /** A concentration above 0, in 1/m3. */
    private static Value<Double> concentration(Fields fields, String key, String help) {
        return QuantityText.quantity(fields.optional(key).line(), Dimension.CONCENTRATION)
                .must(
                        quantity -> quantity.value() > 0,
                        quantity -> "'" + key + "' is '" + quantity + "', must be above 0",
                        help)
                .map(Quantity::si);
    }

    private static Value<Level> level(Fields fields) {
        fields.is(MeasureElements.REQUIRED_LEVEL);
        Value<Double> level =
                fields.required("level")
                        .number()
                        .must(
                                number -> number > 1 && number <= HIGHEST_LEVEL,
                                number ->
                                        "'level' is "
                                                + QuantityText.plain(number)
                                                + ", must be above 1",
                                "write the fit factor to reach, such as 100");
        Value<Level.Rule> rule = fields.required("rule").oneOf(Level.Rule.class);
        return fields.make(() -> new Level(level.get(), rule.get()));
    }

    private static Value<Measure.TimedInhalation> timedInhalation(Fields fields, Known known) {
        Value<String> fact =
                known.facts
                        .refer(fields.optional("vital-capacity").line())
                        .must(
                                id -> known.isVolume(id),
                                id -> "the fact '" + id + "' is not a volume",
                                "give that fact 'unit: L', or name another one");
        return fields.value(new Measure.TimedInhalation(fact.toOptional()));
    }
}
