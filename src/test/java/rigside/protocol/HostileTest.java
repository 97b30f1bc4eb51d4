package rigside.protocol;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.yaml.Document;
import rigside.yaml.Problem;

/** Texts nobody writes by mistake: none may throw, hang or be taken for a protocol. */
@Timeout(20)
class HostileTest {
    private static final int FULL = Document.MOST_BYTES - 100;

    static Stream<Named<String>> texts() {
        return Stream.of(
                Named.of("nothing", ""),
                Named.of("spaces", "   \n  \n"),
                Named.of("a comment", "# nothing here\n"),
                Named.of("a tab", "\t"),
                Named.of("a byte order mark", "\uFEFF"),
                Named.of("a byte order mark in the middle", "format: 1\n\uFEFFtitle: x\n"),
                Named.of("a text", "hello"),
                Named.of("a list", "- 1\n- 2\n"),
                Named.of("only document marks", "---\n---\n...\n"),
                Named.of("a null byte", "format: 1\u0000\n"),
                Named.of("half a pair", "title: \uD83D\n"),
                Named.of("half a pair by escape", "format: 1\ntitle: \"\\uD83D\"\n"),
                Named.of("a character beyond Unicode", "title: \"\\U00110000\"\n"),
                Named.of("a character beyond numbers", "title: \"\\UFFFFFFFF\"\n"),
                Named.of("old line breaks", "format: 1\u0085title: x\u2028about: y\n"),
                Named.of("returns only", "format: 1\rtitle: [\r"),
                Named.of("a directive of the future", "%YAML 99.99\n---\na: b\n"),
                Named.of("a directive beyond numbers", "%YAML 1.99999999999999999999\n---\na: b\n"),
                Named.of("a tag directive", "%TAG ! tag:x,2000:\n---\n!a b\n"),
                Named.of("a verbatim tag", "!<tag:yaml.org,2002:java.lang.Runtime> x\n"),
                Named.of("a merge", "a: &x {b: c}\n<<: *x\n"),
                Named.of("an anchor on itself", "&a [*a, *a]\n"),
                Named.of("an alias of nothing", "a: *b\n"),
                Named.of("keys that are groups", "{a: b}: c\n? [d]\n: e\n"),
                Named.of("a key without a word", ": : :\n"),
                Named.of("numbers beyond size", "format: 1" + "0".repeat(400) + "\n"),
                Named.of("an exponent beyond size", "format: 1e999999999\n"),
                Named.of("lists deep", "[".repeat(FULL)),
                Named.of("groups deep", "{a: ".repeat(FULL / 4)),
                Named.of("dashes deep", "- ".repeat(FULL / 2)),
                Named.of("indents deep", indents(200)),
                Named.of("a bomb of aliases", bomb()),
                Named.of("one huge word", "title: " + "x".repeat(FULL)),
                Named.of("one huge key", "x".repeat(FULL) + ": 1"),
                Named.of("one open quote", "title: \"" + "x".repeat(FULL)),
                Named.of("many questions", "? ".repeat(FULL / 2)),
                Named.of("many colons", "a: ".repeat(FULL / 3)),
                Named.of("many keys", "format: 1\n" + keys(20_000)),
                Named.of("many wrong items", "format: 1\ncautions:\n" + "- []\n".repeat(40_000)),
                Named.of("too large", "#".repeat(Document.MOST_BYTES + 1)),
                Named.of("too large in bytes", "\u20AC".repeat(Document.MOST_BYTES / 2)));
    }

    @ParameterizedTest
    @MethodSource("texts")
    void aHostileTextGivesProblemsInsideIt(String text) {
        List<Problem> problems = Shipped.problems(text);
        assertFalse(problems.isEmpty());
        Places.assertInside(text, problems);
    }

    @Test
    void noProblemCarriesACharacterATerminalWouldObey() {
        String text = "format: 1\n\"\\e[31m\\a\": 1\norder: \"\\x9B31m\\u202E\"\n";
        String told =
                Shipped.problems(text).stream()
                        .map(Problem::toString)
                        .collect(Collectors.joining());
        assertTrue(told.chars().allMatch(c -> c == '\n' || (c >= ' ' && c < 0x7F)), told);
    }

    @Test
    void bytesThatAreNoTextAreRefused() {
        Random random = new Random(4);
        byte[] bytes = new byte[2000];
        random.nextBytes(bytes);
        Read.Bad bad = (Read.Bad) ProtocolReader.read("file.yaml", bytes);
        assertTrue(bad.problems().get(0).what().contains("UTF-8"), bad.toString());
    }

    @Test
    void bytesAndTextReadAlike() {
        String text = Shipped.text("demo/prefilter-disc.yaml");
        Read bytes = ProtocolReader.read("x", text.getBytes(StandardCharsets.UTF_8));
        Read marked = ProtocolReader.read("x", "\uFEFF" + text);
        Read windows = ProtocolReader.read("x", text.replace("\n", "\r\n"));
        Read plain = ProtocolReader.read("x", text);
        assertTrue(plain instanceof Read.Good);
        assertTrue(plain.equals(bytes) && plain.equals(marked) && plain.equals(windows));
    }

    private static String keys(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> "k" + i + ": 1\n")
                .collect(Collectors.joining());
    }

    private static String indents(int depth) {
        return IntStream.range(0, depth)
                .mapToObj(i -> " ".repeat(i) + "a:\n")
                .collect(Collectors.joining());
    }

    private static String bomb() {
        return "a0: &a0 [x, x]\n"
                + IntStream.range(1, 50)
                        .mapToObj(
                                i ->
                                        "a" + i + ": &a" + i + " [*a" + (i - 1) + ", *a" + (i - 1)
                                                + "]\n")
                        .collect(Collectors.joining());
    }
}
