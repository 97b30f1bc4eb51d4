package rigside.rig;

import java.util.LinkedHashMap;
import java.util.Map;
import rigside.measure.Dimension;
import rigside.yaml.Element;
import rigside.yaml.Key;
import rigside.yaml.Shape;

/** One instrument: where its lines come from, how a line is read, what its numbers mean. */
final class FeedElement {
    static final Element FEED =
            Element.of(
                            "feed",
                            "One instrument: where its lines come from, how a line is read, and"
                                    + " what its numbers mean.",
                            Key.required(
                                    "id",
                                    new Shape.Line(
                                            "a short word of lower-case letters, digits and"
                                                    + " hyphens",
                                            FeedReader.ID.pattern(),
                                            "gauge"),
                                    "By which it is told."),
                            Key.required("quantity", quantities(), "What it measures."),
                            from("serial", "A serial port, such as /dev/ttyUSB0."),
                            from(
                                    "file",
                                    "A file that another program appends to, followed from its"
                                            + " end."),
                            from("pipe", "A named pipe."),
                            from("replay", "A recorded trace, given again with its timing."),
                            serial("baud", new Shape.Whole(50, OriginReader.FASTEST_BAUD), "9600")
                                    .with("serial"),
                            serial("bits", new Shape.Whole(5, 8), "8").with("serial"),
                            serial("parity", Shape.Word.of(Origin.Parity.class, all -> ""), "none")
                                    .with("serial"),
                            serial("stop-bits", new Shape.Whole(1, 2), "1").with("serial"),
                            Key.optional(
                                            "time-column",
                                            RigShapes.LINE,
                                            "a line begins with its time and a tab, as the raw readings of a session do",
                                            "The column of a trace that holds its times.")
                                    .with("replay"),
                            Key.optional(
                                            "time-unit",
                                            RigShapes.unit(Dimension.TIME),
                                            "s",
                                            "The unit of these times.")
                                    .with("replay"),
                            Key.sometimes(
                                    "column",
                                    RigShapes.LINE,
                                    "unless there is a 'pattern'",
                                    "The number of the column that holds the value, from 1, or its"
                                            + " name in a header line; 1 without a separator is the"
                                            + " whole line."),
                            Key.sometimes(
                                    "pattern",
                                    RigShapes.PATTERN,
                                    "unless there is a 'column'",
                                    "A line that holds a value, with (?<value>...) around its"
                                            + " number."),
                            Key.optional(
                                            "separator",
                                            words(Separator.words()),
                                            "a line is one column",
                                            "What stands between columns.")
                                    .with("column"),
                            Key.optional(
                                    "decimal",
                                    words(LineFormReader.DECIMAL),
                                    "point",
                                    "What stands before the fraction of a number."),
                            Key.optional(
                                    "pass-over",
                                    RigShapes.PATTERN,
                                    "every line is to hold a value",
                                    "Lines that are no readings, such as '^#'."),
                            Key.optional(
                                    "side",
                                    new Shape.Group(RigElements.SIDE),
                                    "the tube is taken to be on what the screen asks for",
                                    "How lines of a switched counter say what its tube is on."),
                            Key.required(
                                    "unit",
                                    RigShapes.unit(Dimension.PRESSURE, Dimension.CONCENTRATION),
                                    "The unit of the value, once scaled."),
                            number(
                                    "scale",
                                    "1",
                                    "What a number is multiplied by; -1 turns a sign."),
                            number("offset", "0", "What is added after that."),
                            number(
                                    "from",
                                    "no limit, for concentrations 0",
                                    "The lowest value the instrument can mean, in the unit."),
                            number(
                                    "to",
                                    "no limit",
                                    "The highest one; what lies outside is no reading."),
                            Key.optional(
                                    "rate",
                                    RigShapes.RATE,
                                    "no rate is expected",
                                    "How many readings to expect; below half of it the feed"
                                            + " stutters."),
                            Key.optional(
                                    "lost-after",
                                    RigShapes.above0(Dimension.TIME, "2 s"),
                                    "2 s, or as long as five readings take",
                                    "A silence after which it counts as lost."),
                            Key.optional(
                                    "settling",
                                    RigShapes.above0(Dimension.TIME, "3 s"),
                                    "nothing",
                                    "Of a switched counter what is left out after each switch of"
                                            + " its tube."))
                    .withOneOf(OriginReader.KINDS)
                    .withOneOf(LineFormReader.KINDS);

    private FeedElement() {}

    private static Key from(String name, String meaning) {
        return Key.optional(
                name, name.equals("serial") ? RigShapes.LINE : RigShapes.PATH, "", meaning);
    }

    private static Key serial(String name, Shape shape, String usual) {
        return Key.optional(name, shape, usual, "As the instrument's manual says.");
    }

    private static Key number(String name, String otherwise, String meaning) {
        return Key.optional(name, Shape.Numeric.ANY, otherwise, meaning);
    }

    private static Shape words(Map<String, ?> known) {
        Map<String, String> meanings = new LinkedHashMap<>();
        known.keySet().forEach(word -> meanings.put(word, ""));
        return new Shape.Word(meanings);
    }

    private static Shape quantities() {
        Map<String, String> meanings = new LinkedHashMap<>();
        Sampled.words().forEach((word, sampled) -> meanings.put(word, meaning(sampled)));
        return new Shape.Word(meanings);
    }

    private static String meaning(Sampled sampled) {
        return switch (sampled) {
            case MASK_PRESSURE ->
                    "the pressure in the mask against the room, below 0 while breathing in";
            case AMBIENT -> "particles in the room";
            case MASK -> "particles in the mask";
            case SWITCHED ->
                    "particles, by one counter whose tube is switched between room and mask";
        };
    }
}
