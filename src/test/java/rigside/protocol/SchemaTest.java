package rigside.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.guide.EditorSchema;
import rigside.guide.Examples;
import rigside.yaml.Element;

/**
 * The schema that editors get, asked by a validator that is not ours (com.networknt), against the
 * reader: what one calls right the other one does, and what the schema refuses the reader refuses.
 */
class SchemaTest {
    private static final String TEXT = EditorSchema.of("test", ProtocolElements.FILE);
    private static final JsonSchema SCHEMA =
            JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(TEXT, InputFormat.JSON);
    private static final ObjectMapper YAML = new YAMLMapper();
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String BASE = "rigside/protocol/base.yaml";

    /** What is tried in the place of every value of every example. */
    private static final List<String> PROBES =
            List.of(
                    "\"7\"",
                    "7",
                    "0",
                    "-1",
                    "7.5",
                    "51",
                    "100000",
                    "true",
                    "null",
                    "\"\"",
                    "\"no\"",
                    "\"yes\"",
                    "\"words and more\"",
                    "\"90 s\"",
                    "\"-5 s\"",
                    "\"250 Pa\"",
                    "\"0.02 /cm3\"",
                    "\"0.1 L/min\"",
                    "\"2 g\"",
                    "\"10 %\"",
                    "\"2 times\"",
                    "\"0.8 to 1.25\"",
                    "\"15 to 55 s\"",
                    "\"-10 to 25 Pa\"",
                    "\"Pa\"",
                    "\"none\"",
                    "\"plain\"",
                    "\"ratio\"",
                    "\"until-session-ends\"",
                    "\"with space\"",
                    "[]",
                    "[\"a\", \"b\"]",
                    "[1]",
                    "{}",
                    "{\"id\": \"x\"}");

