package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DigitsTest {

    @ParameterizedTest
    @CsvSource({
        "1.2,1.20",
        "1.5,1.50",
        "0.90909,0.909",
        "12.345,12.3",
        "153.2,153",
        "1268.4,1268",
        "999.7,1000",
        "9999.6,10_000",
        "15324,15_300",
        "260499,260_000",
        "-15324,-15_300",
        "9.999,10.0",
        "-0.0514,-0.0514",
        "0.00051449,0.000514",
        "1.234e-5,0.0000123",
        "1.2345e12,1.23E+12",
        "NaN,NaN",
        "0,0"
    })
    void threeDigitsAreShown(double value, String figures) {
        assertEquals(figures.replace('_', '\u00A0'), Digits.three(value));
    }

    @Test
    void whatIsAtLeastIsNeverMoreThanItWas() {
        assertEquals("1269", Digits.threeAtLeast(1269.9));
        assertEquals("1.99", Digits.threeAtLeast(1.999));
        assertEquals("260\u00A0000", Digits.threeAtLeast(260_999));
    }

    @Test
    void numbersThatDifferAreShownToDiffer() {
        assertEquals(List.of("1.10", "1.20"), Digits.apart(1.1, 1.2));
        assertEquals(List.of("1.1003", "1.1000", "1.1000"), Digits.apart(1.1003, 1.1, 1.1));
        assertEquals(
                List.of("12\u00A0343", "12\u00A0341"), Digits.apart(12_343, 12_341), "grouped");
    }

    @Test
    void noiseOfTheArithmeticIsNoDifference() {
        assertEquals(List.of("1.10", "1.10"), Digits.apart(1.1, Math.exp(Math.log(1.1)) + 1e-15));
    }

    @ParameterizedTest
    @CsvSource({"0,0 %", "0.004,less than 1 %", "0.123,12 %", "0.996,more than 99 %", "1,100 %"})
    void aChanceIsNeverRoundedToCertainty(double share, String words) {
        assertEquals(words, Digits.percent(share));
    }
}
