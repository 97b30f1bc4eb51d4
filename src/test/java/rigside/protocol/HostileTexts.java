package rigside.protocol;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import rigside.yaml.Document;

/** Texts nobody writes by mistake, as large as a file may be where size is the point. */
public final class HostileTexts {
    private static final int FULL = Document.MOST_BYTES - 100;

    private HostileTexts() {}

    public static Stream<Named<String>> all() {
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
                Named.of("a bomb of aliases", bomb(50)),
                Named.of("a bomb of merges", "a: &a {b: 1}\n" + merges(2000)),
                Named.of("a group within itself", "&a {a: *a, *a : *a}\n"),
                Named.of("a class to make", "!!javax.script.ScriptEngineManager [x]\n"),
                Named.of("a script to run", "a: !!python/object/apply:os.system ['ls']\n"),
                Named.of("a picture", "a: !!binary " + "A".repeat(FULL) + "\n"),
                Named.of("many documents", "format: 1\n---\n".repeat(20_000)),
                Named.of("many anchors", anchors(20_000)),
                Named.of("many hidden characters", "\u0001".repeat(FULL)),
                Named.of("one huge block", "title: |\n" + "  x\n".repeat(FULL / 5)),
                Named.of("a block far in", "title: |\n" + " ".repeat(FULL) + "x\n"),
                Named.of("a number without end", "format: " + "9".repeat(FULL) + "\n"),
                Named.of("many commas", "[" + ",".repeat(FULL)),
                Named.of("many pairs in brackets", "[" + "a: b, ".repeat(FULL / 7) + "]"),
                Named.of("steps without end", "donning:\n" + "- step: note\n".repeat(15_000)),
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

    private static String bomb(int levels) {
        return "a0: &a0 [x, x]\n"
                + IntStream.range(1, levels)
                        .mapToObj(
                                i ->
                                        "a" + i + ": &a" + i + " [*a" + (i - 1) + ", *a" + (i - 1)
                                                + "]\n")
                        .collect(Collectors.joining());
    }

    private static String merges(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> "k" + i + ": {<<: *a}\n")
                .collect(Collectors.joining());
    }

    private static String anchors(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> "- &a" + i + "\n")
                .collect(Collectors.joining());
    }
}
