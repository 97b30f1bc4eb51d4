package rigside.protocol;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rigside.measure.Dimension;
import rigside.measure.Unit;
import rigside.yaml.Amount;
import rigside.yaml.Shape;

/**
 * How values of one line look, as patterns: never stricter than the readers ({@link QuantityText},
 * {@link RangeText}, {@link BandText}, {@link UnitText}, {@link Ids}).
 */
final class Lines {
    private static final String SPACES = "[ \\u00A0\\u202F]*";
    private static final String SPACE = "[ \\u00A0\\u202F]+";

    static final Shape ANY = new Shape.Line("text on one line", "", "");
    static final Shape ID =
            new Shape.Line(
                    "a short word of lower-case letters, digits and hyphens",
                    Ids.SHAPE.pattern(),
                    "with-disc");
    static final Shape TIME = above0(Dimension.TIME);

    /** A stretch of time within something, in seconds from its start. */
    static final Shape WINDOW =
            new Shape.Line(
                    "two times with 'to' between them",
                    range(Amount.NOT_NEGATIVE, Dimension.TIME),
                    "15 to 55 s");

    private Lines() {}

    /** The id of something declared elsewhere in the file. */
    static Shape idOf(String sort) {
        return new Shape.Line("the id of a " + sort, Ids.SHAPE.pattern(), "");
    }

    /** A quantity of one dimension above 0. */
    static Shape above0(Dimension dimension) {
        return new Shape.Line(
                dimension.words() + " above 0",
                amount(Amount.NOT_NEGATIVE, dimension),
                QuantityText.example(dimension));
    }

    /** A quantity of one dimension, not below 0. */
    static Shape notBelow0(Dimension dimension) {
        return new Shape.Line(
                dimension.words(),
                amount(Amount.NOT_NEGATIVE, dimension),
                QuantityText.example(dimension));
    }

    /** A quantity above 0 whose dimension other keys tell. */
    static Shape aboveAny() {
        return new Shape.Line(
                "an amount with its unit, above 0",
                Amount.NOT_NEGATIVE + "(" + SPACES + units(Unit.values()) + ")?",
                "0.1 g");
    }

    static Shape share(String words, String example) {
        return new Shape.Line(words, Amount.NOT_NEGATIVE + SPACES + "%", example);
    }

    /** What would matter, of a measure of one dimension. */
    static Shape meaningful(String differences, Dimension... dimensions) {
        String ratio =
                or(
                        Amount.NOT_NEGATIVE + SPACES + "(%|times)",
                        range(Amount.NOT_NEGATIVE, "", SPACES),
                        or(amounts(Amount.NOT_NEGATIVE, dimensions)),
                        or(ranges(Amount.NUMBER, dimensions)));
        return new Shape.Line(
                "for a ratio '10 %', '2 times' or '0.8 to 1.25'; for a difference " + differences,
                ratio,
                "10 %");
    }

    /** How values spread, of a measure of one dimension. */
    static Shape spread(String differences, Dimension... dimensions) {
        return new Shape.Line(
                "for a ratio '6 %' or '1.5 times'; for a difference " + differences,
                or(
                        Amount.NOT_NEGATIVE + SPACES + "(%|times)",
                        or(amounts(Amount.NOT_NEGATIVE, dimensions))),
                "6 %");
    }

    /** A unit that stands alone. */
    static Shape unit(Dimension... dimensions) {
        Map<String, String> meanings = new LinkedHashMap<>();
        for (Dimension dimension : dimensions) {
            Unit.symbols(dimension).forEach(symbol -> meanings.put(symbol, dimension.words()));
            if (dimension == Dimension.NUMBER) {
                meanings.put("none", dimension.words());
            }
        }
        return new Shape.Word(meanings);
    }

    private static String[] amounts(String number, Dimension... dimensions) {
        return Stream.of(dimensions).map(each -> amount(number, each)).toArray(String[]::new);
    }

    private static String[] ranges(String number, Dimension... dimensions) {
        return Stream.of(dimensions).map(each -> range(number, each)).toArray(String[]::new);
    }

    private static String amount(String number, Dimension dimension) {
        String unit = SPACES + units(dimension);
        return number + (dimension == Dimension.NUMBER ? "(" + unit + ")?" : unit);
    }

    private static String range(String number, Dimension dimension) {
        String unit = SPACES + units(dimension);
        return range(
                number,
                "(" + unit + ")?",
                dimension == Dimension.NUMBER ? "(" + unit + ")?" : unit);
    }

    private static String range(String number, String first, String second) {
        return number + first + SPACE + "to" + SPACE + number + second;
    }

    private static String units(Dimension dimension) {
        return units(
                Arrays.stream(Unit.values())
                        .filter(unit -> unit.dimension() == dimension)
                        .toArray(Unit[]::new));
    }

    private static String units(Unit... units) {
        return Stream.of(units)
                .map(Unit::symbol)
                .filter(symbol -> !symbol.isEmpty())
                .collect(Collectors.joining("|", "(", ")"));
    }

    private static String or(String... patterns) {
        return Stream.of(patterns).collect(Collectors.joining("|", "(", ")"));
    }
}
