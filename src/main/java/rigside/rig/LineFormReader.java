package rigside.rig;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import rigside.yaml.Entry;
import rigside.yaml.Fields;
import rigside.yaml.Value;

/** Reads how a line of an instrument is to be read. */
final class LineFormReader {
    static final List<String> KINDS = List.of("column", "pattern");

    /** Each by its word: whether a fraction begins with a comma. */
    static final Map<String, Boolean> DECIMAL = decimal();

    private LineFormReader() {}

    private static Map<String, Boolean> decimal() {
        Map<String, Boolean> words = new LinkedHashMap<>();
        words.put("point", false);
        words.put("comma", true);
        return words;
    }

    /**
     * The keys of a feed about its lines.
     *
     * @param switched whether it is a switched counter
     */
    static Value<LineForm> read(Fields fields, boolean switched) {
        Optional<String> kind = fields.oneKeyOf(KINDS);
        boolean columns = kind.filter("column"::equals).isPresent();
        Value<Separator> separator = fields.optional("separator").oneOf(Separator.words());
        Value<Boolean> decimal = fields.optional("decimal").oneOf(DECIMAL);
        Value<Pattern> passOver = pattern(fields.optional("pass-over"));
        Value<Sides> sides = sides(fields, switched, columns);
        if (kind.filter("pattern"::equals).isPresent()) {
            fields.refused("separator", "goes with 'column' only", "delete the line");
        }
        decimal.must(
                comma -> !(comma && columns && separator.orElse(Separator.NONE) == Separator.COMMA),
                comma -> "a decimal comma cannot be told from a comma between columns",
                "name another separator: semicolon, tab or space");
        Value<LineForm.Shape> shape =
                columns
                        ? columns(fields, separator, sides)
                        : shape(pattern(fields.optional("pattern")), sides);
        return shape.map(
                each ->
                        new LineForm(
                                each,
                                decimal.orElse(false),
                                passOver.toOptional(),
                                sides.map(Sides::words).orElse(Map.of())));
    }

    private static Value<LineForm.Shape> columns(
            Fields fields, Value<Separator> separator, Value<Sides> sides) {
        boolean separated = fields.optional("separator").isGiven();
        return fields.optional("column")
                .line()
                .must(
                        text -> !text.matches("0+"),
                        text -> "'column' is 0",
                        "columns are counted from 1")
                .must(
                        text -> separated || text.equals("1"),
                        text -> "a line of several columns needs its separator",
                        "add a line 'separator: comma', or semicolon, tab, space")
                .map(
                        text ->
                                new LineForm.Columns(
                                        separator.orElse(Separator.NONE),
                                        Column.of(text),
                                        sides.toOptional().flatMap(Sides::column)));
    }

    private static Value<LineForm.Shape> shape(Value<Pattern> pattern, Value<Sides> sides) {
        return pattern.must(
                        each -> hasGroup(each, "value"),
                        each -> "'pattern' has no group named value",
                        "write (?<value>...) around the number")
                .must(
                        each -> !sides.isPresent() || hasGroup(each, "side"),
                        each -> "'pattern' has no group named side",
                        "write (?<side>...) around the word that 'side' explains")
                .map(LineForm.Named::new);
    }

    /** Asked of a pattern that matches nothing too, since only a match knows its groups. */
    private static boolean hasGroup(Pattern pattern, String name) {
        try {
            Matcher matcher = Pattern.compile("(?:" + pattern.pattern() + "\n)|").matcher("");
            return matcher.find() && matcher.start(name) >= -1;
        } catch (IllegalArgumentException none) {
            return false;
        }
    }

    private static Value<Pattern> pattern(Entry entry) {
        Value<String> text = entry.line();
        return text.then(
                written -> {
                    try {
                        Pattern pattern = Pattern.compile(written);
                        return text.map(same -> pattern);
                    } catch (PatternSyntaxException wrong) {
                        String at =
                                wrong.getIndex() < 0
                                        ? ""
                                        : " (at its character " + (wrong.getIndex() + 1) + ")";
                        return text.wrong(
                                text.label() + " is no regular expression" + at,
                                "a sign that stands for itself is written with a backslash before"
                                        + " it");
                    }
                });
    }

    /** How lines say what the tube is on. */
    private record Sides(Optional<Column> column, Map<String, Signal> words) {}

    private static Value<Sides> sides(Fields fields, boolean switched, boolean columns) {
        if (!switched) {
            fields.refused("side", "is for a switched counter only", "delete the line");
        }
        return fields.optional("side")
                .fields(
                        side -> {
                            side.is(RigElements.SIDE);
                            if (!columns) {
                                side.refused(
                                        "column",
                                        "goes with 'column' only",
                                        "write (?<side>...) instead");
                            }
                            Value<String> column =
                                    (columns ? side.required("column") : side.optional("column"))
                                            .line();
                            Value<String> ambient = side.required("ambient").line();
                            Value<String> mask =
                                    side.required("mask")
                                            .line()
                                            .must(
                                                    word -> !word.equals(ambient.orElse("")),
                                                    word -> "both sides have the same word",
                                                    "write what the line says on each side");
                            return side.make(
                                    () ->
                                            new Sides(
                                                    column.toOptional().map(Column::of),
                                                    Map.of(
                                                            ambient.get(),
                                                            Signal.AMBIENT,
                                                            mask.get(),
                                                            Signal.MASK)));
                        });
    }
}
