package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SummaryTest {

    @ParameterizedTest
    @ValueSource(strings = {"inhalation_time_pairs", "tight_pairs", "three_pairs"})
    void theIntervalOfDifferencesIsThatOfThePairedTest(String set) {
        JsonNode node = Reference.read("classical.json").at("/data_tests/sets/" + set);
        double[] a = Reference.doubles(node.get("A"));
        double[] b = Reference.doubles(node.get("B"));
        double[] d = new double[a.length];
        Arrays.setAll(d, i -> b[i] - a[i]);
        JsonNode paired = node.get("paired");
        Interval interval = Summary.of(d).interval(paired.get("confidence").doubleValue());
        // 12 digits in the file; the differences have a rounding error of 1e-15 of the values.
        assertClose(paired.get("estimate"), interval.estimate(), 1e-13);
        assertClose(paired.get("standard_error"), interval.standardError(), 1e-13);
        assertClose(paired.get("ci").get(0), interval.lower(), 1e-12);
        assertClose(paired.get("ci").get(1), interval.upper(), 1e-12);
        assertEquals(paired.get("df").doubleValue(), interval.degreesOfFreedom());
        assertClose(paired.get("t"), interval.estimate() / interval.standardError(), 1e-11);
    }

    @Test
    void tooFewValuesGiveNoNumber() {
        assertEquals(new Summary(0, Double.NaN, Double.NaN, Double.NaN, Double.NaN), Summary.of());
        assertEquals(new Summary(1, 4, Double.NaN, 4, 4), Summary.of(4));
        assertThrows(IllegalArgumentException.class, () -> Summary.of(4).interval(0.95));
    }

    @Test
    void whatIsNoNumberSpreads() {
        Summary summary = Summary.of(1, Double.NaN, 3);
        assertTrue(Double.isNaN(summary.mean()));
        assertTrue(Double.isNaN(summary.sd()));
        assertTrue(Double.isNaN(summary.least()));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.5, Double.NaN})
    void impossibleConfidencesAreRefused(double confidence) {
        assertThrows(IllegalArgumentException.class, () -> Summary.of(1, 2).interval(confidence));
    }

    @Test
    void spreadIsRelativeToTheSizeOfTheMean() {
        Summary summary = Summary.of(-8, -12);
        assertEquals(Math.sqrt(8) / 10, summary.coefficientOfVariation(), 1e-15);
        assertEquals(2, summary.standardError(), 1e-15);
        assertEquals(-12, summary.least());
        assertEquals(-8, summary.greatest());
    }

    private static void assertClose(JsonNode expected, double actual, double slack) {
        double value = expected.doubleValue();
        assertEquals(value, actual, slack + 5.1e-12 * Math.abs(value));
    }
}
