package rigside.decide;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.StreamSupport;

/** Reference files beside the tests; each names the tool and version that made it. */
final class Reference {
    private Reference() {}

    static JsonNode read(String file) {
        try (InputStream in = Reference.class.getResourceAsStream(file)) {
            return new ObjectMapper().readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The rows of a comma-separated file without its header line. */
    static List<String[]> csv(String file) {
        try (InputStream in = Reference.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(line -> line.strip().split(",", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Numbers of one column of a data set, of the rows chosen. */
    static double[] column(String set, int column, Predicate<String[]> chosen) {
        return csv("data/" + set + ".csv").stream()
                .filter(chosen)
                .mapToDouble(row -> Double.parseDouble(row[column]))
                .toArray();
    }

    /** Numbers of one column by the word in another, groups in order. */
    static Map<String, double[]> groups(String file, int group, int column) {
        Map<String, List<Double>> groups = new LinkedHashMap<>();
        for (String[] row : csv(file)) {
            groups.computeIfAbsent(row[group], g -> new ArrayList<>())
                    .add(Double.valueOf(row[column]));
        }
        Map<String, double[]> numbers = new LinkedHashMap<>();
        groups.forEach(
                (name, values) ->
                        numbers.put(
                                name, values.stream().mapToDouble(Double::doubleValue).toArray()));
        return numbers;
    }

    /** The rows of a section held as columns and rows, as numbers; text becomes NaN. */
    static List<double[]> rows(String file, String section) {
        return list(read(file).get(section).get("rows")).stream().map(Reference::doubles).toList();
    }

    /** The numbers of an array; a bare number stands for an array of one. */
    static double[] doubles(JsonNode array) {
        if (array.isNumber()) {
            return new double[] {array.doubleValue()};
        }
        return list(array).stream().mapToDouble(Reference::number).toArray();
    }

    static List<JsonNode> list(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false).toList();
    }

    private static double number(JsonNode node) {
        return node.isNumber() ? node.doubleValue() : Double.NaN;
    }
}
