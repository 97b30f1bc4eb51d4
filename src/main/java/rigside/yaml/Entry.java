package rigside.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What stands behind a key or in a list, not yet typed; perhaps nothing. */
public final class Entry {
    /** The longest text taken, in characters. */
    public static final int LONGEST_TEXT = 4000;

    /** The longest single line taken, in characters: titles, ids, words. */
    public static final int LONGEST_LINE = 120;

    private final Spot spot;
    private final Tree tree;
    private final boolean given;
    private final Readings readings;

    private Entry(Spot spot, Tree tree, boolean given, Readings readings) {
        this.spot = spot;
        this.tree = tree;
        this.given = given;
        this.readings = readings;
    }

    /**
     * An entry that is there.
     *
     * @param readings where it is noted how it is read
     */
    static Entry of(Spot spot, Tree tree, Readings readings) {
        return new Entry(spot, tree, true, readings);
    }

    /** An entry that is not there; every reading of it is absent. */
    static Entry missing(Spot spot, Readings readings) {
        return new Entry(spot, new Tree.Broken(spot.line(), spot.column()), false, readings);
    }

    /** Whether a list was written here. */
    public boolean isList() {
        return tree instanceof Tree.Items;
    }

    /** How many items a list has; 0 of anything else. */
    public int items() {
        return tree instanceof Tree.Items list ? list.items().size() : 0;
    }

    /** Whether anything was written here, right or wrong. */
    public boolean isGiven() {
        return given;
    }

    /**
     * A text of one line, at most {@value #LONGEST_LINE} characters. Spaces that keep words on one
     * line, as some keyboards put them before a unit, are spaces here.
     */
    public Value<String> line() {
        readings.note(
                "a line",
                shape ->
                        shape instanceof Shape.Line
                                || shape instanceof Shape.Word
                                || shape instanceof Shape.Itself);
        return oneLine();
    }

    private Value<String> oneLine() {
        return scalar("text")
                .map(scalar -> scalar.text().replaceAll("[\u00A0\u202F]", " "))
                .then(text -> Texts.oneLine(Value.of(spot, text.strip())));
    }

    /** A text that may run over several lines, at most {@value #LONGEST_TEXT} characters. */
    public Value<String> text() {
        readings.note("text", Shape.Text.class::isInstance);
        return scalar("text")
                .map(Tree.Scalar::text)
                .then(text -> Texts.anyLines(Value.of(spot, text.strip())));
    }

    /** A finite number, written without quotes. */
    public Value<Double> number() {
        return number(amount -> Optional.empty());
    }

    /**
     * A finite number in a unit that is said elsewhere.
     *
     * @param bare what to write instead of a number with a unit of its own; empty for the usual
     *     advice
     */
    public Value<Double> number(Function<Amount, Optional<String>> bare) {
        readings.note("a number", Shape.Numeric.class::isInstance);
        return anyNumber(bare);
    }

    private Value<Double> anyNumber(Function<Amount, Optional<String>> bare) {
        return scalar("a number")
                .must(
                        Tree.Scalar::plain,
                        scalar ->
                                spot.label() + " must be a number, not the text " + scalar.words(),
                        "write it without quotes")
                .then(scalar -> Numeral.read(Value.of(spot, scalar.text()), bare));
    }

    /** A whole number within limits, both included. */
    public Value<Integer> whole(int least, int most) {
        readings.note(
                "a whole number from " + least + " to " + most,
                shape ->
                        shape instanceof Shape.Whole whole
                                && whole.least() >= least
                                && whole.most() <= most);
        return anyNumber(amount -> Optional.empty())
                .must(
                        number -> number == Math.rint(number),
                        number -> spot.label() + " must be a whole number, not '" + written() + "'",
                        "write it without a fraction")
                .must(
                        number -> number >= least && number <= most,
                        number ->
                                spot.label()
                                        + " is "
                                        + written()
                                        + (number < least ? ", too low" : ", too high"),
                        "write a number from " + least + " to " + most)
                .map(Double::intValue);
    }

    /** Yes or no; JSON's own words for them, true and false, are read as well. */
    public Value<Boolean> yesOrNo() {
        readings.note("yes or no", Shape.YesOrNo.class::isInstance);
        return oneLine()
                .then(
                        word ->
                                switch (word) {
                                    case "yes", "true" -> Value.of(spot, true);
                                    case "no", "false" -> Value.of(spot, false);
                                    default ->
                                            this.<Boolean>wrong(
                                                    spot.label()
                                                            + " must be yes or no, not "
                                                            + Words.quoted(word),
                                                    "write yes or no");
                                });
    }

