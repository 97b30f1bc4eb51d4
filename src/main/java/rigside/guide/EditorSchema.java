package rigside.guide;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import rigside.yaml.Element;
import rigside.yaml.Key;

/**
 * Elements as a JSON Schema (draft 2020-12), for completion and early warnings in editors. What it
 * refuses the reader refuses; the reader refuses more, such as an id that nothing bears.
 */
public final class EditorSchema {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private EditorSchema() {}

    /**
     * The schema of a file, always the same text for the same elements.
     *
     * @param title what files it describes
     * @param file the element a whole file is
     */
    public static String of(String title, Element file) {
        ObjectNode schema = begun(title);
        schema.put("$ref", SchemaShapes.place(file));
        return written(schema, List.of(file));
    }

    /**
     * The schema of a file that is one thing where it holds a key and another where it does not.
     *
     * @param title what files it describes
     * @param key the key that decides
     * @param with the element a whole file with that key is
     * @param without the element one without it is
     */
    public static String of(String title, String key, Element with, Element without) {
        ObjectNode schema = begun(title);
        schema.putObject("if").putArray("required").add(key);
        schema.putObject("then").put("$ref", SchemaShapes.place(with));
        schema.putObject("else").put("$ref", SchemaShapes.place(without));
        return written(schema, List.of(with, without));
    }

    private static ObjectNode begun(String title) {
        ObjectNode schema = NODES.objectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        return schema.put("title", title);
    }

    private static ObjectNode group(Element element) {
        ObjectNode group = NODES.objectNode();
        group.put("type", "object");
        group.put("description", element.about());
        ObjectNode properties = group.putObject("properties");
        ArrayNode required = NODES.arrayNode();
        ObjectNode together = NODES.objectNode();
        for (Key key : element.keys()) {
            properties.set(key.name(), property(key));
            if (key.need() == Key.Need.REQUIRED) {
                required.add(key.name());
            }
            if (!key.with().isEmpty()) {
                ArrayNode others = together.putArray(key.name());
                key.with().forEach(others::add);
            }
        }
        if (!required.isEmpty()) {
            group.set("required", required);
        }
        if (!together.isEmpty()) {
            group.set("dependentRequired", together);
        }
        if (element.exactlyOneOf().size() == 1) {
            group.set("oneOf", ways(element.exactlyOneOf().get(0)));
        } else {
            element.exactlyOneOf()
                    .forEach(keys -> group.withArray("allOf").addObject().set("oneOf", ways(keys)));
        }
        group.put("additionalProperties", false);
        return group;
    }

    private static ArrayNode ways(List<String> keys) {
        ArrayNode ways = NODES.arrayNode();
        keys.forEach(key -> ways.addObject().putArray("required").add(key));
        return ways;
    }

    private static ObjectNode property(Key key) {
        ObjectNode property = NODES.objectNode();
        property.put("description", KeyWords.whole(key));
        property.setAll(key.shape().match(SchemaShapes.CASES));
        return property;
    }

    private static String written(ObjectNode schema, List<Element> files) {
        ObjectNode parts = schema.putObject("$defs");
        files.stream()
                .flatMap(file -> file.withAllInIt().stream())
                .forEach(element -> parts.set(element.name(), group(element)));
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
        try {
            return new ObjectMapper().writer(printer).writeValueAsString(schema) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
