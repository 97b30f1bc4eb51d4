package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class TrendTest {

    @Test
    void aTrendNeedsThreeValuesAndSomeSpread() {
        assertThrows(IllegalArgumentException.class, () -> RankTrendTest.line(new double[] {1, 2}));
        assertFalse(RankTrendTest.line(new double[] {3, 3, 3}).flagged(0.05));
        assertTrue(RankTrendTest.line(new double[] {1, 2, 3}).flagged(0.05));
    }

    /**
     * The rail data without one value at the end and one in the middle; NumPy 2.4.6 linalg.lstsq
     * with a column a rail and one of places 0, 1, 2, SciPy 1.17.1 stats.t.sf.
     */
    @Test
    void aCommonSlopeIsThatOfOneLineThroughCentredGroups() {
        List<double[]> places = new ArrayList<>();
        List<double[]> values = new ArrayList<>();
        for (int rail = 1; rail <= 6; rail++) {
            String name = String.valueOf(rail);
            double[] y = Reference.column("rail", 1, row -> row[0].equals(name));
            places.add(rail == 2 ? new double[] {0, 1} : new double[] {0, 1, 2});
            values.add(rail == 2 ? Arrays.copyOf(y, 2) : y);
            if (rail == 3) {
                places.set(2, new double[] {0, 2});
                values.set(2, new double[] {y[0], y[2]});
            }
        }
        TTest trend = Trend.within(places, values, 0);
        assertEquals(1.8571428571428577, trend.estimate(), 1e-14);
        assertEquals(1.0155009239189399, trend.standardError(), 1e-13);
        assertEquals(9, trend.degreesOfFreedom());
        assertEquals(0.1006880972494856, trend.p(), 1e-13);
    }

    @Test
    void aTrendAsFineAsItsRoundingIsNone() {
        // Exactly on a line, one step of 0.1 each: without the floor p is 0.
        List<double[]> places = List.of(new double[] {0, 1, 2, 3});
        List<double[]> values = List.of(new double[] {5.0, 5.1, 5.2, 5.3});
        assertTrue(Trend.within(places, values, 0).p() < 1e-12);
        TTest floored = Trend.within(places, values, 0.1 / Math.sqrt(12));
        // By hand: sum of squared places about their mean is 5.
        assertEquals(0.1 / Math.sqrt(12) / Math.sqrt(5), floored.standardError(), 1e-15);
        assertThrows(
                IllegalArgumentException.class,
                () -> Trend.within(List.of(new double[] {1, 1, 1, 1}), values, 0));
    }
}
