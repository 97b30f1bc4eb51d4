package rigside.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.yaml.Problem;

class MistakesTest {
    @Test
    void theBaseOfTheTableIsClean() {
        assertEquals(
                List.<Problem>of(), Shipped.problems(Shipped.text("rigside/protocol/base.yaml")));
    }

    @Test
    void theTableIsLong() {
        assertTrue(Mistake.all().size() >= 250, () -> Mistake.all().size() + " rows");
    }

    @ParameterizedTest
    @MethodSource({"rigside.protocol.Mistake#all", "rigside.protocol.Mistake#ofGroups"})
    void oneMistakeIsOneProblemAtItsPlaceWithItsCure(Mistake mistake) {
        List<Problem> problems = Shipped.problems(mistake.file());
        assertEquals(
                List.of(mistake.line() + ": " + mistake.what() + "\n" + mistake.help()),
                problems.stream()
                        .map(told -> told.line() + ": " + told.what() + "\n" + told.help())
                        .toList());
        int column = problems.get(0).column();
        assertTrue(mistake.isAt(column), () -> "column " + column);
    }
}
