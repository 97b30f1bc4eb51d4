package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class GrubbsTest {

    static Stream<double[]> criticalDistances() {
        return Reference.rows("classical.json", "grubbs_critical").stream();
    }

    /** R 4.2.2 qt, 9 digits. */
    @ParameterizedTest
    @MethodSource("criticalDistances")
    void criticalDistancesAreThoseOfTheReference(double[] row) {
        assertEquals(row[2], Grubbs.critical((int) row[0], row[1] / 2), 5.1e-9);
        assertEquals(row[3], Grubbs.critical((int) row[0], row[1]), 5.1e-9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"one_high", "none", "one_low"})
    void theFarthestValueIsFound(String set) {
        JsonNode node = Reference.read("classical.json").at("/grubbs_data/sets/" + set);
        Grubbs grubbs = Grubbs.of(Reference.doubles(node.get("y")), 0.05);
        assertEquals(node.get("suspect_index_from_0").intValue(), grubbs.index());
        assertEquals(node.get("G").doubleValue(), grubbs.distance(), 5.1e-12 * 2.5);
        double chance = node.get("p_two_sided_bonferroni").doubleValue();
        assertEquals(chance < 0.05, grubbs.flagged());
        int n = node.get("y").size();
        assertEquals(chance, Grubbs.chance(n, grubbs.distance()), 1e-10 * chance);
    }

    /** NIST e-Handbook 1.3.5.17.1, one-sided .05: G 2.4687, critical 2.032. */
    @Test
    void thePublishedExampleIsReproduced() {
        double[] values = {199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57};
        Grubbs grubbs = Grubbs.of(values, 0.1);
        // The handbook cuts the fourth decimal (2.46876).
        assertEquals(2.4687, grubbs.distance(), 1e-4);
        assertEquals(2.032, grubbs.critical(), 5.1e-4);
        assertTrue(grubbs.flagged());
    }

    @Test
    void theChanceOfTheCriticalDistanceIsAlpha() {
        assertEquals(0.01, Grubbs.chance(7, Grubbs.critical(7, 0.005)), 1e-14);
        assertEquals(0, Grubbs.chance(4, 1.5), "the largest distance of four values");
        assertEquals(1, Grubbs.chance(4, 0.1));
        assertThrows(IllegalArgumentException.class, () -> Grubbs.chance(2, 0.7));
    }

    @Test
    void equalValuesHaveNoOutlier() {
        assertFalse(Grubbs.of(new double[] {3, 3, 3}, 0.05).flagged());
    }

    @Test
    void twoValuesAreTooFew() {
        assertThrows(IllegalArgumentException.class, () -> Grubbs.of(new double[] {1, 2}, 0.05));
        assertThrows(IllegalArgumentException.class, () -> Grubbs.critical(5, 0));
    }
}
