package rigside.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

/**
 * The schema of rig files, asked by a validator that is not ours (com.networknt), against their
 * reader: what it refuses the reader refuses.
 */
class RigSchemaTest {
    private static final String TEXT =
            EditorSchema.of(
                    "test",
                    RigElements.DECLARES_INSTRUMENTS,
                    RigElements.INSTRUMENTS,
                    RigElements.SIMULATED);
    private static final JsonSchema SCHEMA =
            JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(TEXT, InputFormat.JSON);
    private static final ObjectMapper YAML = new YAMLMapper();
    private static final ObjectMapper JSON = new ObjectMapper();

    /** What is tried in the place of every value of every file. */
    private static final List<String> PROBES =
            List.of(
                    "\"7\"",
                    "7",
                    "0",
                    "-1",
                    "7.5",
                    "100000",
                    "true",
                    "null",
                    "\"\"",
                    "\"yes\"",
                    "\"two words\"",
                    "\"90 s\"",
                    "\"-5 Pa\"",
                    "\"4000 /cm3\"",
                    "\"10 %\"",
                    "\"6 /min\"",
                    "\"Pa\"",
                    "\"/cm3\"",
                    "\"comma\"",
                    "\"(?<value>.*)\"",
                    "\"mask-concentration\"",
                    "[]",
                    "[1]",
                    "{}",
                    "{\"id\": \"x\"}");

    static List<String> files() throws IOException {
        List<String> files = new ArrayList<>();
        try (Stream<Path> demo = Files.list(Path.of("demo"))) {
            for (Path each : demo.sorted().toList()) {
                if (each.toString().endsWith(".rig.yaml")) {
                    files.add(Files.readString(each));
                }
            }
        }
        files.add(Examples.file(RigElements.SIMULATED));
        files.add(Examples.file(RigElements.INSTRUMENTS));
        return files;
    }

    @ParameterizedTest
    @MethodSource("files")
    void whatIsSoundIsValid(String file) throws IOException {
        assertEquals(List.of(), problems(file));
        assertEquals("", refusals(YAML.readTree(file)));
    }

    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    unknown key          | rate: 10 /s         | rat: 10 /s
                    unknown key deep     | ambient: A          | ambience: A
                    missing key          | unit: Pa            | about: x
                    two origins          | baud: 9600          | file: x
                    no origin            | serial: /dev/ttyUSB0| rate: 1 /s
                    two ways to read     | scale: -1           | column: 1
                    of another origin    | scale: -1           | time-unit: s
                    separator of none    | scale: -1           | separator: comma
                    wrong word           | decimal: comma      | decimal: dot
                    unit of another kind | unit: Pa            | unit: degC
                    rate without a unit  | rate: 10 /s         | rate: 10
                    time without a unit  | settling: 3 s       | settling: 3
                    text for a number    | from: -1000         | from: low
                    fraction of a baud   | baud: 9600          | baud: 9600.5
                    newer format         | format: 1           | format: 2
                    """)
    void oneMistakeIsRefusedByBoth(String name, String replaced, String by) throws IOException {
        String file = Examples.file(RigElements.INSTRUMENTS).replaceFirst(replaced, by);
        if (name.equals("no origin")) {
            file = file.replaceFirst("    baud: 9600\n", "").replaceFirst("    rate: 10 /s\n", "");
        }
        assertFalse(problems(file).isEmpty(), "the reader takes it");
        assertFalse(refusals(YAML.readTree(file)).isEmpty(), "the schema takes it");
    }

    @Test
    void whatItRefusesTheReaderRefuses() throws IOException {
        int refused = 0;
        for (String file : files()) {
            JsonNode tree = YAML.readTree(file);
            for (Place place : places(tree)) {
                refused += disagreements(tree, place);
            }
        }
        int all = refused;
        assertTrue(all > 1500, () -> "only " + all + " probes were refused");
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
                        problems(JSON.writeValueAsString(tree)).isEmpty(),
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

    private static List<?> problems(String file) {
        return RigFile.read("test", file, Path.of("")).problems();
    }

    private static String refusals(JsonNode tree) {
        StringBuilder all = new StringBuilder();
        SCHEMA.validate(tree).forEach(each -> all.append(each).append('\n'));
        return all.toString();
    }
}
