package rigside.guide;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import rigside.yaml.Element;
import rigside.yaml.Shape;

/**
 * Shapes as JSON Schema. What YAML takes for a number or a boolean is text to the reader where text
 * is asked for, so those types are let through there.
 */
final class SchemaShapes implements Shape.Cases<ObjectNode> {
    static final SchemaShapes CASES = new SchemaShapes();

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final String SPACES = "[ \\u00A0\\u202F]*";
    private static final String NOT_BLANK = "\\S";

    private SchemaShapes() {}

    /** Where the schema of an element stands. */
    static String place(Element element) {
        return "#/$defs/" + element.name();
    }

    @Override
    public ObjectNode line(Shape.Line shape) {
        if (shape.pattern().isEmpty()) {
            return anyText();
        }
        ObjectNode line = NODES.objectNode();
        ArrayNode types = NODES.arrayNode().add("string");
        if ("7".matches(shape.pattern())) {
            types.add("number");
        }
        if ("true".matches(shape.pattern())) {
            types.add("boolean");
        }
        line.set("type", types);
        line.put("pattern", "^" + SPACES + "(" + shape.pattern() + ")" + SPACES + "$");
        if (!shape.example().isEmpty()) {
            line.putArray("examples").add(shape.example());
        }
        return line;
    }

    @Override
    public ObjectNode text(Shape.Text shape) {
        return anyText();
    }

    private static ObjectNode anyText() {
        ObjectNode text = NODES.objectNode();
        text.putArray("type").add("string").add("number").add("boolean");
        return text.put("pattern", NOT_BLANK);
    }

    @Override
    public ObjectNode numeric(Shape.Numeric shape) {
        ObjectNode number = NODES.objectNode().put("type", "number");
        if (Double.isFinite(shape.least())) {
            put(number, shape.isLeastTaken() ? "minimum" : "exclusiveMinimum", shape.least());
        }
        if (Double.isFinite(shape.most())) {
            put(number, "maximum", shape.most());
        }
        return number;
    }

    private static void put(ObjectNode node, String limit, double number) {
        if (number == Math.rint(number)) {
            node.put(limit, (long) number);
        } else {
            node.put(limit, number);
        }
    }

    @Override
    public ObjectNode whole(Shape.Whole shape) {
        return NODES.objectNode()
                .put("type", "integer")
                .put("minimum", shape.least())
                .put("maximum", shape.most());
    }

    @Override
    public ObjectNode yesOrNo(Shape.YesOrNo shape) {
        ObjectNode either = NODES.objectNode();
        either.putArray("enum").add("yes").add("no").add("true").add("false").add(true).add(false);
        return either;
    }

    @Override
    public ObjectNode word(Shape.Word shape) {
        return oneOf(shape.meanings().keySet().stream().toList());
    }

    @Override
    public ObjectNode itself(Shape.Itself shape) {
        return NODES.objectNode().put("const", shape.word());
    }

    @Override
    public ObjectNode items(Shape.Items shape) {
        ObjectNode list = NODES.objectNode().put("type", "array").put("minItems", shape.least());
        list.set("items", shape.item().match(this));
        return list;
    }

    @Override
    public ObjectNode oneOrItems(Shape.OneOrItems shape) {
        ObjectNode either = NODES.objectNode();
        either.putArray("anyOf")
                .add(shape.item().match(this))
                .add(items(new Shape.Items(shape.item(), 1)));
        return either;
    }

    @Override
    public ObjectNode group(Shape.Group shape) {
        return NODES.objectNode().put("$ref", place(shape.element()));
    }

    @Override
    public ObjectNode oneOf(Shape.OneOf shape) {
        ObjectNode family = NODES.objectNode().put("type", "object");
        family.putArray("required").add(shape.key());
        List<String> words = shape.elements().stream().map(shape::word).toList();
        family.putObject("properties").set(shape.key(), oneOf(words));
        ArrayNode all = family.putArray("allOf");
        for (Element element : shape.elements()) {
            ObjectNode one = all.addObject();
            ObjectNode given = one.putObject("if");
            given.putObject("properties").putObject(shape.key()).put("const", shape.word(element));
            given.putArray("required").add(shape.key());
            one.putObject("then").put("$ref", place(element));
        }
        return family;
    }

    private static ObjectNode oneOf(List<String> words) {
        ObjectNode word = NODES.objectNode();
        words.forEach(word.putArray("enum")::add);
        return word;
    }
}
