package rigside.protocol;

import rigside.measure.Dimension;
import rigside.measure.Numbers;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.yaml.Amount;
import rigside.yaml.Entry;
import rigside.yaml.Value;
import rigside.yaml.Words;

/** Quantities as a protocol writes them: a number and its unit in one text, {@code 90 s}. */
final class QuantityText {
    /** No single wait, trial or exercise at a bench lasts longer; a larger one is a slip. */
    private static final double LONGEST_SECONDS = 24 * 3600;

    private QuantityText() {}

    /** A quantity of one dimension. */
    static Value<Quantity> quantity(Value<String> text, Dimension dimension) {
        return Amount.read(text, example(dimension))
                .then(
                        amount ->
                                UnitText.after(text, amount.unit(), dimension)
                                        .map(unit -> new Quantity(amount.number(), unit)));
    }

    /** A duration above 0 and at most a day, in seconds. */
    static Value<Double> seconds(Entry entry) {
        Value<String> text = entry.line();
        return quantity(text, Dimension.TIME)
                .must(
                        time -> time.value() > 0,
                        time -> text.label() + " is '" + time + "', must be longer than 0 s",
                        "write how long it takes, such as '90 s'")
                .map(Quantity::si)
                .must(
                        seconds -> seconds <= LONGEST_SECONDS,
                        seconds -> text.label() + " is longer than a day",
                        "write how long it takes, such as '90 s'");
    }

    /** A percentage, as a share: {@code 20 %} is 0.2. */
    static Value<Double> share(Value<String> text, String example) {
        return Amount.read(text, example)
                .then(
                        amount ->
                                Unit.of(amount.unit()).isEmpty()
                                        ? UnitText.after(text, amount.unit(), Dimension.NUMBER)
                                                .map(unit -> amount)
                                        : text.map(same -> amount))
                .must(
                        amount -> amount.unit().equals(Unit.PERCENT.symbol()),
                        amount ->
                                text.label()
                                        + " is "
                                        + Words.quoted(text.get())
                                        + given(amount)
                                        + ", must be a percentage",
                        "write it with its sign, such as '" + example + "'")
                .map(percentage -> Numbers.ofPercent(percentage.number()));
    }

    /** ", a time": what an amount is, as a part of a message; empty where its unit is unknown. */
    static String given(Amount amount) {
        return Unit.of(amount.unit()).map(unit -> ", " + unit.words()).orElse("");
    }

    /**
     * A difference, in {@code unit}: two temperatures that differ by 2 degC differ by 2 K, so a
     * unit's zero does not enter.
     */
    static double differenceIn(Quantity difference, Unit unit) {
        double si = difference.si() - difference.unit().toSi(0);
        return difference.unit() == unit ? difference.value() : unit.fromSi(si + unit.toSi(0));
    }

    /** What a quantity of a dimension could look like, for messages. */
    static String example(Dimension dimension) {
        return switch (dimension) {
            case TIME -> "90 s";
            case PRESSURE -> "250 Pa";
            case CONCENTRATION -> "0.02 /cm3";
            case NUMBER -> "10 %";
            default -> "5 " + Unit.symbols(dimension).get(0);
        };
    }

    /** A number as shown in messages. */
    static String plain(double number) {
        return Numbers.plain(number);
    }
}
