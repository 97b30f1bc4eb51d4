package rigside.journal;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** One JSON object a line: strict when read, the same text for the same content when written. */
final class Json {
    private static final int DEEPEST = 20;

    /**
     * The fast writer of doubles gives the shortest digits that read back exactly, on every Java
     * version; {@code Double.toString} gives others before Java 19.
     */
    private static final ObjectMapper MAPPER =
            JsonMapper.builder(
                            JsonFactory.builder()
                                    .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
                                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                                    .streamReadConstraints(
                                            StreamReadConstraints.builder()
                                                    .maxNestingDepth(DEEPEST)
                                                    .maxStringLength(JournalReader.LONGEST_LINE)
                                                    .build())
                                    .build())
                    .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                    .build();

    private Json() {}

    static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    /** The object the text holds; empty when it is anything else than one whole JSON object. */
    static Optional<ObjectNode> read(String text) {
        try {
            JsonNode node = MAPPER.readTree(text);
            return node instanceof ObjectNode object ? Optional.of(object) : Optional.empty();
        } catch (JsonProcessingException notJson) {
            return Optional.empty();
        }
    }

    /** One line without its end; fields in the order in which they were put. */
    static String write(ObjectNode node) {
        try {
            return escapeHalfPairs(MAPPER.writeValueAsString(node));
        } catch (JsonProcessingException cannotBe) {
            throw new IllegalStateException(cannotBe);
        }
    }

    /**
     * Half a surrogate pair, as a broken key sequence can leave it in typed text, has no UTF-8; it
     * is written as an escape so that it reads back as it was.
     */
    private static String escapeHalfPairs(String line) {
        StringBuilder escaped = new StringBuilder(line.length());
        int at = 0;
        while (at < line.length()) {
            int point = line.codePointAt(at);
            if (Character.charCount(point) == 1 && Character.isSurrogate((char) point)) {
                escaped.append(String.format("\\u%04X", point));
            } else {
                escaped.appendCodePoint(point);
            }
            at += Character.charCount(point);
        }
        return escaped.toString();
    }
}
