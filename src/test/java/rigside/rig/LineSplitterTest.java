package rigside.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LineSplitterTest {
    private final List<LineSplitter.Split> lines = new ArrayList<>();

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 7, 100})
    void everyKindOfEndEndsALineHoweverTheBytesComeInPieces(int piece) {
        byte[] bytes = "one\ntwo\r\nthree\rfour\n\nsix\r\n".getBytes(StandardCharsets.US_ASCII);
        LineSplitter splitter = new LineSplitter(false);
        for (int at = 0; at < bytes.length; at += piece) {
            byte[] part =
                    java.util.Arrays.copyOfRange(bytes, at, Math.min(bytes.length, at + piece));
            splitter.take(part, part.length, lines::add);
        }
        assertEquals(List.of("one", "two", "three", "four", "", "six"), texts());
    }

    @Test
    void aLineIsNotThereBeforeItsEnd() {
        LineSplitter splitter = new LineSplitter(false);
        take(splitter, "12.");
        assertEquals(List.of(), texts());
        take(splitter, "5\n");
        assertEquals(List.of("12.5"), texts());
    }

    @Test
    void theRestOfALineThatBeganEarlierIsLeftOut() {
        take(new LineSplitter(true), "2.5\n13.5\n");
        assertEquals(List.of("13.5"), texts());
    }

    @Test
    void aMegabyteWithoutAnEndIsOneCutLineAndTheNextIsWhole() {
        LineSplitter splitter = new LineSplitter(false);
        take(splitter, "x".repeat(1 << 20));
        take(splitter, "\n12.5\n");
        assertEquals(2, lines.size());
        assertFalse(lines.get(0).whole());
        assertEquals(LineSplitter.LONGEST, lines.get(0).bytes().length());
        assertEquals("12.5", lines.get(1).text());
    }

    @Test
    void bytesThatAreNoUtf8AreKeptAsTheyAre() {
        byte[] bytes = {(byte) 0xB0, 'C', 0, (byte) 0xFF, '\n'};
        new LineSplitter(false).take(bytes, bytes.length, lines::add);
        assertEquals("\u00b0C\0\u00ff", lines.get(0).text());
        lines.clear();
        take(new LineSplitter(false), "21 \u00b0C\n");
        assertEquals("21 \u00b0C", lines.get(0).text());
    }

    private void take(LineSplitter splitter, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        splitter.take(bytes, bytes.length, lines::add);
    }

    private List<String> texts() {
        return lines.stream().map(LineSplitter.Split::text).toList();
    }
}