    /** One of a few words, each standing for something. */
    public <T> Value<T> oneOf(Map<String, T> meanings) {
        readings.note(
                "one of " + meanings.keySet(),
                shape ->
                        shape instanceof Shape.Itself
                                || (shape instanceof Shape.Word word
                                        && word.meanings().keySet().equals(meanings.keySet())));
        return oneLine()
                .then(
                        word ->
                                meanings.containsKey(word)
                                        ? Value.of(spot, meanings.get(word))
                                        : this.<T>wrong(
                                                "unknown word "
                                                        + Words.quoted(word)
                                                        + " for "
                                                        + spot.label(),
                                                Words.suggestion(word, meanings.keySet())));
    }

    /** One constant of an enum, written in lower case with hyphens. */
    public <E extends Enum<E>> Value<E> oneOf(Class<E> type) {
        Map<String, E> words = new LinkedHashMap<>();
        for (E constant : type.getEnumConstants()) {
            words.put(Shape.Word.word(constant), constant);
        }
        return oneOf(words);
    }

    /**
     * A list, each item read by {@code reader}; absent when any item is.
     *
     * @param least how many items there must be
     * @param help what to write when there are fewer
     */
    public <T> Value<List<T>> list(int least, String help, Function<Entry, Value<T>> reader) {
        Readings each = new Readings();
        readings.note(
                "a list of at least " + least,
                shape ->
                        shape instanceof Shape.Items list
                                && list.least() == least
                                && each.fit(list.item()));
        return items(least, help, reader, each);
    }

    private <T> Value<List<T>> items(
            int least, String help, Function<Entry, Value<T>> reader, Readings each) {
        if (tree instanceof Tree.Broken) {
            return Value.absent(spot);
        }
        if (!(tree instanceof Tree.Items items)) {
            return wrong(
                    spot.label() + " must be a list, not " + tree.words(),
                    "begin each item on a line of its own with '- '");
        }
        int size = items.items().size();
        List<T> read = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            Tree item = items.items().get(i);
            String name = "item " + (i + 1) + " of " + spot.label();
            reader.apply(of(spot.at(item, name), item, each)).toOptional().ifPresent(read::add);
        }
        if (size < least) {
            return wrong(spot.label() + " has " + size + " of at least " + least + " items", help);
        }
        return read.size() == size ? Value.of(spot, List.copyOf(read)) : Value.absent(spot);
    }

    /** One item standing alone, or a list of at least one. */
    public <T> Value<List<T>> oneOrList(Function<Entry, Value<T>> reader) {
        Readings each = new Readings();
        readings.note(
                "one or a list",
                shape -> shape instanceof Shape.OneOrItems list && each.fit(list.item()));
        return tree instanceof Tree.Scalar
                ? reader.apply(new Entry(spot, tree, given, each)).map(List::of)
                : items(1, "write at least one, or leave the key out", reader, each);
    }

    /** A group of keys; {@code reader} ends with {@link Fields#make}. */
    public <T> Value<T> fields(Function<Fields, Value<T>> reader) {
        if (tree instanceof Tree.Mapping mapping) {
            Fields fields = new Fields(spot, mapping);
            readings.note("a group of keys", fields::isDeclaredAs);
            return reader.apply(fields);
        }
        readings.note(
                "a group of keys",
                shape -> shape instanceof Shape.Group || shape instanceof Shape.OneOf);
        return tree instanceof Tree.Broken
                ? Value.absent(spot)
                : wrong(
                        spot.label()
                                + " must be a group of 'key: value' lines, not "
                                + tree.words(),
                        "write each key on a line of its own, followed by ': ' and its value");
    }

    /** Notes a problem here, see {@link Value#wrong}. */
    public <R> Value<R> wrong(String what, String help) {
        return Value.<R>absent(spot).wrong(what, help);
    }

    private Value<Tree.Scalar> scalar(String wanted) {
        if (tree instanceof Tree.Broken) {
            return Value.absent(spot);
        }
        if (!(tree instanceof Tree.Scalar scalar)) {
            return wrong(
                    spot.label() + " must be " + wanted + ", not " + tree.words(),
                    tree instanceof Tree.Mapping
                            ? "put a text that holds ': ' in quotes"
                            : "write "
                                    + wanted
                                    + " without brackets or dashes, or in quotes a text that has"
                                    + " them");
        }
        return scalar.isNothing()
                ? wrong(
                        spot.label() + " has no value",
                        "write "
                                + wanted
                                + " after the colon, or leave the key out; # begins a comment")
                : Value.of(spot, scalar);
    }

    private String written() {
        return tree instanceof Tree.Scalar scalar ? scalar.text() : "";
    }
}
