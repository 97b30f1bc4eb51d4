package rigside.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.yaml.Problem;

class ShippedTest {
    @ParameterizedTest
    @MethodSource("rigside.protocol.Shipped#names")
    void everyShippedProtocolReadsWithoutProblems(String name) {
        assertEquals(List.<Problem>of(), Shipped.problems(Shipped.text(name)), name);
    }

    @ParameterizedTest
    @MethodSource("rigside.protocol.Shipped#names")
    void everyShippedProtocolTellsToStopAtOnceWhenUnwell(String name) {
        assertTrue(
                Shipped.protocol(name).cautions().stream()
                        .anyMatch(
                                caution ->
                                        caution.startsWith("Stop at once")
                                                && caution.contains("dizz")),
                name);
    }

    @Test
    void theEightExercisesLastAsPublished() {
        // 29 CFR 1910.134 Appendix A, Part I.A.14: seven of 60 s, the grimace 15 s, 435 s in all.
        Step.Exercises step =
                Shipped.protocol("protocols/ambient-eight-exercises.yaml").donning().stream()
                        .filter(Step.Exercises.class::isInstance)
                        .map(Step.Exercises.class::cast)
                        .findFirst()
                        .orElseThrow();
        assertEquals(
                List.of(60.0, 60.0, 60.0, 60.0, 60.0, 15.0, 60.0, 60.0),
                step.exercises().stream().map(Step.Exercise::seconds).toList());
        assertEquals(
                List.of("Grimace"),
                step.exercises().stream()
                        .filter(exercise -> !exercise.counted())
                        .map(Step.Exercise::title)
                        .toList());
    }
}
