package rigside.protocol;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rigside.measure.Dimension;
import rigside.measure.Unit;
import rigside.protocol.Measure.Compared.Scale;
import rigside.yaml.Amount;
import rigside.yaml.Value;
import rigside.yaml.Words;

/**
 * What is too small to matter, and how far single values spread, as a file words them.
 *
 * @param low the band's lower end on the analysis scale, below 0
 * @param high the band's upper end on the analysis scale, above 0
 */
record BandText(double low, double high) {
    private static final Pattern TIMES = Pattern.compile("(.+?)\\s*times");
    private static final String RATIOS = "write '10 %', '2 times' or '0.8 to 1.25'";
    private static final double LARGEST_FACTOR = 1000;

    /** A ratio's band in natural logs, a difference's in {@code unit}. */
    static Value<BandText> read(Value<String> text, Scale scale, Unit unit) {
        return text.then(
                written -> {
                    if (RangeText.isRange(written)) {
                        return scale == Scale.RATIO ? ratios(text) : differences(text, unit);
                    }
                    return (scale == Scale.RATIO
                                    ? factor(text, RATIOS).map(Math::log)
                                    : size(text, unit))
                            .map(half -> new BandText(-half, half));
                });
    }

    /**
     * The expected standard deviation of one value on the analysis scale. For a ratio it is ln(1 +
     * p) from a percentage p and ln(f) from {@code f times}, a geometric standard deviation; for a
     * difference it is in {@code unit}.
     */
    static Value<Double> spread(Value<String> text, Scale scale, Unit unit) {
        return scale == Scale.RATIO
                ? factor(text, "write '5 %' or '1.5 times'").map(Math::log)
                : size(text, unit);
    }

    /** A factor above 1: {@code 10 %} is 1.1, {@code 2 times} is 2. */
    private static Value<Double> factor(Value<String> text, String help) {
        return text.then(
                        written -> {
                            Matcher times = TIMES.matcher(written);
                            if (times.matches()) {
                                return Amount.read(text.map(same -> times.group(1)), "2 times")
                                        .must(
                                                amount -> amount.unit().isEmpty(),
                                                amount ->
                                                        is(text)
                                                                + QuantityText.given(amount)
                                                                + ", must be a factor",
                                                help)
                                        .map(Amount::number);
                            }
                            return Amount.read(text, "10 %")
                                    .must(
                                            amount -> amount.unit().equals("%"),
                                            amount ->
                                                    is(text)
                                                            + QuantityText.given(amount)
                                                            + ", must be a percentage or a factor",
                                            help)
                                    .map(amount -> 1 + amount.number() / 100);
                        })
                .must(
                        factor -> factor > 1 && factor <= LARGEST_FACTOR,
                        factor ->
                                is(text)
                                        + (factor > 1
                                                ? ", too large"
                                                : ", must be above 0 % or above 1 times"),
                        help);
    }

    private static Value<Double> size(Value<String> text, Unit unit) {
        return QuantityText.quantity(text, unit.dimension())
                .map(difference -> QuantityText.differenceIn(difference, unit))
                .must(
                        size -> size > 0,
                        size -> is(text) + ", must be above 0",
                        "write a difference above 0, such as '"
                                + QuantityText.example(unit.dimension())
                                + "'");
    }

    private static Value<BandText> ratios(Value<String> text) {
        return RangeText.read(text, Dimension.NUMBER, "0.8 to 1.25")
                .must(
                        range -> range.from().unit() == Unit.ONE && range.to().unit() == Unit.ONE,
                        range -> is(text) + ", not two factors",
                        RATIOS)
                .must(
                        range -> range.from().value() > 0,
                        range -> is(text) + ", its limits must be above 0",
                        RATIOS)
                .map(
                        range ->
                                new BandText(
                                        Math.log(range.from().value()),
                                        Math.log(range.to().value())))
                .must(
                        BandText::isAroundZero,
                        band -> is(text) + ", the band must hold 1, which is no change",
                        "write the smaller factor first, such as '0.8 to 1.25'");
    }

    private static Value<BandText> differences(Value<String> text, Unit unit) {
        return RangeText.read(text, unit.dimension(), "-10 to 25 " + unit.symbol())
                .map(
                        range ->
                                new BandText(
                                        QuantityText.differenceIn(range.from(), unit),
                                        QuantityText.differenceIn(range.to(), unit)))
                .must(
                        BandText::isAroundZero,
                        band -> is(text) + ", the band must hold 0, which is no change",
                        "write the negative limit first, such as '-10 to 25 "
                                + unit.symbol()
                                + "'");
    }

    private static String is(Value<String> text) {
        return text.label() + " is " + Words.quoted(text.get());
    }

    private boolean isAroundZero() {
        return low < 0 && high > 0;
    }
}
