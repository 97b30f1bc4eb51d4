package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ExactLimitsTest {

    static Stream<double[]> shares() {
        return Reference.rows("classical.json", "binomial_limits").stream();
    }

    /** R 4.2.2 binom.test, 10 digits. */
    @ParameterizedTest
    @MethodSource("shares")
    void sharesAreThoseOfTheReference(double[] row) {
        Limits limits = ExactLimits.binomial((int) row[0], (int) row[1], row[2]);
        assertEquals(row[3], limits.low(), 5.1e-11);
        assertEquals(row[4], limits.high(), 5.1e-11);
        assertEquals(
                row[5], ExactLimits.binomialLower((int) row[0], (int) row[1], row[2]), 5.1e-11);
    }

    static Stream<double[]> counts() {
        return Reference.rows("classical.json", "poisson_limits").stream();
    }

    /** R 4.2.2 qgamma, 10 digits. */
    @ParameterizedTest
    @MethodSource("counts")
    void countsAreThoseOfTheReference(double[] row) {
        Limits limits = ExactLimits.poisson((long) row[0], row[1]);
        assertEquals(row[2], limits.low(), 5.1e-10 * row[2]);
        assertEquals(row[3], limits.high(), 5.1e-10 * row[3]);
        assertEquals(row[4], ExactLimits.poissonUpper((long) row[0], row[1]), 5.1e-10 * row[4]);
    }

    /**
     * R 4.2.2 poisson.test, ten digits: the central limits. Its p goes by another rule (all
     * outcomes no likelier than this one) and the program asks for none.
     */
    @Test
    void ratiosOfRatesAreThoseOfTheReference() {
        for (double[] row : Reference.rows("classical.json", "poisson_rate_ratio")) {
            Limits limits =
                    ExactLimits.rateRatio((int) row[0], row[1], (int) row[2], row[3], row[4]);
            double ratio = row[0] / row[1] / (row[2] / row[3]);
            assertEquals(Double.isNaN(row[5]) ? Double.POSITIVE_INFINITY : row[5], ratio, 1e-9);
            assertTrue(limits.low() <= ratio && limits.high() >= ratio);
            assertEquals(row[6], limits.low(), 5.1e-10 * row[6]);
            if (Double.isNaN(row[7])) {
                assertEquals(Double.POSITIVE_INFINITY, limits.high());
            } else {
                assertEquals(row[7], limits.high(), 5.1e-10 * row[7]);
            }
        }
    }

    /** R 4.2.2 qchisq, ten digits. */
    @Test
    void spreadFactorsAreThoseOfTheReference() {
        for (double[] row : Reference.rows("classical.json", "sd_upper_limit_factor")) {
            assertEquals(row[2], ExactLimits.spreadFactor((int) row[0], row[1]), 5.1e-10 * row[2]);
        }
    }

    /** One pass of one: the lower limit is the tail itself. */
    @Test
    void onePassOfOneSaysLittle() {
        assertEquals(0.025, ExactLimits.binomial(1, 1, 0.95).low(), 1e-15);
        assertEquals(0.05, ExactLimits.binomialLower(1, 1, 0.95), 1e-15);
        assertEquals(-Math.log(0.05), ExactLimits.poissonUpper(0, 0.95), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"-1, 3, 0.9", "4, 3, 0.9", "0, 0, 0.9", "1, 3, 1", "1, 3, 0", "1, 3, NaN"})
    void impossibleSharesAreRefused(int passes, int n, double confidence) {
        assertThrows(
                IllegalArgumentException.class, () -> ExactLimits.binomial(passes, n, confidence));
    }

    @Test
    void aNegativeCountIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> ExactLimits.poisson(-1, 0.95));
    }
}
