package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.opentest4j.AssertionFailedError;

/**
 * A set of answers of a reference file, every one of which has to be asked for: one that no test
 * looks at fails when it is closed. Numbers have twelve digits unless said otherwise.
 */
final class Answers implements AutoCloseable {

    /** Sums over values with two or three constant leading digits lose as many of sixteen. */
    static final double DIGITS = 1e-9;

    private final String place;
    private final JsonNode node;
    private final Set<String> unasked = new TreeSet<>();
    private final List<Answers> parts = new ArrayList<>();

    Answers(String place, JsonNode node) {
        this.place = place;
        this.node = node;
        node.fieldNames().forEachRemaining(unasked::add);
    }

    boolean has(String field) {
        return node.has(field);
    }

    /** One answer, asked for. */
    JsonNode take(String field) {
        if (!node.has(field)) {
            throw new AssertionFailedError(place + " has no " + field);
        }
        unasked.remove(field);
        return node.get(field);
    }

    double number(String field) {
        return take(field).doubleValue();
    }

    double[] numbers(String field) {
        return Reference.doubles(take(field));
    }

    /** Answers inside these; closed with them. */
    Answers part(String field) {
        Answers part = new Answers(place + ", " + field, take(field));
        parts.add(part);
        return part;
    }

    /** Fields that are no answers. */
    Answers given(String... fields) {
        unasked.removeAll(Set.of(fields));
        return this;
    }

    /** Names of the fields not asked for yet. */
    List<String> left() {
        return List.copyOf(unasked);
    }

    void assertClose(String field, double actual) {
        assertClose(field, actual, DIGITS);
    }

    void assertClose(String field, double actual, double relative) {
        double expected = number(field);
        assertEquals(expected, actual, relative * Math.abs(expected), place + ", " + field);
    }

    /** Both limits, to so many digits of the size given. */
    void assertLimits(String field, double low, double high, double size) {
        double[] limits = numbers(field);
        assertEquals(limits[0], low, 10 * DIGITS * size, place + ", " + field + ", low");
        assertEquals(limits[1], high, 10 * DIGITS * size, place + ", " + field + ", high");
    }

    @Override
    public void close() {
        parts.forEach(Answers::close);
        assertEquals(Set.of(), unasked, place + ": answers without a test");
    }

    @Override
    public String toString() {
        return place;
    }
}
