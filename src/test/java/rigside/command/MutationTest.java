package rigside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A small share of {@link MutationStudy}: never an exception, each answer fit for a person. */
class MutationTest {
    private static final int FILES = 3000;

    @Test
    @Timeout(300)
    void aDamagedFileIsReadOrRefusedInPlainWordsAtAPlaceInsideIt() {
        Map<MutationStudy.Way, int[]> counts = new HashMap<>();
        MutationStudy.cases(
                FILES,
                damaged -> {
                    int[] count = counts.computeIfAbsent(damaged.way(), way -> new int[2]);
                    try {
                        count[damaged.answer().isEmpty() ? 0 : 1]++;
                        damaged.use();
                    } catch (AssertionError | RuntimeException | StackOverflowError e) {
                        fail(damaged.toString(), e);
                    }
                });
        counts.forEach(
                (way, count) -> {
                    assertTrue(count[0] > FILES / 100, () -> way + " spares " + count[0]);
                    assertTrue(count[1] > FILES / 10, () -> way + " breaks " + count[1]);
                });
        assertEquals(MutationStudy.Way.values().length, counts.size());
    }
}
