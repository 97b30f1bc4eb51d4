package rigside.protocol;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rigside.measure.Ambient;
import rigside.measure.Dimension;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.yaml.Entry;
import rigside.yaml.Fields;
import rigside.yaml.Value;

/**
 * Reads a step of gates. Unless the file says otherwise concentrations are typed in /cm3, the room
 * is read for 10 s (common practice, no source) and filtered air for {@value
 * Ambient#ZERO_CHECK_SECONDS} s.
 */
final class GatesReader {
    static final double AMBIENT_SECONDS = 10;
    static final String AMBIENT_HELP =
            "make particles away from the mask, let them spread, and read again";
    static final String ZERO_HELP =
            "let it draw filtered air a little longer, look at the filter and the joints of the"
                    + " tube, and read again";

    private static final Map<String, Gate.Kind> KINDS =
            Map.of("zero", Gate.Kind.ZERO, "ambient", Gate.Kind.AMBIENT);

    private GatesReader() {}

    static Value<Step> read(Fields fields, Item.Common common, Where where, Known known) {
        if (where.isIn(Part.AFTER)) {
            fields.wrong(
                    "the step 'gates' stands after the last donning",
                    "move it under 'before' or 'donning': a gate stands before a test");
        }
        Value<Unit> unit = UnitText.unit(fields.optional("unit"), Dimension.CONCENTRATION);
        Unit shown = unit.orElse(Unit.PER_CUBIC_CENTIMETRE);
        Value<List<Gate>> gates =
                fields.required("gates")
                        .list(
                                1,
                                "write at least one gate, such as '- gate: ambient'",
                                item -> item.fields(keys -> gate(keys, shown, known)));
        return fields.make(() -> new Step.Gates(common.head(), shown, gates.get()));
    }

    private static Value<Gate> gate(Fields fields, Unit unit, Known known) {
        return fields.deciding("gate", "ambient")
                .oneOf(KINDS)
                .then(
                        kind -> {
                            fields.is(GateElements.of(kind));
                            return kind == Gate.Kind.ZERO
                                    ? zero(fields, unit, known)
                                    : ambient(fields, unit);
                        });
    }

    private static Value<Gate> ambient(Fields fields, Unit unit) {
        fields.refused(
                "at-most", "is for the gate 'zero'", "write 'at-least' for the air of the room");
        Value<Quantity> least =
                limit(fields.required("at-least"))
                        .must(
                                quantity -> quantity.value() > 0,
                                quantity -> "'at-least' is '" + quantity + "', must be above 0",
                                "write what the room has to hold, such as '1000 /cm3'");
        Value<Double> seconds = QuantityText.seconds(fields.optional("for"));
        Value<String> help = fields.optional("do").text();
        return fields.make(
                () ->
                        new Gate(
                                Gate.Kind.AMBIENT,
                                least.get().in(unit),
                                seconds.orElse(AMBIENT_SECONDS),
                                help.orElse(AMBIENT_HELP)));
    }

    /**
     * Without a limit nothing may be counted, or, where the volume drawn is known, the one particle
     * of clean-space practice.
     */
    private static Value<Gate> zero(Fields fields, Unit unit, Known known) {
        fields.refused("at-least", "is for the gate 'ambient'", "write 'at-most' for filtered air");
        Value<Quantity> most =
                limit(fields.optional("at-most"))
                        .must(
                                quantity -> quantity.value() >= 0,
                                quantity -> "'at-most' is '" + quantity + "', must not be below 0",
                                "write what filtered air may show, such as '0.01 /cm3'");
        Value<Double> length = QuantityText.seconds(fields.optional("for"));
        Value<String> help = fields.optional("do").text();
        double seconds = length.orElse(Ambient.ZERO_CHECK_SECONDS);
        return fields.make(
                () ->
                        new Gate(
                                Gate.Kind.ZERO,
                                most.orElse(allowed(known.flow(), seconds)).in(unit),
                                seconds,
                                help.orElse(ZERO_HELP)));
    }

    private static Quantity allowed(OptionalDouble flow, double seconds) {
        return new Quantity(
                flow.isPresent() ? Ambient.mostForZero(seconds, flow.getAsDouble()) : 0,
                Unit.PER_CUBIC_METRE);
    }

    private static Value<Quantity> limit(Entry entry) {
        return QuantityText.quantity(entry.line(), Dimension.CONCENTRATION);
    }
}
