package rigside.protocol;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.yaml.Problem;

/** Shipped files damaged at random, 500 times each: never an exception, every problem inside. */
class MutationTest {
    private static final int MUTATIONS = 500;

    private static final List<String> TOKENS =
            List.of(
                    ":",
                    ": ",
                    "-",
                    "- ",
                    "\n",
                    "\n\n",
                    "  ",
                    "\t",
                    "'",
                    "\"",
                    "[",
                    "]",
                    "{",
                    "}",
                    ",",
                    "#",
                    " #",
                    "&a ",
                    "*a",
                    "!!int ",
                    "|",
                    ">",
                    "?",
                    "%",
                    "@",
                    "`",
                    "---\n",
                    "...\n",
                    "null",
                    "~",
                    "yes",
                    "no",
                    "0",
                    "-1",
                    "1e9",
                    "010",
                    ".inf",
                    "\\",
                    "\u0000",
                    "\u001B[2J",
                    "\uFEFF",
                    "\u202E",
                    "\uD800",
                    "\uDBFF\uDFFF",
                    "90 s",
                    "10 %",
                    "2 times",
                    "0.8 to 1.25",
                    "Pa",
                    "with-disc",
                    "seal",
                    "kind: note");

    @ParameterizedTest
    @MethodSource("rigside.protocol.Shipped#names")
    void aDamagedFileGivesAProtocolOrProblemsInsideIt(String name) {
        Random random = new Random(name.hashCode());
        String whole = Shipped.text(name);
        int bad = 0;
        for (int i = 0; i < MUTATIONS; i++) {
            String text = whole;
            int times = 1 + random.nextInt(3);
            for (int j = 0; j < times; j++) {
                text = mutated(text, random);
            }
            bad += problems(text, name + ", mutation " + i).isEmpty() ? 0 : 1;
        }
        int found = bad;
        assertTrue(found > MUTATIONS / 2, () -> found + " of " + MUTATIONS + " had problems");
    }

    private static List<Problem> problems(String text, String which) {
        try {
            Read read = ProtocolReader.read("file.yaml", text);
            List<Problem> problems = read instanceof Read.Bad bad ? bad.problems() : List.of();
            assertTrue(read instanceof Read.Good || !problems.isEmpty(), which);
            Places.assertInside(text, problems);
            return problems;
        } catch (RuntimeException | StackOverflowError e) {
            return fail(which + "\n" + text, e);
        }
    }

    private static String mutated(String text, Random random) {
        return switch (random.nextInt(7)) {
            case 0 -> cut(text, random, 1 + random.nextInt(3));
            case 1 -> cut(text, random, 1 + random.nextInt(200));
            case 2 -> replaced(text, random, TOKENS.get(random.nextInt(TOKENS.size())), 0);
            case 3 -> replaced(text, random, TOKENS.get(random.nextInt(TOKENS.size())), 6);
            case 4 -> replaced(text, random, Character.toString(random.nextInt(0x2100)), 1);
            case 5 -> lines(text, random);
            default -> indented(text, random);
        };
    }

    private static String cut(String text, Random random, int length) {
        int start = random.nextInt(text.length());
        return text.substring(0, start) + text.substring(Math.min(text.length(), start + length));
    }

    private static String replaced(String text, Random random, String by, int length) {
        int start = random.nextInt(text.length());
        return text.substring(0, start)
                + by
                + text.substring(Math.min(text.length(), start + length));
    }

    /** Swaps, repeats or drops whole lines: the structure. */
    private static String lines(String text, Random random) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        int line = random.nextInt(lines.size());
        switch (random.nextInt(3)) {
            case 0 -> Collections.swap(lines, line, random.nextInt(lines.size()));
            case 1 -> lines.add(random.nextInt(lines.size()), lines.get(line));
            default -> lines.remove(line);
        }
        return String.join("\n", lines) + "\n";
    }

    private static String indented(String text, Random random) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        int line = random.nextInt(lines.size());
        String now = lines.get(line);
        boolean less = random.nextBoolean() && now.startsWith("  ");
        lines.set(line, less ? now.substring(2) : "  " + now);
        return String.join("\n", lines) + "\n";
    }
}
