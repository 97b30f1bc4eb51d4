package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ToleranceTest {

    private static final double[] LOG_FACTORS = {4.9, 5.3, 4.6, 5.1, 5.6, 4.8};

    @Test
    void noncentralTailsAreThoseOfTheReference() {
        for (double[] row : Reference.rows("classical.json", "noncentral_t_cdf")) {
            NoncentralT t = new NoncentralT(row[0], row[1]);
            String where = "df " + row[0] + ", shift " + row[1] + ", t " + row[2];
            // The file's two roads to these values differ by 7.9e-13 at most.
            assertEquals(row[3], t.lowerTail(row[2]), 1e-12, where);
            assertEquals(row[4], t.upperTail(row[2]), 1e-12, where);
            assertEquals(1, t.lowerTail(row[2]) + t.upperTail(row[2]), 1e-13, where);
        }
    }

    /** The file is good to about 1e-9. */
    @Test
    void noncentralQuantilesAreThoseOfTheReference() {
        for (double[] row : Reference.rows("classical.json", "noncentral_t_quantile")) {
            assertEquals(
                    row[3],
                    new NoncentralT(row[0], row[1]).quantile(row[2]),
                    1e-9 * Math.max(1, Math.abs(row[3])),
                    "df " + row[0] + ", shift " + row[1] + ", p " + row[2]);
        }
    }

    @Test
    void withoutShiftItIsStudentsT() {
        for (double df : new double[] {1, 2, 9, 40}) {
            NoncentralT t = new NoncentralT(df, 0);
            for (double at : new double[] {0, 0.5, 2, 9}) {
                assertEquals(StudentT.upperTail(at, df), t.upperTail(at), 1e-13);
            }
        }
    }

    @Test
    void theDensityIsTheSlopeOfTheTail() {
        NoncentralT t = new NoncentralT(4, 1.5);
        double slope = (t.lowerTail(2.001) - t.lowerTail(1.999)) / 0.002;
        // A central difference is off by h^2/6 of the third derivative, here below 1e-7.
        assertEquals(slope, t.density(2), 1e-7);
    }

    static Stream<double[]> factors() {
        return Reference.rows("classical.json", "tolerance_factor_one_sided").stream();
    }

    /** 9 digits in the file. */
    @ParameterizedTest
    @MethodSource("factors")
    void factorsAreThoseOfTheReference(double[] row) {
        assertEquals(row[3], Tolerance.factor((int) row[0], row[1], row[2]), 5.1e-9 * row[3]);
    }

    /** NIST e-Handbook 7.2.6.3 (exact form), and ISO 16269-6; 7 digits. */
    @ParameterizedTest
    @CsvSource({"43, 0.9, 0.99, 1.873954", "10, 0.95, 0.95, 2.910963"})
    void publishedFactorsAreReached(int n, double coverage, double confidence, double factor) {
        assertEquals(factor, Tolerance.factor(n, coverage, confidence), 5.1e-7);
    }

    @Test
    void theShareReachingTheLowerBoundIsTheCoverageOfThatBound() {
        for (double coverage : new double[] {0.5, 0.9, 0.99}) {
            double bound = Tolerance.lowerBound(LOG_FACTORS, coverage, 0.95);
            assertEquals(coverage, Tolerance.shareReaching(LOG_FACTORS, bound, 0.95), 1e-10);
        }
    }

    @Test
    void farLevelsAreReachedByAllOrNone() {
        assertEquals(1, Tolerance.shareReaching(LOG_FACTORS, -100, 0.95), 1e-12);
        assertEquals(0, Tolerance.shareReaching(LOG_FACTORS, 100, 0.95), 1e-12);
        assertEquals(Double.NaN, Tolerance.shareReaching(new double[] {2, 2, 2}, 1, 0.95));
    }

    @ParameterizedTest
    @CsvSource({"1, 0.9, 0.9", "5, 0, 0.9", "5, 1, 0.9", "5, 0.9, 0", "5, 0.9, NaN"})
    void impossibleBoundsAreRefused(int n, double coverage, double confidence) {
        assertThrows(
                IllegalArgumentException.class, () -> Tolerance.factor(n, coverage, confidence));
    }
}
