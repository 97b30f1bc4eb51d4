package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

class OrderEffectTest {

    /** The pooled two-sample test of the reference, halved: R's t.test of the two orders. */
    @Test
    void theOrderEffectIsHalfThePooledDifferenceOfTheOrders() {
        double[] otherFirst = Reference.column("plant_growth", 1, row -> row[0].equals("ctrl"));
        double[] referenceFirst = Reference.column("plant_growth", 1, row -> row[0].equals("trt2"));
        JsonNode pooled =
                Reference.read("datasets.json").at("/datasets/plant_growth/trt2_vs_ctrl/pooled");
        TTest order = OrderEffect.of(referenceFirst, otherFirst, 0);
        assertEquals(pooled.get("estimate").doubleValue() / 2, order.estimate(), 1e-11);
        assertEquals(pooled.get("standard_error").doubleValue() / 2, order.standardError(), 1e-11);
        double p = pooled.get("p_two_sided").doubleValue();
        assertEquals(p, order.p(), 1e-9 * p);
        assertEquals(18, order.degreesOfFreedom());
    }

    @Test
    void anAddedOrderEffectIsFoundWhateverTheConditionsDiffer() {
        // The second donning always takes 2 more; conditions differ by 5, with the same noise.
        double[] referenceFirst = {5 + 2 + 0.1, 5 + 2 - 0.1};
        double[] otherFirst = {5 - 2 + 0.1, 5 - 2 - 0.1};
        assertEquals(2, OrderEffect.of(referenceFirst, otherFirst, 0).estimate(), 1e-14);
        assertThrows(
                IllegalArgumentException.class,
                () -> OrderEffect.of(new double[] {1, 2, 3}, new double[0], 0));
        assertThrows(
                IllegalArgumentException.class,
                () -> OrderEffect.of(new double[] {1}, new double[] {2}, 0));
    }
}
