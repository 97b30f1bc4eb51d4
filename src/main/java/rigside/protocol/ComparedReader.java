package rigside.protocol;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.measure.Unit;
import rigside.protocol.Measure.Compared;
import rigside.protocol.Measure.Compared.Matters;
import rigside.protocol.Measure.Compared.Scale;
import rigside.yaml.Entry;
import rigside.yaml.Fields;
import rigside.yaml.Value;

/** Reads how a measure compares conditions: compare, meaningful, matters, decides, spread. */
final class ComparedReader {
    private ComparedReader() {}

    /**
     * Empty when the measure is only recorded.
     *
     * @param fields the keys of the measure
     * @param unit the measure's unit; differences are read in it
     */
    static Value<Optional<Compared>> read(Fields fields, Value<Unit> unit) {
        Entry compare = fields.optional("compare");
        Entry meaningful = fields.optional("meaningful");
        if (!compare.isGiven() && !meaningful.isGiven()) {
            for (String key : List.of("matters", "decides", "expected-spread")) {
                fields.refused(
                        key,
                        "is for a measure that is compared",
                        "add 'compare' and 'meaningful', or delete it");
            }
            return unit.map(same -> Optional.empty());
        }
        Value<Matters> matters = fields.optional("matters").oneOf(Matters.class);
        Value<Boolean> decides = fields.optional("decides").yesOrNo();
        Entry spread = fields.optional("expected-spread");
        if (!compare.isGiven()) {
            return meaningful.wrong(
                    "'meaningful' is given, but not how the measure is compared",
                    "add 'compare: ratio' or 'compare: difference'");
        }
        if (!meaningful.isGiven()) {
            return compare.wrong(
                    "the measure is compared, but nothing says what change would matter",
                    "add 'meaningful', such as '10 %' for a ratio");
        }
        Value<Scale> scale = compare.oneOf(Scale.class);
        Value<String> words = meaningful.line();
        return scale.then(
                kind ->
                        unit.then(
                                shown -> {
                                    Value<BandText> band = BandText.read(words, kind, shown);
                                    Value<Double> expected =
                                            BandText.spread(spread.line(), kind, shown);
                                    return band.map(
                                            limits ->
                                                    Optional.of(
                                                            new Compared(
                                                                    kind,
                                                                    limits.low(),
                                                                    limits.high(),
                                                                    words.get(),
                                                                    matters.orElse(Matters.EITHER),
                                                                    decides.orElse(true),
                                                                    number(expected))));
                                }));
    }

    private static OptionalDouble number(Value<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }
}
