package rigside.yaml;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A file read whole: what it says, or all that is wrong with it. No text makes it throw.
 *
 * @param <T> what the file describes
 * @param value present exactly when there are no problems
 * @param problems in the order of the file, each placed inside it; where there are more than {@link
 *     #MOST_PROBLEMS} the last says so
 */
public record Document<T>(Optional<T> value, List<Problem> problems) {
    /** The largest file read, in bytes of UTF-8. */
    public static final int MOST_BYTES = 256 * 1024;

    /** So many problems are listed, and then that there are more. */
    public static final int MOST_PROBLEMS = 100;

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    public Document {
        problems = List.copyOf(problems);
    }

    /**
     * Reads the bytes of a file, which must be UTF-8.
     *
     * @param name the file's name, used in problems only
     * @param reader reads the outermost keys and ends with {@link Fields#make}
     */
    public static <T> Document<T> read(
            String name, byte[] bytes, Function<Fields, Value<T>> reader) {
        if (bytes.length > MOST_BYTES) {
            return tooLarge(name);
        }
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
        String text = out.flip().toString();
        return result.isError() ? noText(name, text) : read(name, text, reader);
    }

    /** {@code before}: what could be read until the first byte that is none of UTF-8. */
    private static <T> Document<T> noText(String name, String before) {
        String[] lines = before.split("\r\n|\r|\n", -1);
        String last = lines[lines.length - 1];
        Problem problem =
                new Problem(
                        name,
                        lines.length,
                        last.codePointCount(0, last.length()) + 1,
                        "the character here is not written in UTF-8",
                        "save the file again with UTF-8 encoding");
        return new Document<>(Optional.empty(), List.of(problem));
    }

    /**
     * Reads a text.
     *
     * @param name the file's name, used in problems only
     * @param reader reads the outermost keys and ends with {@link Fields#make}
     */
    public static <T> Document<T> read(
            String name, String text, Function<Fields, Value<T>> reader) {
        if (text.length() > MOST_BYTES
                || text.getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
            return tooLarge(name);
        }
        Problems problems = new Problems(name);
        String body = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
        if (!Characters.check(body, problems)) {
            return new Document<>(Optional.empty(), problems.all());
        }
        Optional<Tree> whole = Parse.tree(body, problems);
        if (problems.count() > 0) {
            problems.bar();
        }
        Optional<T> value =
                whole.flatMap(
                        tree ->
                                Entry.of(
                                                new Spot(
                                                        problems,
                                                        tree.line(),
                                                        tree.column(),
                                                        "the file"),
                                                tree,
                                                new Readings())
                                        .fields(reader)
                                        .toOptional());
        return new Document<>(problems.count() == 0 ? value : Optional.empty(), problems.all());
    }

    private static <T> Document<T> tooLarge(String name) {
        return refused(
                name,
                "the file is larger than " + MOST_BYTES / 1024 + " KiB",
                "a file of this kind needs a few pages; see whether it is the right one");
    }

    private static <T> Document<T> refused(String name, String what, String help) {
        return new Document<>(Optional.empty(), List.of(new Problem(name, 1, 1, what, help)));
    }
}
