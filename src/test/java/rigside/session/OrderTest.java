package rigside.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigside.protocol.Plan;

class OrderTest {
    private static final List<String> THREE = List.of("a", "b", "c");

    @Test
    void asListedNeverChanges() {
        assertEquals(THREE, Order.of(THREE, Plan.Order.AS_LISTED, 1, 5));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5})
    void balancedGivesEachConditionEachTurnOnceInABlock(int size) {
        List<String> conditions = List.of("a", "b", "c", "d", "e").subList(0, size);
        for (long seed = 0; seed < 50; seed++) {
            for (int block = 0; block < 3; block++) {
                Map<String, Integer> seen = new HashMap<>();
                for (int round = 1; round <= size; round++) {
                    List<String> order =
                            Order.of(conditions, Plan.Order.BALANCED, seed, block * size + round);
                    for (int turn = 0; turn < size; turn++) {
                        seen.merge(order.get(turn) + turn, 1, Integer::sum);
                    }
                }
                assertEquals(size * size, seen.size(), "every condition in every turn");
            }
        }
    }

    @Test
    void theFirstTurnFallsToEachConditionAboutEquallyOftenOverSeeds() {
        for (Plan.Order order : List.of(Plan.Order.BALANCED, Plan.Order.RANDOM)) {
            int first = 0;
            int seeds = 4000;
            for (long seed = 0; seed < seeds; seed++) {
                first += Order.of(List.of("a", "b"), order, seed, 1).get(0).equals("a") ? 1 : 0;
            }
            assertEquals(
                    0.5,
                    first / (double) seeds,
                    4 * Math.sqrt(0.25 / seeds),
                    "4 binomial standard errors");
        }
    }

    @Test
    void theSameSeedGivesTheSameOrderAndAnotherSeedAnother() {
        assertEquals(orders(11), orders(11));
        assertNotEquals(orders(11), orders(12));
    }

    private static List<List<String>> orders(long seed) {
        List<List<String>> orders = new ArrayList<>();
        for (int round = 1; round <= 20; round++) {
            orders.add(Order.of(THREE, Plan.Order.RANDOM, seed, round));
        }
        return orders;
    }
}
