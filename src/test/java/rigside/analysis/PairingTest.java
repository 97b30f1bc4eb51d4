package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rigside.analysis.Tables.values;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigside.analysis.Tables.Terms;

class PairingTest {

    private static final Terms INDEPENDENT = Terms.PAIRED.rounds(3, 6).independent();

    @Test
    void whatOneConditionHasMoreOfIsNotUsedYet() {
        double[] two = values(13.1, 13.8);
        assertEquals(
                List.of("2 values of plain are not used yet: a look takes as many of each."),
                INDEPENDENT.of(values(12.1, 11.4, 12.8, 12.0), two).remarks());
        assertEquals(
                List.of("1 value of disc is not used yet: a look takes as many of each."),
                INDEPENDENT.of(values(12.1), two).remarks());
        assertEquals(List.of(), INDEPENDENT.of(values(12.1, 11.4), two).remarks());
    }

    @Test
    void whatIsBeyondThePlanIsNotWaitedFor() {
        double[] eight = values(12.1, 11.4, 12.8, 12.0, 11.9, 12.2, 12.3, 11.7);
        assertEquals(
                List.of(
                        "4 values of disc are not used yet: a look takes as many of each.",
                        "Values beyond the most the plan allows (6) are not used."),
                INDEPENDENT.of(values(13.1, 13.8), eight).remarks());
    }
}
