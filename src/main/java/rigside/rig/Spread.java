package rigside.rig;

import rigside.measure.Dimension;
import rigside.measure.Unit;
import rigside.rig.Wearer.Scatter;
import rigside.yaml.Amount;
import rigside.yaml.Entry;
import rigside.yaml.Value;
import rigside.yaml.Words;

/**
 * How far values spread, as a rig file words it.
 *
 * @param size the standard deviation, at least 0: of the natural log, or in SI
 * @param scatter which of them
 */
record Spread(double size, Scatter scatter) {
    /** A larger one is a slip: values beyond tenfold either way, one in three. */
    private static final double MOST_PERCENT = 900;

    /** In percent, as a standard deviation on the natural-log scale: 20 % is ln 1.2. */
    static Value<Double> percent(Entry entry) {
        Value<String> text = entry.line();
        return percent(text, Amount.read(text, "20 %"));
    }

    private static Value<Double> percent(Value<String> text, Value<Amount> read) {
        return read.must(
                        amount ->
                                amount.unit().equals("%")
                                        && amount.number() >= 0
                                        && amount.number() <= MOST_PERCENT,
                        amount ->
                                amount.unit().equals("%")
                                        ? text.label()
                                                + " is "
                                                + Words.quoted(text.get())
                                                + ", must be from 0 to 900 %"
                                        : Amounts.is(text, amount) + ", must be a percentage",
                        "write a percentage from 0 to 900 %, such as '20 %'")
                .map(amount -> Math.log1p(amount.number() / 100));
    }

    /** In percent as above, or as an amount of the dimension: {@code 5 Pa}. */
    static Value<Spread> read(Entry entry, Dimension dimension) {
        Value<String> text = entry.line();
        Value<Amount> read = Amount.read(text, "5 %");
        return read.then(
                amount ->
                        amount.unit().equals("%")
                                ? percent(text, read)
                                        .map(size -> new Spread(size, Scatter.BY_FACTORS))
                                : read.must(
                                                given ->
                                                        given.number() >= 0
                                                                && Unit.of(given.unit())
                                                                        .filter(
                                                                                unit ->
                                                                                        unit
                                                                                                        .dimension()
                                                                                                == dimension)
                                                                        .isPresent(),
                                                given ->
                                                        Amounts.is(text, given)
                                                                + ", must be a percentage or "
                                                                + dimension.words()
                                                                + " from 0",
                                                "write a percentage, such as '5 %', or "
                                                        + dimension.words()
                                                        + " from 0")
                                        .map(Spread::amount));
    }

    /** A difference: a unit's zero does not enter. */
    private static Spread amount(Amount amount) {
        Unit unit = Unit.of(amount.unit()).orElseThrow();
        return new Spread(unit.toSi(amount.number()) - unit.toSi(0), Scatter.BY_AMOUNTS);
    }
}
