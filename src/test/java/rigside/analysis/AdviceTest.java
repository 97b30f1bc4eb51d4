package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.decide.Forecast;
import rigside.decide.Verdict;
import rigside.protocol.Protocol;

class AdviceTest {
    private static final Map<String, String> PLANS =
            Map.of(
                    "rounds",
                    "fewest: 3\n  most: 10",
                    "donnings",
                    "fewest: 3\n  most: 10\n  design: independent",
                    "trials",
                    "fewest: 3\n  most: 10\n  design: independent\n  replicates: trials");

    private static final Rows FOUR =
            new Rows(List.of(5.0, 5.0, 5.0, 5.0), List.of(6.0, 6.0, 6.0, 6.0), 0, List.of());

    /** A donning has two trials. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    rounds   | 2 | 4 | about 2 more rounds are needed (in 8 of 10 cases between 1 and 4)
                    donnings | 1 | 1 | about 1 more value per condition is needed
                    donnings | 3 | 5 | about 3 more values per condition are needed (in 8 of 10 cases between 1 and 5)
                    trials   | 2 | 2 | about 1 more donning of each condition is needed
                    trials   | 3 | 5 | about 2 more donnings of each condition are needed (in 8 of 10 cases between 1 and 3)
                    """)
    void furtherRepeatsAreCountedAsTheyAreMade(String plan, int median, int high, String more) {
        assertEquals(
                "Not settled yet: " + more + "; the chance to settle it within the plan is 83 %.",
                next(plan, median, high));
    }

    @Test
    void ofTheNextRoundItsOwnChanceIsSaid() {
        assertEquals(
                "Not settled yet: another round (one donning of each) settles it with a chance of"
                        + " 53 %, the whole plan with 83 %.",
                next("rounds", 1, 1));
    }

    @Test
    void withoutAnUpperEndTheLowerOneIsSaid() {
        assertEquals(
                "Not settled yet: about 3 more rounds are needed (in 9 of 10 cases at least 1); the"
                        + " chance to settle it within the plan is 83 %.",
                next("rounds", 3, OptionalInt.empty()));
    }

    private static String next(String plan, int median, int high) {
        return next(plan, median, OptionalInt.of(high));
    }

    private static String next(String plan, int median, OptionalInt high) {
        Protocol protocol =
                Bench.with(Map.of("fewest: 3\n  most: 10", PLANS.get(plan))).state().protocol();
        Setting setting = Sharing.setting(protocol, protocol.measure("inhalation").orElseThrow());
        Forecast forecast =
                new Forecast(
                        OptionalDouble.of(0.83),
                        OptionalDouble.of(0.53),
                        OptionalInt.of(median),
                        OptionalInt.of(1),
                        high,
                        0.5,
                        0.3,
                        OptionalInt.empty());
        return new Advice(new Wording(setting, "disc", "bare"), FOUR, Onward.OPEN)
                .next(Verdict.NOT_SETTLED, false, false, false, false, forecast);
    }
}
