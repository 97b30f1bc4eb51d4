package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VerdictsTest {

    /** The table of the design: band from -1 to 2, interval from low to high. */
    @ParameterizedTest(name = "[{0}, {1}] where {2} matters: {3}")
    @CsvSource({
        // either direction
        "2.1, 3, EITHER, meaningful-difference",
        "-3, -1.1, EITHER, meaningful-difference",
        "-0.9, 1.9, EITHER, no-meaningful-difference",
        "0.1, 1.9, EITHER, no-meaningful-difference",
        "-0.9, -0.1, EITHER, no-meaningful-difference",
        "0.1, 3, EITHER, difference-size-unsettled",
        "-3, -0.1, EITHER, difference-size-unsettled",
        "-0.1, 3, EITHER, not-settled",
        "-3, 0.1, EITHER, not-settled",
        "-3, 3, EITHER, not-settled",
        // a limit exactly on an edge settles nothing
        "2, 3, EITHER, difference-size-unsettled",
        "-3, -1, EITHER, difference-size-unsettled",
        "-1, 1.9, EITHER, not-settled",
        "-0.9, 2, EITHER, not-settled",
        "0.5, 2, EITHER, difference-size-unsettled",
        "0, 3, EITHER, not-settled",
        "-3, 0, EITHER, not-settled",
        // only an increase matters
        "2.1, 3, INCREASE, meaningful-difference",
        "-9, 1.9, INCREASE, no-meaningful-difference",
        "-9, -8, INCREASE, no-meaningful-difference",
        "0.1, 2.1, INCREASE, difference-size-unsettled",
        "-0.1, 2.1, INCREASE, not-settled",
        "-9, 2, INCREASE, not-settled",
        "2, 3, INCREASE, difference-size-unsettled",
        // only a decrease matters
        "-3, -1.1, DECREASE, meaningful-difference",
        "-0.9, 9, DECREASE, no-meaningful-difference",
        "8, 9, DECREASE, no-meaningful-difference",
        "-1.1, -0.1, DECREASE, difference-size-unsettled",
        "-1.1, 0.1, DECREASE, not-settled",
        "-1, 9, DECREASE, not-settled",
        // what is no number or no end never settles
        "NaN, NaN, EITHER, not-settled",
        "NaN, NaN, INCREASE, not-settled",
        "-Infinity, Infinity, EITHER, not-settled",
        "-Infinity, Infinity, DECREASE, not-settled"
    })
    void theFirstRowThatHoldsIsTheVerdict(double low, double high, Matters matters, String word) {
        Verdict verdict = Verdicts.of(interval(low, high), new Band(-1, 2), matters);
        assertEquals(word, verdict.word());
    }

    @Test
    void onlyTheTwoAnswersSettle() {
        assertEquals(2, Arrays.stream(Verdict.values()).filter(Verdict::settled).count());
        assertTrue(Verdict.MEANINGFUL_DIFFERENCE.settled());
        assertTrue(Verdict.NO_MEANINGFUL_DIFFERENCE.settled());
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "-1, 0", "1, 2", "-2, -1", "NaN, 1", "-1, NaN", "-Infinity, 1"})
    void aBandReachesFromBelowZeroToAbove(double low, double high) {
        assertThrows(IllegalArgumentException.class, () -> new Band(low, high));
    }

    /** An interval with exactly these limits. */
    private static Interval interval(double low, double high) {
        if (Double.isInfinite(low)) {
            return new Interval(0, Double.POSITIVE_INFINITY, 2, 1);
        }
        return new Interval((low + high) / 2, (high - low) / 2, 2, 1);
    }
}
