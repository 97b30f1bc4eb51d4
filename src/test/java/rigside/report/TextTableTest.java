package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TextTableTest {
    private static final String NAME = "2026-11-25-0916-prefilter-disc";
    private static final String FOUND = "a meaningful increase (1.16 to 1.35 times as long)";

    private static Block.Table table(String name, String found) {
        return new Block.Table(
                "",
                List.of(
                        new Block.Head("session", false),
                        new Block.Head("rounds", true),
                        new Block.Head("by its own looks", false)),
                List.of(Cell.texts(List.of(name, "5", found))));
    }

    @Test
    void wordsStayWholeWhileLinesCanBeBrokenBetweenThem() {
        assertEquals(
                List.of(
                        "session                         rounds  by its own looks",
                        "------------------------------  ------  ----------------------",
                        "2026-11-25-0916-prefilter-disc       5  a meaningful increase",
                        "                                        (1.16 to 1.35 times as",
                        "                                        long)"),
                TextTable.of(table(NAME, FOUND), 62));
    }

    @Test
    void whatFitsIsAsWideAsItsCells() {
        List<String> lines = TextTable.of(table(NAME, FOUND), 200);
        assertEquals(NAME + "       5  " + FOUND, lines.get(2));
    }

    /** A name without end must not squeeze its neighbours into columns of single words. */
    @Test
    void aWordOfMostOfTheLineIsBrokenAndNoLineIsTooWide() {
        for (int width = 20; width < 120; width++) {
            int asked = width;
            List<String> lines = TextTable.of(table("x".repeat(150), FOUND), width);
            assertTrue(lines.stream().allMatch(line -> line.length() <= asked), () -> asked + "");
            int letters = String.join("", lines).replaceAll("[^x]", "").length();
            assertEquals(150, letters);
        }
        assertTrue(TextTable.of(table("x".repeat(150), FOUND), 80).size() < 10);
    }

    @Test
    void wordsAreWholeFromTheWidthThatHoldsThem() {
        IntStream.range(62, 100)
                .forEach(
                        width ->
                                assertTrue(
                                        TextTable.of(table(NAME, FOUND), width)
                                                .get(2)
                                                .startsWith(NAME + " ")));
    }
}
