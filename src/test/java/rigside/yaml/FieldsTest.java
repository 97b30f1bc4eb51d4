package rigside.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** The typed reader, used as a reader of files uses it. */
class FieldsTest {
    private enum Colour {
        RED,
        DARK_BLUE
    }

    private record Pane(String name, Colour colour, List<Double> edges) {}

    private static Value<Pane> pane(Fields fields) {
        Value<String> name = fields.required("name").line();
        Value<Colour> colour = fields.optional("colour").oneOf(Colour.class);
        Value<List<Double>> edges = fields.required("edges").list(1, "write one", Entry::number);
        return fields.make(() -> new Pane(name.get(), colour.orElse(Colour.RED), edges.get()));
    }

    @Test
    void aCleanFileGivesWhatItDescribes() {
        assertEquals(
                new Document<>(
                        Optional.of(new Pane("door", Colour.DARK_BLUE, List.of(1.5, 2.0))),
                        List.of()),
                Document.read(
                        "x", "name: door\ncolour: dark-blue\nedges: [1.5, 2]\n", FieldsTest::pane));
    }

    @Test
    void everyProblemIsToldAtItsPlaceAndNothingIsMade() {
        assertEquals(
                List.of(
                        "x:1:1: missing key 'name' in the file\n    add a line 'name: ...'",
                        "x:1:9: unknown word 'bleu' for 'colour'\n    known here: red, dark-blue",
                        "x:2:12: item 2 of 'edges' must be a number, not 'two'\n"
                                + "    write digits and at most one point, such as 12 or 0.5",
                        "x:3:1: unknown key 'lead' in the file\n"
                                + "    known here: name, colour, edges"),
                told("colour: bleu\nedges: [1, two]\nlead: 3\n", FieldsTest::pane));
    }

    @Test
    void aMisspeltKeyIsOneProblemNotTwo() {
        assertEquals(
                List.of("x:1:1: unknown key 'nmae' in the file\n    did you mean 'name'?"),
                told("nmae: door\nedges: [1]\n", FieldsTest::pane));
    }

    @Test
    void aValueAloneMayStandForAListOfOne() {
        Function<Fields, Value<List<String>>> reader =
                fields -> {
                    Value<List<String>> feeds = fields.required("feeds").oneOrList(Entry::line);
                    return fields.make(feeds::get);
                };
        assertEquals(Optional.of(List.of("a")), Document.read("x", "feeds: a", reader).value());
        assertEquals(
                Optional.of(List.of("a", "b")),
                Document.read("x", "feeds: [a, b]", reader).value());
        assertEquals(
                List.of(
                        "x:1:8: 'feeds' has 0 of at least 1 items\n"
                                + "    write at least one, or leave the key out"),
                told("feeds: []", reader));
    }

    @Test
    void keysThatExcludeEachOtherAreChosenFrom() {
        Function<Fields, Value<String>> reader =
                fields -> {
                    Optional<String> way = fields.oneKeyOf(List.of("length", "width"));
                    return fields.make(way::get);
                };
        assertEquals(Optional.of("width"), Document.read("x", "width: 3", reader).value());
        assertEquals(
                List.of("x:2:1: 'length' and 'width' exclude each other\n    keep one of them"),
                told("length: 1\nwidth: 2", reader));
        assertEquals(
                List.of("x:1:1: unknown key 'widht' in the file\n    did you mean 'width'?"),
                told("widht: 2", reader));
        assertEquals(
                List.of(
                        "x:1:1: missing key in the file, one of length, width\n"
                                + "    add a line with one of them"),
                told("{}", reader));
    }

    @Test
    void aDecidingKeyThatIsMissingSilencesTheOthers() {
        Function<Fields, Value<Integer>> reader =
                fields ->
                        fields.deciding("kind", "pane")
                                .oneOf(Map.of("pane", 1))
                                .then(kind -> fields.make(() -> kind));
        assertEquals(
                List.of("x:1:1: missing key 'kind' in the file\n    add a line 'kind: pane'"),
                told("name: 1", reader));
        assertEquals(
                List.of("x:1:1: unknown key 'kin' in the file\n    did you mean 'kind'?"),
                told("kin: pane", reader));
    }

    @Test
    void aKeyRefusedHereIsNotOfferedHere() {
        Function<Fields, Value<Integer>> reader =
                fields -> {
                    fields.optional("width");
                    fields.refused("height", "is for doors", "delete it");
                    return fields.make(() -> 1);
                };
        assertEquals(
                List.of(
                        "x:1:1: 'height' is for doors\n    delete it",
                        "x:2:1: unknown key 'weight' in the file\n    known here: width"),
                told("height: 1\nweight: 2\n", reader));
    }

    @Test
    void yesAndNoAreWordsAndSoAreTheTwoOfJson() {
        Function<Fields, Value<List<Boolean>>> reader =
                fields -> {
                    Value<List<Boolean>> all = fields.required("a").list(1, "", Entry::yesOrNo);
                    return fields.make(all::get);
                };
        assertEquals(
                Optional.of(List.of(true, false, true, false)),
                Document.read("x", "a: [yes, no, true, \"false\"]", reader).value());
        assertEquals(
                List.of("x:1:5: item 1 of 'a' must be yes or no, not 'on'\n    write yes or no"),
                told("a: [on]", reader));
    }

    private static <T> List<String> told(String text, Function<Fields, Value<T>> reader) {
        return Document.read("x", text, reader).problems().stream().map(Problem::toString).toList();
    }
}
