package rigside.archive;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import java.io.IOException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads the cells of one line of the index one after another, as they were written. Whatever is not
 * what it should be is an {@link IOException}: the index is then made anew.
 */
final class Cells {
    static final JsonFactory JSON =
            new JsonFactoryBuilder()
                    .enable(StreamReadFeature.USE_FAST_DOUBLE_PARSER)
                    .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
                    // Half a surrogate pair, as typed text can hold, has no UTF-8.
                    .enable(JsonWriteFeature.ESCAPE_NON_ASCII)
                    .build();

    private final JsonParser parser;

    Cells(byte[] bytes, int from, int length) throws IOException {
        this.parser = JSON.createParser(bytes, from, length);
        if (parser.nextToken() != JsonToken.START_ARRAY) {
            throw new IOException("no line of an index");
        }
    }

    /** Reads one thing from the next cells. */
    interface Of<T> {
        T read(Cells cells) throws IOException;
    }

    String text() throws IOException {
        String text = parser.nextTextValue();
        if (text == null) {
            throw new IOException("no text");
        }
        return text;
    }

    boolean flag() throws IOException {
        Boolean flag = parser.nextBooleanValue();
        if (flag == null) {
            throw new IOException("neither true nor false");
        }
        return flag;
    }

    int count() throws IOException {
        parser.nextToken();
        return parser.getIntValue();
    }

    long size() throws IOException {
        parser.nextToken();
        return parser.getLongValue();
    }

    double number() throws IOException {
        return decimal(parser.nextToken());
    }

    OptionalDouble numberIfAny() throws IOException {
        JsonToken next = parser.nextToken();
        return next == JsonToken.VALUE_NULL
                ? OptionalDouble.empty()
                : OptionalDouble.of(decimal(next));
    }

    /** Infinities are written as texts. */
    private double decimal(JsonToken token) throws IOException {
        return token == JsonToken.VALUE_STRING
                ? Double.parseDouble(parser.getText())
                : parser.getDoubleValue();
    }

    <E extends Enum<E>> E word(Class<E> kind) throws IOException {
        return Enum.valueOf(kind, text());
    }

    Instant instant() throws IOException {
        return Instant.ofEpochSecond(size(), count());
    }

    ZonedDateTime zoned() throws IOException {
        Instant instant = instant();
        return instant.atZone(ZoneId.of(text()));
    }

    /** Something that stands in an array of its own, or null. */
    <T> Optional<T> ifAny(Of<T> what) throws IOException {
        return parser.nextToken() == JsonToken.VALUE_NULL
                ? Optional.empty()
                : Optional.of(inside(what));
    }

    /** Things that each stand in an array of their own, in an array. */
    <T> List<T> list(Of<T> what) throws IOException {
        if (parser.nextToken() != JsonToken.START_ARRAY) {
            throw new IOException("no list");
        }
        List<T> all = new ArrayList<>();
        while (parser.nextToken() == JsonToken.START_ARRAY) {
            all.add(inside(what));
        }
        end(parser.currentToken());
        return all;
    }

    private <T> T inside(Of<T> what) throws IOException {
        if (parser.currentToken() != JsonToken.START_ARRAY) {
            throw new IOException("no array");
        }
        T read = what.read(this);
        end(parser.nextToken());
        return read;
    }

    private static void end(JsonToken token) throws IOException {
        if (token != JsonToken.END_ARRAY) {
            throw new IOException("more than was expected");
        }
    }
}
