package rigside.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

    @ParameterizedTest
    @MethodSource("rigside.protocol.Shipped#names")
    void everyShippedProtocolSaysThatItIsNoOccupationalFitTest(String name) {
        Protocol protocol = Shipped.protocol(name);
        assertTrue(
                protocol.cautions().stream()
                        .anyMatch(caution -> caution.contains("occupational fit test")),
                name);
        assertTrue(protocol.about().contains("occupational"), name);
    }

    @Test
    void sealAndBreathingHasEveryKindOfStep() {
        assertEquals(
                Set.of(Step.class.getPermittedSubclasses()),
                allSteps("protocols/seal-and-breathing.yaml")
                        .map(Step::getClass)
                        .collect(Collectors.toSet()));
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

    private static Stream<Step> allSteps(String name) {
        Protocol protocol = Shipped.protocol(name);
        return Stream.of(protocol.before(), protocol.donning(), protocol.after())
                .flatMap(List::stream);
    }
}
