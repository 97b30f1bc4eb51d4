package rigside.protocol;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rigside.measure.Dimension;
import rigside.measure.Unit;
import rigside.yaml.Entry;
import rigside.yaml.Value;
import rigside.yaml.Words;

/** Units as a protocol writes them, standing alone or after a number. */
final class UnitText {
    /** Spellings people use that no edit distance finds. */
    private static final Map<String, Unit> MEANT =
            Map.ofEntries(
                    Map.entry("sec", Unit.SECOND),
                    Map.entry("secs", Unit.SECOND),
                    Map.entry("second", Unit.SECOND),
                    Map.entry("seconds", Unit.SECOND),
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
                    Map.entry("p/cc", Unit.PER_CUBIC_CENTIMETRE),
                    Map.entry("p/cm3", Unit.PER_CUBIC_CENTIMETRE),
                    Map.entry("particles/cc", Unit.PER_CUBIC_CENTIMETRE),
                    Map.entry("particles/cm3", Unit.PER_CUBIC_CENTIMETRE),
                    Map.entry("cm-3", Unit.PER_CUBIC_CENTIMETRE),
                    Map.entry("c", Unit.DEGREE_CELSIUS),
                    Map.entry("\u00b0c", Unit.DEGREE_CELSIUS),
                    Map.entry("lpm", Unit.LITRE_PER_MINUTE),
                    Map.entry("litre", Unit.LITRE),
                    Map.entry("litres", Unit.LITRE));

    private UnitText() {}

    /** A unit standing alone; {@code none} is the unit of a plain number. */
    static Value<Unit> unit(Entry entry) {
        return unit(entry, allSymbols());
    }

    private static Value<Unit> unit(Entry entry, List<String> candidates) {
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
                                                                cure(symbol, candidates))));
    }

    /** A unit standing alone that must measure one dimension. */
    static Value<Unit> unit(Entry entry, Dimension dimension) {
        Value<Unit> unit = unit(entry, Unit.symbols(dimension));
        return unit.must(
                known -> known.dimension() == dimension,
                known ->
                        unit.label()
                                + " is '"
                                + known.symbol()
                                + "', "
                                + known.words()
                                + ", must be "
                                + dimension.words(),
                "write one of " + String.join(", ", Unit.symbols(dimension)));
    }

    /** The unit found after a number in {@code text}; empty for a bare number. */
    static Value<Unit> after(Value<String> text, String symbol, Dimension dimension) {
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
                                        + unit.words()
                                        + ", must be "
                                        + dimension.words(),
                        symbol.isEmpty()
                                ? "write its unit too, such as '"
                                        + QuantityText.example(dimension)
                                        + "'"
                                : "write for example '" + QuantityText.example(dimension) + "'");
    }

    private static String cure(String symbol, List<String> candidates) {
        String plain = symbol.replace('\u00b3', '3').replace('\u2082', '2');
        String lower = plain.toLowerCase(Locale.ROOT);
        return Optional.ofNullable(MEANT.get(lower))
                .map(Unit::symbol)
                .filter(candidates::contains)
                .or(
                        () ->
                                candidates.stream()
                                        .filter(known -> known.equalsIgnoreCase(plain))
                                        .findFirst())
                .map(near -> "did you mean '" + near + "'?")
                .orElse("known units: " + String.join(", ", candidates));
    }

    private static List<String> allSymbols() {
        return Arrays.stream(Dimension.values())
                .flatMap(dimension -> Unit.symbols(dimension).stream())
                .toList();
    }
}
