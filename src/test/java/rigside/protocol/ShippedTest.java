package rigside.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

    /** The file of sequences says what of them was checked and what is from memory. */
    @ParameterizedTest
    @CsvSource({
        "eight, ambient-eight-exercises",
        "elastomeric, short-elastomeric",
        "facepiece, short-filtering-facepiece"
    })
    void publishedSequencesAreAsPublished(String sequence, String name) {
        Step.Exercises step =
                Shipped.protocol("protocols/" + name + ".yaml").donning().stream()
                        .filter(Step.Exercises.class::isInstance)
                        .map(Step.Exercises.class::cast)
                        .findFirst()
                        .orElseThrow();
        List<String[]> published =
                Shipped.text("rigside/protocol/published-sequences.csv")
                        .lines()
                        .filter(line -> line.startsWith(sequence + ","))
                        .map(line -> line.split(",", -1))
                        .toList();
        assertEquals(published.size(), step.exercises().size());
        for (int at = 0; at < published.size(); at++) {
            String[] row = published.get(at);
            Exercise exercise = step.exercises().get(at);
            assertEquals(row[1], exercise.title());
            assertEquals(Double.parseDouble(row[2]), exercise.seconds(), row[1]);
            assertEquals(row[5].equals("yes"), exercise.counted(), row[1]);
            if (!row[3].isEmpty()) {
                assertEquals(Double.parseDouble(row[3]), length(exercise.ambient()), row[1]);
                assertEquals(
                        Double.parseDouble(row[4]),
                        length(exercise.mask().stream().toList()),
                        row[1]);
            }
        }
    }

    private static double length(List<Window> windows) {
        return windows.stream().mapToDouble(window -> window.to() - window.from()).sum();
    }

    private static Stream<Step> allSteps(String name) {
        Protocol protocol = Shipped.protocol(name);
        return Stream.of(protocol.before(), protocol.donning(), protocol.after())
                .flatMap(List::stream);
    }
}
