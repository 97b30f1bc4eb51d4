package rigside.journal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * The fields of one JSON object, read strictly: each must be there and of its kind, and at the end
 * none may be left over. Every method throws {@link Unreadable}, with words, when that is not so.
 */
final class Fields {
    private static final int LONGEST_QUOTE = 60;

    private static final Pattern CONTROL = Pattern.compile("\\p{Cntrl}");

    private final ObjectNode node;
    private final Set<String> known = new HashSet<>();

    Fields(ObjectNode node) {
        this.node = node;
    }

    boolean has(String name) {
        return node.has(name);
    }

    int integer(String name) {
        JsonNode value = get(name);
        return integer(name, value);
    }

    private static int integer(String name, JsonNode value) {
        if (!value.isIntegralNumber() || !value.canConvertToInt()) {
            throw wrong(name, value, "a whole number");
        }
        return value.intValue();
    }

    long whole(String name) {
        JsonNode value = get(name);
        if (!value.isIntegralNumber() || !value.canConvertToLong()) {
            throw wrong(name, value, "a whole number");
        }
        return value.longValue();
    }

    /** A number; the words for the three that are not finite are read too. */
    double number(String name) {
        JsonNode value = get(name);
        if (value.isTextual()) {
            return NonFinite.read(value.textValue())
                    .orElseThrow(() -> wrong(name, value, "a number"));
        }
        if (!value.isNumber() || !(Math.abs(value.doubleValue()) <= Double.MAX_VALUE)) {
            throw wrong(name, value, "a number");
        }
        return value.doubleValue();
    }

    /** Empty when the field is not there. */
    OptionalDouble maybeNumber(String name) {
        return has(name) ? OptionalDouble.of(number(name)) : OptionalDouble.empty();
    }

    String text(String name) {
        JsonNode value = get(name);
        if (!value.isTextual()) {
            throw wrong(name, value, "words");
        }
        return value.textValue();
    }

    boolean yes(String name) {
        JsonNode value = get(name);
        if (!value.isBoolean()) {
            throw wrong(name, value, "true or false");
        }
        return value.booleanValue();
    }

    /** A word out of a fixed set. */
    <T> T word(String name, Function<String, Optional<T>> meaning) {
        String word = text(name);
        return meaning.apply(word).orElseThrow(() -> unknown(name, word));
    }

    /** The whole of an inner object. */
    <T> T object(String name, Function<Fields, T> read) {
        return inner(name, get(name), read);
    }

    <T> List<T> objects(String name, Function<Fields, T> read) {
        List<T> all = new ArrayList<>();
        for (JsonNode each : array(name)) {
            all.add(inner(name, each, read));
        }
        return List.copyOf(all);
    }

    List<Integer> integers(String name) {
        List<Integer> all = new ArrayList<>();
        for (JsonNode each : array(name)) {
            all.add(integer(name, each));
        }
        return List.copyOf(all);
    }

    /** Refuses a field that nothing asked for: what is read must be all that was written. */
    void end() {
        for (String name : (Iterable<String>) node::fieldNames) {
            if (!known.contains(name)) {
                throw new Unreadable("unknown field '" + quote(name) + "'");
            }
        }
    }

    static Unreadable unknown(String name, String word) {
        return new Unreadable("unknown " + name + " '" + quote(word) + "'");
    }

    private static <T> T inner(String name, JsonNode value, Function<Fields, T> read) {
        if (!(value instanceof ObjectNode object)) {
            throw wrong(name, value, "a group of fields");
        }
        Fields fields = new Fields(object);
        T result = read.apply(fields);
        fields.end();
        return result;
    }

    private JsonNode array(String name) {
        JsonNode value = get(name);
        if (!value.isArray()) {
            throw wrong(name, value, "a list");
        }
        return value;
    }

    private JsonNode get(String name) {
        known.add(name);
        JsonNode value = node.get(name);
        if (value == null) {
            throw new Unreadable("'" + name + "' is missing");
        }
        return value;
    }

    private static Unreadable wrong(String name, JsonNode value, String expected) {
        String shown = value.isValueNode() ? value.asText() : value.toString();
        return new Unreadable("'" + name + "' is '" + quote(shown) + "', must be " + expected);
    }

    /** So much of it as tells what it is; a line end in it begins no line of its own. */
    static String quote(String text) {
        String line = CONTROL.matcher(text).replaceAll("\uFFFD");
        return line.length() <= LONGEST_QUOTE ? line : line.substring(0, LONGEST_QUOTE) + "...";
    }
}
