package rigside.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A reader that reads otherwise than its element declares is found out the first time it reads. */
class AgreementTest {
    private static final Shape LINE = new Shape.Line("text", "", "");
    private static final Element HINGE =
            Element.of("hinge", "A hinge.", Key.required("metal", LINE, "What it is made of."));
    private static final Element PANE =
            Element.of(
                    "pane",
                    "A pane.",
                    Key.required("name", LINE, "Its name."),
                    Key.optional("edges", new Shape.Items(Shape.Numeric.ANY, 1), "", "Lengths."),
                    Key.optional("panes", new Shape.Whole(1, 9), "1", "How many."),
                    Key.optional("hinge", new Shape.Group(HINGE), "none", "Its hinge."));

    private static void asDeclared(Fields fields) {
        fields.required("name").line();
        fields.optional("edges").list(1, "write one", Entry::number);
        fields.optional("panes").whole(1, 9);
        fields.optional("hinge").fields(AgreementTest::hinge);
    }

    private static Value<String> hinge(Fields fields) {
        fields.is(HINGE);
        Value<String> metal = fields.required("metal").line();
        return fields.make(metal::get);
    }

    /** A way to read that differs from {@link #PANE}, and what is said of it. */
    private record Slip(String said, Consumer<Fields> reader) {
        @Override
        public String toString() {
            return said;
        }
    }

    static List<Slip> slips() {
        return List.of(
                new Slip(
                        "'lead' of pane is read but not declared",
                        fields -> {
                            asDeclared(fields);
                            fields.optional("lead").line();
                        }),
                new Slip(
                        "'name' of pane is declared but never read",
                        fields -> fields.optional("edges")),
                new Slip(
                        "'name' of pane is declared as required but may be left out",
                        fields -> fields.optional("name").line()),
                new Slip(
                        "'panes' of pane is required but declared as one that may be left out",
                        fields -> {
                            asDeclared(fields);
                            fields.required("panes");
                        }),
                new Slip(
                        "'panes' of pane is read as a whole number from 2 to 9 but declared as"
                                + " Whole[least=1, most=9]",
                        fields -> {
                            asDeclared(fields);
                            fields.optional("panes").whole(2, 9);
                        }),
                new Slip(
                        "'edges' of pane is read as a list of at least 1 but declared as"
                                + " Items[item=Numeric[least=-Infinity, isLeastTaken=false,"
                                + " most=Infinity], least=1]",
                        fields -> {
                            asDeclared(fields);
                            fields.optional("edges").list(1, "write one", Entry::line);
                        }),
                new Slip(
                        "'hinge' of pane is read as a group of keys but declared as "
                                + new Shape.Group(HINGE),
                        fields -> {
                            asDeclared(fields);
                            fields.optional("hinge")
                                    .fields(
                                            nested -> {
                                                Value<String> metal =
                                                        nested.required("metal").line();
                                                return nested.make(metal::get);
                                            });
                        }),
                new Slip(
                        "pane declares other keys that exclude each other than are read",
                        fields -> {
                            asDeclared(fields);
                            fields.oneKeyOf(List.of("panes", "edges"));
                        }));
    }

    private static Document<String> read(String text, Consumer<Fields> reader) {
        return Document.read(
                "x",
                text,
                fields -> {
                    fields.is(PANE);
                    reader.accept(fields);
                    return fields.make(() -> "read");
                });
    }

    @Test
    void whatIsReadAsDeclaredIsRead() {
        String text = "name: door\nedges: [1, 2]\npanes: 2\nhinge: {metal: brass}\n";
        assertEquals(List.of(), read(text, AgreementTest::asDeclared).problems());
    }

    @Test
    void aMistakeInTheFileIsNoFaultOfTheReader() {
        for (String text :
                List.of("name: [x]\n", "nmae: x\n", "edges: 1\nhinge: 3\n", "hinge: {}\n", "[]")) {
            assertTrue(!read(text, AgreementTest::asDeclared).problems().isEmpty(), text);
        }
    }

    @ParameterizedTest
    @MethodSource("slips")
    void anyDifferenceIsAFault(Slip slip) {
        String text = "name: door\nedges: [1, 2]\npanes: 2\nhinge: {metal: brass}\n";
        IllegalStateException fault =
                assertThrows(IllegalStateException.class, () -> read(text, slip.reader()));
        assertEquals(slip.said(), fault.getMessage());
    }

    @Test
    void theWordThatDecidesMustBeReadAmongAllOfItsFamily() {
        Element cat = Element.of("cat", "", Key.required("kind", new Shape.Itself("cat"), ""));
        Element dog = Element.of("dog", "", Key.required("kind", new Shape.Itself("dog"), ""));
        Shape pets = new Shape.OneOf("pet", "kind", List.of(cat), List.of(dog));
        Element house = Element.of("house", "", Key.required("pet", pets, ""));
        assertEquals(List.of(), house(house, Map.of("cat", cat, "dog", dog)).problems());
        assertThrows(IllegalStateException.class, () -> house(house, Map.of("cat", cat)));
    }

    private static Document<String> house(Element house, Map<String, Element> kinds) {
        return Document.read(
                "x",
                "pet: {kind: cat}\n",
                fields -> {
                    fields.is(house);
                    fields.required("pet")
                            .fields(
                                    keys ->
                                            keys.deciding("kind", "cat")
                                                    .oneOf(kinds)
                                                    .then(
                                                            kind -> {
                                                                keys.is(kind);
                                                                return keys.make(kind::name);
                                                            }));
                    return fields.make(() -> "read");
                });
    }
}
