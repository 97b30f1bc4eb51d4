package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class StudentTTest {

    static Stream<double[]> quantiles() {
        return Reference.rows("classical.json", "student_t_quantile").stream();
    }

    /** R 4.2.2 qt, 12 digits. */
    @ParameterizedTest
    @MethodSource("quantiles")
    void quantilesAreThoseOfTheReference(double[] row) {
        // For p near 1 the tail 1 - p itself is only good to 1e-16 / (1 - p).
        double slack = 5.1e-12 + 2e-16 / (1 - row[1]);
        assertEquals(row[2], StudentT.upperQuantile(1 - row[1], row[0]), slack * Math.abs(row[2]));
    }

    static Stream<double[]> tails() {
        return Reference.rows("classical.json", "student_t_cdf").stream();
    }

    /** R 4.2.2 pt, 12 digits, also far out in the tail. */
    @ParameterizedTest
    @MethodSource("tails")
    void tailsAreThoseOfTheReference(double[] row) {
        assertEquals(row[3], StudentT.upperTail(row[1], row[0]), 5.1e-12 * row[3]);
        assertEquals(row[2], StudentT.upperTail(-row[1], row[0]), 5.1e-12 * row[2]);
    }

    /** SciPy 1.17.1 stats.t.sf(t, df), all digits: near 0 the integrand is a broken power. */
    @ParameterizedTest
    @CsvSource({
        "1.25, 0.5, 0.34540207096934505",
        "1.25, 20, 0.008043330034150429",
        "2.5, 3.06708851495, 0.034658291429736046",
        "3.640365, 20, 3.7164508976829554e-05",
        "17.7765, 20, 6.190044512977602e-14",
        "41.5, 3.06708851495, 0.0018979336930422706",
        "136.875, 20, 9.414226302992535e-43"
    })
    void tailsBetweenWholeDegreesOfFreedomAreReached(double df, double t, double tail) {
        assertEquals(tail, StudentT.upperTail(t, df), 2e-13 * tail);
    }

    @ParameterizedTest
    @CsvSource({"1, 1e-12", "2, 1e-9", "7, 0.3", "98, 1e-7", "50.5, 0.01"})
    void theQuantileIsTheInverseOfTheTail(double df, double tail) {
        double t = StudentT.upperQuantile(tail, df);
        assertEquals(tail, StudentT.upperTail(t, df), 1e-12 * tail);
        assertEquals(-t, StudentT.upperQuantile(1 - tail, df), 3e-16 / tail * t + 1e-12 * t);
    }

    /** 1.959963984540054: the normal 0.975 quantile, R 4.2.2 qnorm(0.975). */
    @Test
    void manyDegreesOfFreedomAreTheNormalDistribution() {
        assertEquals(1.959963984540054, StudentT.upperQuantile(0.025, 1e9), 1e-8);
        // The angle's last digit is 1e-16, and sqrt(df) times that in t.
        double t = StudentT.upperQuantile(1e-6, 1e9);
        assertEquals(1e-6, StudentT.upperTail(t, 1e9), 4e-11 * 1e-6);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -1, Double.NaN})
    void impossibleTailsAreRefused(double tail) {
        assertThrows(IllegalArgumentException.class, () -> StudentT.upperQuantile(tail, 3));
    }

    @Test
    void theEdgesAreWhatTheyAre() {
        assertEquals(Double.NaN, StudentT.upperTail(Double.NaN, 3));
        assertEquals(0, StudentT.upperTail(Double.POSITIVE_INFINITY, 3));
        assertEquals(1, StudentT.upperTail(Double.NEGATIVE_INFINITY, 3));
        assertEquals(0.5, StudentT.upperTail(0, 3), 1e-15);
        assertEquals(0, StudentT.upperQuantile(0.5, 3));
    }
}
