package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SummaryTest {

    /**
     * Certified digits reached, as log relative error. NumAcc3's own values lose six digits when
     * read as doubles (1000000.1 and its like), so no program working in doubles reaches ten there.
     */
    @ParameterizedTest(name = "{0}: mean to {1} digits, sd to {2}")
    @CsvSource({
        "Lew, 15, 14.5",
        "Lottery, 14.5, 14.5",
        "Mavro, 15, 12.8",
        "NumAcc1, 15, 15",
        "NumAcc2, 14, 14",
        "NumAcc3, 15, 9.4",
        "PiDigits, 14.5, 14.5"
    })
    void certifiedValuesAreReached(String dataset, double meanDigits, double sdDigits) {
        List<String[]> certified = Reference.csv("nist/certified-univariate.csv");
        String[] row =
                certified.stream().filter(r -> r[0].equals(dataset)).findFirst().orElseThrow();
        double[] values =
                Reference.csv("nist/" + dataset + ".csv").stream()
                        .mapToDouble(r -> Double.parseDouble(r[0]))
                        .toArray();
        Summary summary = Summary.of(values);
        assertEquals(Integer.parseInt(row[1]), summary.n());
        assertDigits(Double.parseDouble(row[2]), summary.mean(), meanDigits);
        assertDigits(Double.parseDouble(row[3]), summary.sd(), sdDigits);
    }

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

    private static void assertDigits(double certified, double actual, double digits) {
        double error = Math.abs(actual - certified) / Math.abs(certified);
        double reached = error == 0 ? 16 : -Math.log10(error);
        assertTrue(reached >= digits, certified + " but " + actual + ": " + reached + " digits");
    }

    private static void assertClose(JsonNode expected, double actual, double slack) {
        double value = expected.doubleValue();
        assertEquals(value, actual, slack + 5.1e-12 * Math.abs(value));
    }
}
