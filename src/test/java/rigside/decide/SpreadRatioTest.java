package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class SpreadRatioTest {

    /** Variance of the other condition over that of the reference. */
    static SpreadRatio ratio(double[] reference, double[] other) {
        double one = Summary.of(reference).sd();
        double two = Summary.of(other).sd();
        return new SpreadRatio(two * two / (one * one), other.length - 1.0, reference.length - 1.0);
    }

    @Test
    void fTailsAndQuantilesAreThoseOfTheReference() {
        for (double[] row : Reference.rows("classical.json", "f_upper_tail")) {
            // Beta functions of Commons Math keep about twelve digits.
            assertEquals(row[3], SpreadRatio.upperTail(row[2], row[0], row[1]), 1e-11);
        }
        for (double[] row : Reference.rows("classical.json", "f_quantile")) {
            assertEquals(1 - row[2], SpreadRatio.upperTail(row[3], row[0], row[1]), 1e-10);
        }
    }

    @Test
    void equalValuesHaveNoSpreadRatio() {
        SpreadRatio both = ratio(new double[] {1, 1}, new double[] {2, 2});
        assertFalse(both.flagged(0.05));
        SpreadRatio one = ratio(new double[] {1, 1}, new double[] {2, 3});
        assertEquals(Double.POSITIVE_INFINITY, one.f());
        assertEquals(0, one.p());
    }

    /** SciPy 1.17.1: stats.pearsonr(b + a, b - a); ratio of NumPy's std with ddof 1. */
    @Test
    void spreadsOfPairsAreComparedByTheirSumsAndDifferences() {
        PairedSpread shoes =
                PairedSpread.of(
                        Reference.column("shoes", 1, row -> true),
                        Reference.column("shoes", 2, row -> true));
        assertEquals(1.027388835535036, shoes.ratio(), 1e-13);
        assertEquals(0.17392895598219488, shoes.test().estimate(), 1e-13);
        assertEquals(0.6308326965179766, shoes.test().p(), 1e-12);
        PairedSpread immer =
                PairedSpread.of(
                        Reference.column("immer", 2, row -> true),
                        Reference.column("immer", 3, row -> true));
        assertEquals(0.8465932006715996, immer.ratio(), 1e-13);
        assertEquals(-0.19221826387590019, immer.test().estimate(), 1e-13);
        assertEquals(0.308860441565669, immer.test().p(), 1e-12);
        assertEquals(28, immer.test().degreesOfFreedom());
    }

    @Test
    void pairsWithoutSpreadGiveNoSpreadTest() {
        double[] same = {2, 2, 2};
        assertFalse(PairedSpread.of(same, same).test().flagged(0.05));
        assertThrows(
                IllegalArgumentException.class,
                () -> PairedSpread.of(new double[] {1, 2}, new double[] {2, 3}));
    }
}
