package rigside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReactionsTest {
    @ParameterizedTest(name = "{0} s after the signal: {1}")
    @CsvSource({
        "-1, TOO_EARLY",
        "0, TOO_EARLY",
        "0.099, TOO_EARLY",
        "0.1, COUNTS",
        "0.23, COUNTS",
        "1.5, COUNTS",
        "1.51, TOO_LATE",
        "NaN, TOO_EARLY"
    })
    void guessesAndAbsurdTriesDoNotCount(double seconds, Reactions.Worth worth) {
        assertEquals(worth, Reactions.worth(seconds));
    }

    /** Twice the variance of 0.20 to 0.29 s in steps of 0.01 s, which is 9.1667e-4 s2. */
    @Test
    void theSpreadIsThatOfTwoPresses() {
        Reactions all = Reactions.NONE;
        for (int i = 0; i < 10; i++) {
            assertFalse(all.areEnough());
            all = all.with(0.2 + i / 100.0);
        }
        assertTrue(all.areEnough());
        assertEquals(Math.sqrt(2 * 9.1666667e-4), all.pairSpread().orElseThrow(), 1e-8);
        assertEquals(OptionalDouble.empty(), Reactions.NONE.with(0.2).pairSpread());
    }

    @Test
    void signalsComeAfterTimesThatCannotBeGuessed() {
        Random random = new Random(3);
        double[] pauses =
                DoubleStream.generate(() -> Reactions.pause(random)).limit(1000).toArray();
        assertTrue(DoubleStream.of(pauses).allMatch(each -> each >= 1.5 && each <= 4.5));
        assertTrue(DoubleStream.of(pauses).min().orElseThrow() < 1.6);
        assertTrue(DoubleStream.of(pauses).max().orElseThrow() > 4.4);
        assertEquals(1000, DoubleStream.of(pauses).distinct().count());
    }

    @Test
    void timesAreKeptInWholeMicroseconds() {
        assertEquals(0.234568, Reactions.NONE.with(0.2345678).taken().get(0));
    }
}
