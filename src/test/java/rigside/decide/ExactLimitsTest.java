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

    /** R 4.2.2 binom.test, 10 digits: central limits are one-sided ones of both outcomes. */
    @ParameterizedTest
    @MethodSource("shares")
    void sharesAreThoseOfTheReference(double[] row) {
        int passes = (int) row[0];
        int n = (int) row[1];
        double central = (1 + row[2]) / 2;
        assertEquals(row[3], ExactLimits.binomialLower(passes, n, central), 5.1e-11);
        assertEquals(row[4], 1 - ExactLimits.binomialLower(n - passes, n, central), 5.1e-11);
        assertEquals(row[5], ExactLimits.binomialLower(passes, n, row[2]), 5.1e-11);
    }

    static Stream<double[]> counts() {
        return Reference.rows("classical.json", "poisson_limits").stream();
    }

    /** R 4.2.2 qgamma, 10 digits: half of chi-square quantiles (Garwood 1936). */
    @ParameterizedTest
    @MethodSource("counts")
    void countsAreThoseOfTheReference(double[] row) {
        double tail = (1 - row[1]) / 2;
        double low = row[0] == 0 ? 0 : ExactLimits.chiSquareQuantile(tail, 2 * row[0]) / 2;
        assertEquals(row[2], low, 5.1e-10 * row[2]);
        assertEquals(row[3], upper(row[0], 1 - tail), 5.1e-10 * row[3]);
        assertEquals(row[4], upper(row[0], row[1]), 5.1e-10 * row[4]);
    }

    private static double upper(double count, double confidence) {
        return ExactLimits.chiSquareQuantile(confidence, 2 * count + 2) / 2;
    }

    /**
     * R 4.2.2 poisson.test, ten digits: given their sum the first count is binomial with share r /
     * (1 + r), r the ratio of the rates times that of the exposures. Its p goes by another rule
     * (all outcomes no likelier than this one), which nothing here asks for.
     */
    @Test
    void ratiosOfRatesAreThoseOfTheReference() {
        for (double[] row : Reference.rows("classical.json", "poisson_rate_ratio")) {
            int first = (int) row[0];
            int second = (int) row[2];
            double central = (1 + row[4]) / 2;
            double exposures = row[3] / row[1];
            assertReached(row[5], (double) first / second * exposures);
            assertReached(row[6], odds(first, first + second, central) * exposures);
            assertReached(row[7], exposures / odds(second, first + second, central));
        }
    }

    private static double odds(int events, int all, double confidence) {
        double share = ExactLimits.binomialLower(events, all, confidence);
        return share / (1 - share);
    }

    /** What the file writes as a word is infinite. */
    private static void assertReached(double expected, double actual) {
        if (Double.isNaN(expected)) {
            assertEquals(Double.POSITIVE_INFINITY, actual);
        } else {
            assertEquals(expected, actual, 5.1e-10 * expected);
        }
    }

    /** R 4.2.2 qchisq, ten digits: the true sd is below factor times that of n values. */
    @Test
    void spreadFactorsAreThoseOfTheReference() {
        for (double[] row : Reference.rows("classical.json", "sd_upper_limit_factor")) {
            double df = row[0] - 1;
            double factor = Math.sqrt(df / ExactLimits.chiSquareQuantile(1 - row[1], df));
            assertEquals(row[2], factor, 5.1e-10 * row[2]);
        }
    }

    /** One pass of one: the lower limit is the tail itself. */
    @Test
    void onePassOfOneSaysLittle() {
        assertEquals(0.05, ExactLimits.binomialLower(1, 1, 0.95), 1e-15);
        assertEquals(0, ExactLimits.binomialLower(0, 5, 0.95));
        assertTrue(ExactLimits.binomialLower(5, 5, 0.95) < 0.55);
    }

    @ParameterizedTest
    @CsvSource({"-1, 3, 0.9", "4, 3, 0.9", "0, 0, 0.9", "1, 3, 1", "1, 3, 0", "1, 3, NaN"})
    void impossibleSharesAreRefused(int passes, int n, double confidence) {
        assertThrows(
                IllegalArgumentException.class,
                () -> ExactLimits.binomialLower(passes, n, confidence));
    }

    /** SciPy 1.17.1 stats.f.ppf. */
    @ParameterizedTest
    @CsvSource({
        "6, 2, 9.325530454639292, 0.2887416119868394",
        "20, 9, 2.29832236139197, 0.5089438477920591"
    })
    void limitsOfARatioOfVariancesGoByQuantilesOfF(
            double df, double otherDf, double upper, double lower) {
        Limits limits = ExactLimits.varianceRatio(0.7, df, otherDf, 0.8);
        // The last digits of the incomplete beta function.
        assertEquals(0.7 / upper, limits.low(), 1e-12);
        assertEquals(0.7 / lower, limits.high(), 1e-12);
    }

    @Test
    void aRatioOfVariancesNeedsFreedomOnBothSides() {
        assertThrows(IllegalArgumentException.class, () -> ExactLimits.varianceRatio(1, 0, 2, 0.8));
        assertThrows(
                IllegalArgumentException.class,
                () -> ExactLimits.varianceRatio(Double.NaN, 2, 2, 0.8));
        assertThrows(IllegalArgumentException.class, () -> ExactLimits.varianceRatio(1, 2, 2, 1));
    }
}
