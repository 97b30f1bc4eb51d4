package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigside.protocol.Protocol;
import rigside.session.Schedule;

class OutlineTest {
    private static final Protocol DEMONSTRATION = Read.shipped("/demo/prefilter-disc.yaml");
    private static final Protocol EIGHT = Read.shipped("/protocols/ambient-eight-exercises.yaml");

    @Test
    void theDemonstrationReadsLikeThis() {
        Approved.matches(
                "prefilter-disc.txt", Outline.of(DEMONSTRATION, OptionalLong.of(7)).text(80));
    }

    @Test
    void eightExercisesReadLikeThis() {
        Approved.matches("ambient-eight-exercises.txt", Outline.of(EIGHT).text(100));
    }

    @Test
    void asAPageItIsThis() {
        Approved.matches("prefilter-disc.html", Outline.of(DEMONSTRATION).html());
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 60, 80, 132})
    void noLineIsWiderThanAsked(int width) {
        for (String line : Outline.of(EIGHT, OptionalLong.of(1)).lines(width)) {
            assertTrue(Legible.width(line) <= width, line);
        }
    }

    /** Balanced order makes the orders of neighbouring rounds differ. */
    @Test
    void theDrawnOrderIsTheSessions() {
        List<String> lines = Outline.of(DEMONSTRATION, OptionalLong.of(7)).lines(80);
        for (int round = 1; round <= 8; round++) {
            String first =
                    Outline.title(DEMONSTRATION, Schedule.order(DEMONSTRATION, 7, round).get(0));
            String begins = "      " + round + "  " + first;
            assertEquals(
                    1,
                    lines.stream()
                            .filter(
                                    line ->
                                            line.strip().startsWith(begins.strip())
                                                    && line.startsWith("      "))
                            .count(),
                    begins);
        }
    }

    @Test
    void withoutASeedNoOrderIsTold() {
        assertFalse(Outline.of(DEMONSTRATION).text(80).contains("Round  first"));
    }
}
