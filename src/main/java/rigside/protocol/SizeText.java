package rigside.protocol;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rigside.measure.Unit;
import rigside.protocol.Measure.Compared.Scale;
import rigside.yaml.Amount;
import rigside.yaml.Document;
import rigside.yaml.Value;

/** Sizes of a measure, worded as in a protocol, outside a protocol. */
public final class SizeText {
    /** Nothing changes. */
    public static final String NONE = "none";

    private static final Pattern TIMES = Pattern.compile("(.+?)\\s*times");
    private static final double LARGEST_FACTOR = 1000;
    private static final String RATIOS = "write '15 %', '-15 %', '2 times', '0.5 times' or 'none'";

    private SizeText() {}

    /**
     * A change: {@code 15 %} is 15 % more, {@code -15 %} is 15 % less, {@code 0.5 times} half as
     * much, {@code 25 Pa} so much more, {@code none} no change. Of a ratio its natural log, of a
     * difference in the measure's unit.
     */
    public static Document<Double> change(String text, Measure measure) {
        return read(
                "change",
                text,
                value -> {
                    if (value.orElse("").equals(NONE)) {
                        return value.map(none -> 0.0);
                    }
                    return measure.scale() == Scale.RATIO
                            ? factor(value)
                            : difference(value, measure.unit());
                });
    }

    /**
     * A standard deviation of values, as {@code expected-spread} words it. Of a ratio that of its
     * natural log, of a difference in the measure's unit.
     */
    public static Document<Double> spread(String text, Measure measure) {
        return read(
                "spread", text, value -> BandText.spread(value, measure.scale(), measure.unit()));
    }

    private interface Reader {
        Value<Double> of(Value<String> text);
    }

    /** As the value of a key, so that it is read and complained about as in a file. */
    private static Document<Double> read(String key, String text, Reader reader) {
        String quoted = "'" + text.strip().replace("'", "''") + "'";
        return Document.read(
                key,
                key + ": " + quoted + "\n",
                fields -> {
                    Value<Double> size = reader.of(fields.required(key).line());
                    return fields.make(size::get);
                });
    }

    private static Value<Double> factor(Value<String> text) {
        return text.then(
                        written -> {
                            Matcher times = TIMES.matcher(written);
                            return times.matches()
                                    ? Amount.read(text.map(same -> times.group(1)), "2 times")
                                            .must(
                                                    amount -> amount.unit().isEmpty(),
                                                    amount -> is(text) + ", must be a factor",
                                                    RATIOS)
                                            .map(Amount::number)
                                    : Amount.read(text, "15 %")
                                            .must(
                                                    amount -> amount.unit().equals("%"),
                                                    amount ->
                                                            is(text)
                                                                    + ", must be a percentage or a"
                                                                    + " factor",
                                                    RATIOS)
                                            .map(amount -> 1 + amount.number() / 100);
                        })
                .must(
                        factor -> factor >= 1 / LARGEST_FACTOR && factor <= LARGEST_FACTOR,
                        factor -> is(text) + (factor > 1 ? ", too large" : ", too small"),
                        RATIOS)
                .map(Math::log);
    }

    private static Value<Double> difference(Value<String> text, Unit unit) {
        return QuantityText.quantity(text, unit.dimension())
                .map(difference -> QuantityText.differenceIn(difference, unit));
    }

    private static String is(Value<String> text) {
        return text.label() + " is '" + text.get() + "'";
    }
}
