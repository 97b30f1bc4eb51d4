package rigside.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.protocol.Measure.Compared;

/** What is meaningful, from the words of a file to the analysis scale. */
class BandTest {
    /** One unit in the last place of the logarithm; the rest is exact. */
    private static final double ROUNDING = 1e-15;

    @ParameterizedTest(name = "ratio {0} and spread {3}")
    @CsvSource({
        // words, limits as ratios, spread in words, spread as geometric standard deviation
        "10 %, 0.909090909090909091, 1.1, 5 %, 1.05",
        "10%, 0.909090909090909091, 1.1, 5%, 1.05",
        "2 times, 0.5, 2, 1.5 times, 1.5",
        "0.8 to 1.25, 0.8, 1.25, 2times, 2",
        "0.5 to 1.1, 0.5, 1.1, 0.5 %, 1.005",
    })
    void aRatioIsReadInNaturalLogs(
            String words, double low, double high, String spread, double factor) {
        Compared compared = compared("meaningful: 10 %", words, spread);
        assertEquals(Math.log(low), compared.bandLow(), ROUNDING);
        assertEquals(Math.log(high), compared.bandHigh(), ROUNDING);
        assertEquals(Math.log(factor), compared.expectedSpread().getAsDouble(), ROUNDING);
        assertEquals(words, compared.meaningful());
    }

    @ParameterizedTest(name = "difference {0} and spread {3}")
    @CsvSource({
        // 1 mmH2O is 9.80665 Pa
        "25 Pa, -25, 25, 10 Pa, 10",
        "-10 to 25 Pa, -10, 25, 1 mmH2O, 9.80665",
        "-10 Pa to 1 mmH2O, -10, 9.80665, 0.1 hPa, 10",
    })
    void aDifferenceIsReadInTheUnitOfItsMeasure(
            String words, double low, double high, String spread, double size) {
        Compared compared = compared("meaningful: 25 Pa", words, spread);
        assertEquals(low, compared.bandLow(), 1e-14);
        assertEquals(high, compared.bandHigh(), 1e-14);
        assertEquals(size, compared.expectedSpread().getAsDouble(), 1e-14);
    }

    @ParameterizedTest
    @CsvSource({"2 degC, 2", "2 K, 2"})
    void aDifferenceOfTemperaturesHasNoZeroPoint(String words, double size) {
        String text =
                Shipped.text("rigside/protocol/base.yaml")
                        .replace("unit: g\n", "unit: degC\n")
                        .replace(
                                "resolution: 0.1 g",
                                "resolution: 0.1 K\n    compare: difference\n    meaningful: "
                                        + words);
        Measure measure = read(text).measures().get(3);
        assertEquals(size, measure.compared().orElseThrow().bandHigh(), 1e-12);
        assertEquals(0.1, measure.resolution(), 1e-12);
    }

    private static Compared compared(String from, String words, String spread) {
        String text =
                Shipped.text("rigside/protocol/base.yaml")
                        .replace("    expected-spread: 10 Pa\n", "")
                        .replace(from, "meaningful: " + words + "\n    expected-spread: " + spread);
        return read(text).measures().stream()
                .map(measure -> measure.compared().orElseThrow())
                .filter(compared -> compared.meaningful().equals(words))
                .findFirst()
                .orElseThrow();
    }

    private static Protocol read(String text) {
        assertEquals(java.util.List.of(), Shipped.problems(text));
        return ((Read.Good) ProtocolReader.read("x", text)).protocol();
    }
}
