package rigside.decide;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
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

    static double[] doubles(JsonNode array) {
        return list(array).stream().mapToDouble(JsonNode::doubleValue).toArray();
    }

    static List<JsonNode> list(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false).toList();
    }
}
