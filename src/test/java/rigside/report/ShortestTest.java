package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShortestTest {
    /**
     * Python 3.11.7: repr(float(...)) of each, which gives the shortest, digits and no exponent.
     */
    @ParameterizedTest
    @CsvSource({
        "12.4, 12.4",
        "0.1, 0.1",
        "2.0E-3, 0.002",
        "2.2250738585072014E-308, 2.2250738585072014E-308",
        "1.7976931348623157E308, 1.7976931348623157E+308",
        "0.30000000000000004, 0.30000000000000004",
        "2.0E23, 2E+23",
        "123456789012, 123456789012",
        "-0.0, 0",
        "100, 100"
    })
    void aNumberHasTheFewestDigitsThatGiveItBack(double number, String written) {
        assertEquals(written, Shortest.of(number));
    }

    @Test
    void everyNumberReadsBackAsItself() {
        Random random = new Random(20261128);
        for (int i = 0; i < 20_000; i++) {
            double number = Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(number)) {
                String written = Shortest.of(number);
                assertEquals(number, Double.parseDouble(written));
                assertTrue(written.matches("-?[0-9]+(\\.[0-9]+)?(E[+-][0-9]+)?"), written);
            }
        }
    }
}