    static Stream<String> files() throws IOException {
        try (Stream<Path> ours = Files.list(Path.of("protocols"));
                Stream<Path> invented = Files.list(Path.of("demo"))) {
            return Stream.concat(ours, invented)
                    .map(Path::toString)
                    .filter(name -> name.endsWith(".yaml") && !name.endsWith(".rig.yaml"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    static List<Element> elements() {
        return ProtocolElements.all();
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyShippedProtocolIsValid(String name) throws IOException {
        assertEquals("", refusals(YAML.readTree(Path.of(name).toFile())));
    }

    @ParameterizedTest
    @MethodSource("elements")
    void everyExampleIsValid(Element element) throws IOException {
        assertEquals("", refusals(YAML.readTree(Examples.file(element))));
    }

    @Test
    void theFileWithEveryKindIsValid() throws IOException {
        assertEquals("", refusals(YAML.readTree(Shipped.text(BASE))));
    }

    @Test
    void itIsAlwaysTheSame() {
        assertEquals(TEXT, EditorSchema.of("test", ProtocolElements.FILE));
    }

    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    unknown key        | title: Base of    | titel: x
                    unknown key deep   | lead-in: 3 s      | lead-im: 3 s
                    key of another kind| zero: breaths     | detection-limit: 1 /cm3
                    missing key        | trials: 5         | say: x
                    one answer too many| words: 20         | words: 20, unit: g
                    no answer          | words: 20         | may-be-empty: yes
                    wrong word         | order: balanced   | order: by-turns
                    wrong kind         | step: countdown   | step: count-down
                    wrong measure      | kind: pressure-trace | kind: pressure
                    not in a donning   | step: note        | step: trials
                    list for a text    | title: Purge      | title: [a, b]
                    text for a number  | fewest: 3         | fewest: three
                    fraction           | fewest: 3         | fewest: 3.5
                    too many           | most: 8           | most: 51
                    number in words    | trial-takes: 75 s | trial-takes: seventy s
                    no unit            | rest: 61 s        | rest: 61
                    wrong dimension    | rest: 61 s        | rest: 61 Pa
                    wrong pressure     | target: 100 Pa    | target: 100 s
                    wrong counter unit | unit: /cm3        | unit: Pa
                    negative           | target: 100 Pa    | target: -100 Pa
                    share without %    | confidence: 95 %  | confidence: 0.95
                    window             | mask: 15 to 45 s  | mask: 15 - 45 s
                    range in Pa        | mask: 15 to 45 s  | mask: 15 to 45 Pa
                    yes or no          | counted: no       | counted: never
                    alone              | tolerance: 20 %   | starts: by-key
                    meaningful in s    | meaningful: 25 Pa | meaningful: 25 s
                    id with capitals   | id: with-disc     | id: With Disc
                    newer format       | format: 1         | format: 2
                    """)
    void oneMistakeIsRefusedByBoth(String name, String replaced, String by) throws IOException {
        String file = Shipped.text(BASE).replaceFirst("(?m)" + replaced + ".*$", by);
        if (replaced.startsWith("words")) {
            file = file.replace("words: 20, unit: g", "words: 20\n    unit: g");
        }
        assertFalse(Shipped.problems(file).isEmpty(), "the reader takes it");
        assertFalse(refusals(YAML.readTree(file)).isEmpty(), "the schema takes it");
    }

    @Test
    void ofTheTableOfMistakesItRefusesNoneThatTheReaderTakesAndMany() {
        int refused = 0;
        int parsed = 0;
        for (Mistake mistake : Mistake.all()) {
            String file = mistake.file();
            try {
                JsonNode tree = YAML.readTree(file);
                parsed++;
                boolean refuses = !refusals(tree).isEmpty();
                refused += refuses ? 1 : 0;
                assertTrue(!refuses || !Shipped.problems(file).isEmpty(), mistake::name);
            } catch (JsonProcessingException e) {
                assertFalse(Shipped.problems(file).isEmpty(), mistake::name);
            }
        }
        int share = 100 * refused / parsed;
        assertTrue(share > 40, () -> share + " % are refused");
    }

    /** Every value of every example, and of the base file, replaced by every probe in turn. */
    @Test
    void whatItRefusesTheReaderRefuses() throws IOException {
        List<String> files = new ArrayList<>();
        files.add(Shipped.text(BASE));
        elements().stream().map(Examples::file).distinct().forEach(files::add);
        int refused = 0;
        for (String file : files) {
            JsonNode tree = YAML.readTree(file);
            for (Place place : places(tree)) {
                refused += disagreements(tree, place);
            }
        }
        int all = refused;
        assertTrue(all > 5000, () -> "only " + all + " probes were refused");
    }

    /** Where a value stands: its holder, and its key or position there. */
    private record Place(JsonNode holder, String key, int position) {
        JsonNode get() {
            return key.isEmpty() ? holder.get(position) : holder.get(key);
        }

        void put(JsonNode value) {
            if (key.isEmpty()) {
                ((ArrayNode) holder).set(position, value);
            } else {
                ((ObjectNode) holder).set(key, value);
            }
        }
    }

    private static int disagreements(JsonNode tree, Place place) throws IOException {
        int refused = 0;
        JsonNode before = place.get();
        for (String probe : PROBES) {
            place.put(JSON.readTree(probe));
            String refusals = refusals(tree);
            if (!refusals.isEmpty()) {
                refused++;
                assertFalse(
                        Shipped.problems(JSON.writeValueAsString(tree)).isEmpty(),
                        () -> probe + " for " + place.key() + " is refused: " + refusals);
            }
        }
        place.put(before);
        return refused;
    }

    private static List<Place> places(JsonNode tree) {
        List<Place> places = new ArrayList<>();
        tree.fieldNames().forEachRemaining(key -> places.add(new Place(tree, key, -1)));
        for (int i = 0; tree.isArray() && i < tree.size(); i++) {
            places.add(new Place(tree, "", i));
        }
        List.copyOf(places).forEach(place -> places.addAll(places(place.get())));
        return places;
    }

    private static String refusals(JsonNode tree) {
        StringBuilder all = new StringBuilder();
        SCHEMA.validate(tree).forEach(each -> all.append(each).append('\n'));
        return all.toString();
    }
}
