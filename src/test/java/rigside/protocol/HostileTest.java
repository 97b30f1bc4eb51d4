package rigside.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.yaml.Document;
import rigside.yaml.Problem;

/** Texts nobody writes by mistake: none may throw, hang or be taken for a protocol. */
@Timeout(20)
class HostileTest {
    @ParameterizedTest
    @MethodSource("rigside.protocol.HostileTexts#all")
    void aHostileTextGivesProblemsInsideIt(String text) {
        List<Problem> problems = Shipped.problems(text);
        Answers.assertHelpful(text, problems);
    }

    @Test
    void moreProblemsThanAPersonReadsAreNotAllListed() {
        String text = "format: 1\ncautions:\n" + "- []\n".repeat(40_000);
        List<Problem> problems = Shipped.problems(text);
        assertEquals(Document.MOST_PROBLEMS + 1, problems.size());
        assertEquals(
                "here and elsewhere is more that is not listed",
                problems.get(Document.MOST_PROBLEMS).what());
    }

    @Test
    void theFirstCharacterThatIsNoUtf8IsPointedAt() {
        byte[] bytes = "format: 1\ntitle: caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1);
        Problem problem = ((Read.Bad) ProtocolReader.read("file.yaml", bytes)).problems().get(0);
        assertEquals("2:11", problem.line() + ":" + problem.column());
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
}
