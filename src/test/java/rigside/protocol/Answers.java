package rigside.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import rigside.yaml.Document;
import rigside.yaml.Problem;

/** Whether what is said of a file is fit to be read by a person. */
public final class Answers {
    /** Longer than any sentence of ours with two quotations in it. */
    private static final int LONGEST = 400;

    private Answers() {}

    /** Fails unless there are problems, not too many, each inside the file and in plain words. */
    public static void assertHelpful(byte[] file, List<Problem> problems) {
        assertHelpful(new String(file, StandardCharsets.UTF_8), problems);
    }

    public static void assertHelpful(String text, List<Problem> problems) {
        assertFalse(problems.isEmpty(), "neither read nor refused");
        assertTrue(
                problems.size() <= Document.MOST_PROBLEMS + 1, () -> problems.size() + " problems");
        assertEquals(problems.size(), new HashSet<>(problems).size(), "a problem is told twice");
        Places.assertInside(text, problems);
        for (Problem problem : problems) {
            assertPlain(problem.what(), problem);
            assertPlain(problem.help(), problem);
        }
    }

    private static void assertPlain(String words, Problem problem) {
        assertFalse(words.isBlank(), () -> "nothing is said: " + problem);
        assertTrue(words.length() <= LONGEST, () -> words.length() + " characters: " + problem);
        assertTrue(
                words.codePoints().noneMatch(c -> c < ' ' || (c >= 0x7F && c < 0xA0)),
                () -> "a character a terminal would obey: " + problem);
        assertFalse(
                words.contains("null") && words.contains("java."),
                () -> "words of the program's own: " + problem);
    }
}
