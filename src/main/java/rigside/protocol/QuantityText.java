package rigside.protocol;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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

    /** Spellings people use that no edit distance finds. */
    private static final Map<String, Unit> MEANT =
            Map.ofEntries(
                    Map.entry("sec", Unit.SECOND),
                    Map.entry("secs", Unit.SECOND),
                    Map.entry("second", Unit.SECOND),
                    Map.entry("seconds", Unit.SECOND),
                    Map.entry("m", Unit.MINUTE),
                    Map.entry("mins", Unit.MINUTE),
                    Map.entry("minute", Unit.MINUTE),
                    Map.entry("minutes", Unit.MINUTE),
                    Map.entry("hour", Unit.HOUR),
                    Map.entry("hours", Unit.HOUR),
                    Map.entry("percent", Unit.PERCENT),
                    Map.entry("per cent", Unit.PERCENT),
                    Map.entry("pascal", Unit.PASCAL),
                    Map.entry("inh20", Unit.INCH_OF_WATER),
                    Map.entry("inwc", Unit.INCH_OF_WATER),
                    Map.entry("mmh20", Unit.MILLIMETRE_OF_WATER),
                    Map.entry("cmh20", Unit.CENTIMETRE_OF_WATER),
                    Map.entry("/cc", Unit.PER_CUBIC_CENTIMETRE),
                    Map.entry("/ccm", Unit.PER_CUBIC_CENTIMETRE),
                    Map.entry("1/cm3", Unit.PER_CUBIC_CENTIMETRE),
                    Map.entry("#/cm3", Unit.PER_CUBIC_CENTIMETRE),
                    Map.entry("cm-3", Unit.PER_CUBIC_CENTIMETRE),
                    Map.entry("c", Unit.DEGREE_CELSIUS),
                    Map.entry("\u00b0c", Unit.DEGREE_CELSIUS),
                    Map.entry("lpm", Unit.LITRE_PER_MINUTE),
                    Map.entry("litre", Unit.LITRE),
                    Map.entry("litres", Unit.LITRE));

    private QuantityText() {}

    /** A quantity of one dimension. */
    static Value<Quantity> quantity(Value<String> text, Dimension dimension) {
        return Amount.read(text, example(dimension))
                .then(
                        amount ->
                                unit(text, amount.unit(), dimension)
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
        return quantity(text, Dimension.NUMBER)
                .must(
                        number -> number.unit() == Unit.PERCENT,
                        number -> text.label() + " is '" + number + "', must be a percentage",
                        "write it with its sign, such as '" + example + "'")
                .map(percentage -> percentage.value() / 100);
    }

    /**
     * A difference, in {@code unit}: two temperatures that differ by 2 degC differ by 2 K, so a
     * unit's zero does not enter.
     */
    static double differenceIn(Quantity difference, Unit unit) {
        double si = difference.si() - difference.unit().toSi(0);
        return difference.unit() == unit ? difference.value() : unit.fromSi(si + unit.toSi(0));
    }

    /** A unit standing alone; {@code none} is the unit of a plain number. */
    static Value<Unit> unit(Entry entry) {
        Value<String> text = entry.line();
        return text.then(
                symbol ->
                        symbol.equals("none")
                                ? text.map(none -> Unit.ONE)
                                : Unit.of(symbol)
                                        .map(unit -> text.map(same -> unit))
                                        .orElseGet(
                                                () ->
                                                        text.wrong(
                                                                "unknown unit "
                                                                        + Words.quoted(symbol),
                                                                cure(symbol, allSymbols()))));
    }

    /** A unit standing alone that must measure one dimension. */
    static Value<Unit> unit(Entry entry, Dimension dimension) {
        Value<Unit> unit = unit(entry);
        return unit.must(
                known -> known.dimension() == dimension,
                known ->
                        unit.label()
                                + " is '"
                                + known.symbol()
                                + "', "
                                + known.dimension().words()
                                + ", must be "
                                + dimension.words(),
                "write one of " + String.join(", ", Unit.symbols(dimension)));
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

    private static Value<Unit> unit(Value<String> text, String symbol, Dimension dimension) {
        Optional<Unit> known = Unit.of(symbol);
        if (known.isEmpty()) {
            return text.wrong(
                    "unknown unit " + Words.quoted(symbol) + " in " + text.label(),
                    cure(symbol, Unit.symbols(dimension)));
        }
        return text.map(same -> known.get())
                .must(
                        unit -> unit.dimension() == dimension,
                        unit ->
                                text.label()
                                        + " is "
                                        + Words.quoted(text.get())
                                        + ", "
                                        + unit.dimension().words()
                                        + ", must be "
                                        + dimension.words(),
                        symbol.isEmpty()
                                ? "write its unit too, such as '" + example(dimension) + "'"
                                : "write for example '" + example(dimension) + "'");
    }

    private static String cure(String symbol, List<String> candidates) {
        String lower = symbol.toLowerCase(Locale.ROOT);
        return Optional.ofNullable(MEANT.get(lower))
                .map(Unit::symbol)
                .or(
                        () ->
                                candidates.stream()
                                        .filter(known -> known.equalsIgnoreCase(symbol))
                                        .findFirst())
                .map(near -> "did you mean '" + near + "'?")
                .orElse("known units: " + String.join(", ", candidates));
    }

    private static List<String> allSymbols() {
        return java.util.Arrays.stream(Dimension.values())
                .flatMap(dimension -> Unit.symbols(dimension).stream())
                .toList();
    }

    /** A number as shown in messages. */
    static String plain(double number) {
        return Numbers.plain(number);
    }
}
