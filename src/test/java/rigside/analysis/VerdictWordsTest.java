package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rigside.decide.Conclusion;
import rigside.decide.Verdict;
import rigside.protocol.Measure.Compared.Matters;

class VerdictWordsTest {

    @ParameterizedTest
    @CsvSource({
        "MEANINGFUL_DIFFERENCE, EITHER, a meaningful difference",
        "MEANINGFUL_DIFFERENCE, INCREASE, a meaningful increase",
        "NO_MEANINGFUL_DIFFERENCE, EITHER, no meaningful difference",
        "NO_MEANINGFUL_DIFFERENCE, INCREASE, no meaningful increase",
        "NO_MEANINGFUL_DIFFERENCE, DECREASE, no meaningful decrease",
        "TOO_FEW_ROUNDS, EITHER, too few repeats",
        "DIFFERENCE_SIZE_UNSETTLED, INCREASE, a difference of unsettled size",
        "NOT_SETTLED, DECREASE, not settled"
    })
    void theDirectionThatMattersIsSaid(Verdict verdict, Matters matters, String words) {
        assertEquals(words, VerdictWords.of(verdict, matters));
    }

    @ParameterizedTest
    @CsvSource({
        "MEANINGFUL_DIFFERENCE, -1, a meaningful decrease",
        "MEANINGFUL_DIFFERENCE, 1, a meaningful increase",
        "NO_MEANINGFUL_DIFFERENCE, 0, no meaningful difference"
    })
    void aConclusionSaysWhichWayItGoes(Verdict verdict, int direction, String words) {
        assertEquals(words, VerdictWords.of(new Conclusion(verdict, direction), Matters.EITHER));
    }

    @ParameterizedTest
    @EnumSource(Verdict.class)
    void aRowOfATableHasRoomForThem(Verdict verdict) {
        for (Matters matters : Matters.values()) {
            assertTrue(VerdictWords.of(verdict, matters).length() <= 30);
        }
    }
}
