package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Marks of axes are round numbers, and lie where the numbers do. */
class TicksTest {
    private static String labels(List<Ticks.Tick> ticks) {
        return String.join(" ", ticks.stream().map(Ticks.Tick::label).toList());
    }

    /**
     * R 4.2.2, {@code pretty(c(low, high), n)}, those within the range; n is one less than here.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 10, 5, 0 2 4 6 8 10",
        "5.9, 8.1, 5, 6 6.5 7 7.5 8",
        "-3, 3, 6, -3 -2 -1 0 1 2 3",
        "0.001, 0.0042, 4, 0.001 0.002 0.003 0.004",
        "79, 121, 5, 80 90 100 110 120",
    })
    void linearMarksAreThoseOfAnotherProgram(double low, double high, int most, String expected) {
        assertEquals(expected, labels(Ticks.linear(low, high, most)));
    }

    @ParameterizedTest
    @CsvSource({
        "9, 1100, 7, 10 20 50 100 200 500 1000",
        "9, 1100, 6, 10 100 1000",
        "0.9, 3.2, 6, 1 1.5 2 2.5 3",
        "95, 130, 6, 100 110 120 130",
        "1e-12, 1e12, 5, 1E-12 1E-7 0.01 1000 1E8",
    })
    void marksOfLogarithmsAreOneTwoFive(double low, double high, int most, String expected) {
        assertEquals(expected, labels(Ticks.log(low, high, most)));
    }

    @Test
    void largeNumbersAreGrouped() {
        assertEquals("10\u00A0000 20\u00A0000", labels(Ticks.linear(9_000, 25_000, 2)));
    }

    @ParameterizedTest
    @CsvSource({
        "1, 5, 200, 20, 1 2 3 4 5",
        "1, 8, 100, 20, 1 4 6 8",
        "1, 50, 200, 25, 1 10 20 30 40 50",
        "1, 50, 20, 25, 1",
        "1, 1, 0, 25, 1",
        "1, 22, 150, 20, 1 5 10 15 22",
    })
    void roundsHaveTheirFirstAndLast(
            int first, int last, double room, double labelled, String expected) {
        assertEquals(expected, labels(Ticks.whole(first, last, room, labelled)));
    }

    @Test
    void anAxisOfLogarithmsGivesEachFactorTheSameRoom() {
        Axis axis = new Axis(true, 1, 100, 200, 0);
        assertEquals(200, axis.at(1), 1e-9);
        assertEquals(100, axis.at(10), 1e-9);
        assertEquals(0, axis.at(100), 1e-9);
        // R 4.2.2: 200 - 200 * log(30) / log(100) is 52.28787452803376
        assertEquals(52.28787452803376, axis.at(30), 1e-9);
        assertEquals(0, axis.at(1e6), "beyond its end");
    }

    @ParameterizedTest
    @CsvSource({
        "5, 5, true",
        "5, 5, false",
        "0, 0, true",
        "0, 0, false",
        "-2, -2, false",
        "1e-99, 1e99, true",
        "-1e99, 1e99, false",
        "1000, 1000.0000001, true",
        "0, 1e-300, false"
    })
    void anAxisAlwaysHasALengthAndMarks(double one, double other, boolean log) {
        Axis axis = Axis.holding(new double[] {one, other, Double.NaN}, log, 150, 0);
        assertTrue(axis.holds(one) && axis.holds(other));
        assertTrue(axis.at(one) > 0 && axis.at(one) < 150, () -> "" + axis);
        assertFalse(axis.down(26).isEmpty(), () -> "" + axis);
        assertFalse(axis.across(11).isEmpty(), () -> "" + axis);
    }

    @Test
    void noNumberAtAllStillHasAnAxis() {
        assertFalse(Axis.holding(new double[0], true, 0, 100).across(11).isEmpty());
    }

    @Test
    void anAxisWithoutLengthIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Axis(false, 1, 1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> new Axis(true, 0, 1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> new Axis(false, Double.NaN, 1, 0, 1));
    }
}
