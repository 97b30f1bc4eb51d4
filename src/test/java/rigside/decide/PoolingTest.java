package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class PoolingTest {

    @Test
    void oneSessionPooledIsItsOrdinaryInterval() {
        double[] differences = {0.21, 0.10, 0.15, 0.34};
        Pooling pooled = Pooling.of(List.of(differences), 0);
        Interval plain = Summary.of(differences).interval(0.95);
        assertTrue(pooled.effects().isEmpty());
        assertEquals(plain.lower(), pooled.interval(0.95).lower(), 1e-15);
        assertEquals(plain.upper(), pooled.interval(0.95).upper(), 1e-15);
    }

    /** Of pairs of two sessions by hand: (2 + 0.5) / 3 with three degrees of freedom. */
    @Test
    void theSpreadWithinIsThatOfAllSessionsTogether() {
        Pooling pooled = Pooling.of(List.of(new double[] {1, 2, 3}, new double[] {5, 6}), 0);
        assertEquals(Math.sqrt(2.5 / 3), pooled.within(), 1e-15);
        assertEquals(3, pooled.freedom());
        assertEquals(2, pooled.effects().orElseThrow().estimates().get(0).value());
        assertEquals(
                2.5 / 3 / 2, pooled.effects().orElseThrow().estimates().get(1).variance(), 1e-15);
    }

    @Test
    void aSpreadBelowRoundingIsTakenAsThatOfRounding() {
        Pooling pooled = Pooling.of(List.of(new double[] {1, 1, 1}, new double[] {2, 2}), 0.1);
        assertEquals(0.1, pooled.within());
        assertThrows(
                IllegalArgumentException.class,
                () -> Pooling.of(List.of(new double[] {1, 1}, new double[] {2, 2}), 0));
    }

    @Test
    void aSessionWithOneRoundCannotBePooled() {
        assertThrows(
                IllegalArgumentException.class,
                () -> Pooling.of(List.of(new double[] {1}, new double[] {2, 3}), 0));
        assertThrows(IllegalArgumentException.class, () -> Pooling.of(List.of(), 0));
    }
}
