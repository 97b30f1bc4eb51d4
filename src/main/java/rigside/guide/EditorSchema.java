package rigside.guide;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
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
        ObjectNode schema = NODES.objectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", title);
        schema.put("$ref", SchemaShapes.place(file));
        ObjectNode parts = schema.putObject("$defs");
        file.withAllInIt().forEach(element -> parts.set(element.name(), group(element)));
        return written(schema);
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
        if (!element.exactlyOneOf().isEmpty()) {
            ArrayNode ways = group.putArray("oneOf");
            element.exactlyOneOf().forEach(key -> ways.addObject().putArray("required").add(key));
        }
        group.put("additionalProperties", false);
        return group;
    }

    private static ObjectNode property(Key key) {
        ObjectNode property = NODES.objectNode();
        property.put("description", KeyWords.whole(key));
        property.setAll(key.shape().match(SchemaShapes.CASES));
        return property;
    }

    private static String written(ObjectNode schema) {
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
