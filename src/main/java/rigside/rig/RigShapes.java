package rigside.rig;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rigside.measure.Dimension;
import rigside.measure.Unit;
import rigside.yaml.Amount;
import rigside.yaml.Shape;

/**
 * How values of a rig file look on their line, as patterns: never stricter than the readers ({@link
 * Amounts}, {@link Spread}).
 */
final class RigShapes {
    private static final String SPACES = "[ \\u00A0\\u202F]*";

    static final Shape LINE = new Shape.Line("text on one line", "", "");

    static final Shape PATH = new Shape.Line("a path, from the folder of this file", "", "");

    static final Shape PATTERN = new Shape.Line("a regular expression", "", "");

    static final Shape PERCENT =
            new Shape.Line("a percentage", Amount.NOT_NEGATIVE + SPACES + "%", "20 %");

    static final Shape PERCENT_OR_AMOUNT =
            new Shape.Line(
                    "a percentage, or an amount in the unit of the median",
                    Amount.NOT_NEGATIVE + "(" + SPACES + "(%|" + units(Unit.values()) + "))?",
                    "5 %");

    static final Shape RATE =
            new Shape.Line(
                    "a rate, so often a second or a minute",
                    Amount.NOT_NEGATIVE + SPACES + "(/s|/min)",
                    "10 /s");

    /** An amount whose dimension another key tells. */
    static final Shape AMOUNT =
            new Shape.Line(
                    "an amount with its unit",
                    Amount.NUMBER + "(" + SPACES + "(" + units(Unit.values()) + "))?",
                    "110 Pa");

    private RigShapes() {}

    /** An amount above 0 of one dimension. */
    static Shape above0(Dimension dimension, String example) {
        return new Shape.Line(
                dimension.words() + " above 0",
                Amount.NOT_NEGATIVE + SPACES + "(" + units(of(dimension)) + ")",
                example);
    }

    /** A unit of some dimensions, standing alone. */
    static Shape unit(Dimension... dimensions) {
        Map<String, String> meanings = new LinkedHashMap<>();
        for (Dimension dimension : dimensions) {
            Unit.symbols(dimension).forEach(symbol -> meanings.put(symbol, dimension.words()));
        }
        return new Shape.Word(meanings);
    }

    private static Unit[] of(Dimension dimension) {
        return Stream.of(Unit.values())
                .filter(unit -> unit.dimension() == dimension)
                .toArray(Unit[]::new);
    }

    private static String units(Unit... units) {
        return Stream.of(units)
                .map(Unit::symbol)
                .filter(symbol -> !symbol.isEmpty())
                .collect(Collectors.joining("|"));
    }
}
