package rigside.rig;

import rigside.measure.BareNumber;
import rigside.measure.Dimension;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.yaml.Amount;
import rigside.yaml.Entry;
import rigside.yaml.Value;
import rigside.yaml.Words;

/** Numbers with their units in rig files. */
final class Amounts {
    private Amounts() {}

    /** An amount of one dimension. */
    static Value<Quantity> read(Entry entry, Dimension dimension, String example) {
        Value<String> text = entry.line();
        String help = "write for example '" + example + "'";
        return Amount.read(text, example).then(amount -> quantity(text, amount, dimension, help));
    }

    /** An amount of whatever its unit is one of. */
    static Value<Quantity> any(Entry entry, String example) {
        Value<String> text = entry.line();
        return Amount.read(text, example)
                .must(
                        amount -> Unit.of(amount.unit()).isPresent(),
                        amount -> "unknown unit " + Words.quoted(amount.unit()),
                        "write for example '" + example + "'")
                .map(amount -> new Quantity(amount.number(), Unit.of(amount.unit()).orElseThrow()));
    }

    /** An amount above 0 of one dimension, in SI. */
    static Value<Double> above0(Entry entry, Dimension dimension, String example) {
        Value<Quantity> amount = read(entry, dimension, example);
        return amount.must(
                        quantity -> quantity.value() > 0,
                        quantity -> amount.label() + " is '" + quantity + "', must be above 0",
                        "write for example '" + example + "'")
                .map(Quantity::si);
    }

    /** A unit of one dimension, standing alone. */
    static Value<Unit> unit(Entry entry, Dimension dimension) {
        Value<String> text = entry.line();
        String known = String.join(", ", Unit.symbols(dimension));
        return text.must(
                        symbol -> Unit.of(symbol).isPresent(),
                        symbol -> "unknown unit " + Words.quoted(symbol),
                        "write one of " + known)
                .map(symbol -> Unit.of(symbol).orElseThrow())
                .must(
                        unit -> unit.dimension() == dimension,
                        unit ->
                                text.label()
                                        + " is '"
                                        + unit.symbol()
                                        + "', "
                                        + unit.words()
                                        + ", must be "
                                        + dimension.words(),
                        "write one of " + known);
    }

    /** How often something happens, a second: {@code 10 /s} or {@code 6 /min}. */
    static Value<Double> perSecond(Entry entry, String example) {
        Value<String> text = entry.line();
        String help = "write for example '" + example + "' or '6 /min'";
        return Amount.read(text, example)
                .must(
                        amount -> amount.unit().equals("/s") || amount.unit().equals("/min"),
                        amount ->
                                is(text, amount) + ", must be a rate, so often a second or minute",
                        help)
                .map(amount -> amount.number() / (amount.unit().equals("/s") ? 1 : 60))
                .must(
                        rate -> rate > 0 && rate <= 10_000,
                        rate ->
                                text.label()
                                        + " is "
                                        + Words.quoted(text.get())
                                        + ", must be above 0, at most 10000 /s",
                        help);
    }

    private static Value<Quantity> quantity(
            Value<String> text, Amount amount, Dimension dimension, String help) {
        return Unit.of(amount.unit())
                .filter(unit -> unit.dimension() == dimension)
                .map(unit -> text.map(same -> new Quantity(amount.number(), unit)))
                .orElseGet(
                        () ->
                                text.wrong(
                                        is(text, amount) + ", must be " + dimension.words(), help));
    }

    /** A number in the unit of its feed, without one of its own. */
    static Value<Double> bare(Entry entry, Value<Unit> unit) {
        return entry.number(
                amount ->
                        unit.toOptional()
                                .flatMap(
                                        known ->
                                                BareNumber.cure(
                                                        amount.number(), amount.unit(), known)));
    }

    /** What was given, and what it is where its unit is known. */
    static String is(Value<String> text, Amount amount) {
        return text.label()
                + " is "
                + Words.quoted(text.get())
                + Unit.of(amount.unit()).map(unit -> ", " + unit.words()).orElse("");
    }
}
