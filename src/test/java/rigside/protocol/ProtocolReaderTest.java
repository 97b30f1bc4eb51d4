package rigside.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;
import rigside.measure.FreeBreathing;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.protocol.Measure.Compared;
import rigside.protocol.Measure.Level;
import rigside.yaml.Problem;

class ProtocolReaderTest {
    private static final Protocol BASE = Shipped.protocol("rigside/protocol/base.yaml");

    /** The least a file can say: all else has a default. */
    private static final String LEAST =
            """
            format: 1
            title: Least
            question: Is it harder to breathe through?
            cautions: [Stop at once when dizzy]
            conditions:
              - {id: a, title: A, specimen: {piece: one, worn-before: 0}}
              - {id: b, title: B, specimen: {piece: two, worn-before: 0}}
            measures:
              - {id: breathing, title: Time, kind: timed-inhalation, compare: ratio, meaningful: 10%}
            plan: {fewest: 2, most: 2}
            donning:
              - {step: trials, title: Breaths, feeds: breathing, trials: 1, target: 1 inH2O,
                 rest: 1 min, shortest: 500 ms, longest: 1 min}
            """;

    @Test
    void measuresAreReadWithTheirBandsOnTheAnalysisScale() {
        assertEquals(
                List.of(
                        new Measure(
                                "seal",
                                "Fit factor",
                                // 0.02 /cm3 are 20 000 /m3
                                new Measure.FitFactor(
                                        20_000,
                                        0,
                                        Optional.of(new Level(100, Level.Rule.OVERALL)),
                                        0.1 * (1 / 60_000.0)),
                                Unit.ONE,
                                0,
                                Optional.of(
                                        new Compared(
                                                Compared.Scale.RATIO,
                                                -Math.log(3),
                                                Math.log(3),
                                                "3 times",
                                                Compared.Matters.EITHER,
                                                true,
                                                OptionalDouble.of(Math.log(1.5))))),
                        new Measure(
                                "breathing",
                                "Inhalation time",
                                new Measure.TimedInhalation(Optional.of("lungs")),
                                Unit.SECOND,
                                0.01,
                                Optional.of(
                                        new Compared(
                                                Compared.Scale.RATIO,
                                                -Math.log(1.1),
                                                Math.log(1.1),
                                                "10 %",
                                                Compared.Matters.INCREASE,
                                                true,
                                                OptionalDouble.empty()))),
                        new Measure(
                                "peak",
                                "Peak pressure",
                                new Measure.PressureTrace(FreeBreathing.Zero.BREATHS),
                                Unit.PASCAL,
                                1,
                                Optional.of(
                                        new Compared(
                                                Compared.Scale.DIFFERENCE,
                                                -25,
                                                25,
                                                "25 Pa",
                                                Compared.Matters.EITHER,
                                                false,
                                                OptionalDouble.of(10)))),
                        new Measure(
                                "moisture",
                                "Moisture taken up",
                                new Measure.TypedNumber("gain"),
                                Unit.GRAM,
                                0.1,
                                Optional.empty())),
                BASE.measures());
    }

    @Test
    void thePlanIsRead() {
        assertEquals(
                new Plan(
                        3,
                        8,
                        0.95,
                        2,
                        Plan.Design.ROUNDS,
                        Plan.Order.BALANCED,
                        Plan.Until.DONNING_ENDS,
                        Plan.Until.SESSION_ENDS,
                        false,
                        false,
                        OptionalDouble.of(720),
                        OptionalDouble.of(75)),
                BASE.plan());
    }

    @Test
    void exercisesAndTrialsAreRead() {
        assertEquals(
                List.of(
                        new Step.Exercises(
                                Step.Head.of("Exercises", ""),
                                Step.Starting.BY_KEY,
                                Optional.of("seal"),
                                Optional.of("peak"),
                                Unit.PER_CUBIC_CENTIMETRE,
                                Unit.PASCAL,
                                Step.Exercises.Entering.AT_END,
                                0.2,
                                List.of(
                                        new Exercise(
                                                "Normal breathing",
                                                "Stand still",
                                                60,
                                                true,
                                                List.of(new Window(0, 10), new Window(50, 60)),
                                                Optional.of(new Window(15, 45)),
                                                Optional.of(new Window(10, 40))),
                                        new Exercise(
                                                "Grimace",
                                                "",
                                                15,
                                                false,
                                                List.of(),
                                                Optional.empty(),
                                                Optional.empty()))),
                        new Step.Trials(
                                Step.Head.of("Breaths", ""),
                                Step.Starting.BY_KEY,
                                "breathing",
                                5,
                                new Quantity(100, Unit.PASCAL),
                                OptionalDouble.of(0.2),
                                0.6,
                                3,
                                61,
                                2,
                                30)),
                BASE.donning().subList(2, 4));
    }

    @Test
    void conditionsFactsAndShortStepsAreRead() {
        assertEquals(
                new Condition(
                        "with-disc",
                        "Mask with disc",
                        new Condition.Specimen("mask A and disc 1", 3),
                        Condition.ParticleReading.SEAL_AND_FILTER),
                BASE.conditions().get(1));
        assertEquals(
                List.of(
                        new Field("wearer", "Wearer code", new Field.Words(20), false),
                        new Field(
                                "lungs",
                                "Vital capacity",
                                new Field.Numeric(
                                        Unit.LITRE, OptionalDouble.of(1.5), OptionalDouble.of(8)),
                                false)),
                BASE.facts());
        assertEquals(
                new Step.Observations(
                        new Step.Head("How it was", "", Applies.only(List.of("with-disc"))),
                        List.of(
                                new Field(
                                        "view",
                                        "View",
                                        new Field.Scale(0, 10, "blocked", "free"),
                                        false),
                                new Field(
                                        "slipping",
                                        "Did it slip",
                                        new Field.Choice(List.of("not at all", "a little")),
                                        false))),
                BASE.donning().get(5));
        assertEquals(
                List.of(new Step.Note(Step.Head.of("Afterwards", "Clean the mask"))), BASE.after());
    }

    @Test
    void whatIsLeftOutHasItsDocumentedDefault() {
        assertEquals(List.<Problem>of(), Shipped.problems(LEAST));
        Protocol least = ((Read.Good) ProtocolReader.read("least", LEAST)).protocol();
        assertEquals(
                new Plan(
                        2,
                        2,
                        0.95,
                        Plan.DEFAULT_EXPONENT,
                        Plan.Design.ROUNDS,
                        Plan.Order.BALANCED,
                        Plan.Until.DONNING_ENDS,
                        Plan.Until.DONNING_ENDS,
                        false,
                        false,
                        OptionalDouble.empty(),
                        OptionalDouble.empty()),
                least.plan());
        Step.Trials trials = (Step.Trials) least.donning().get(0);
        assertEquals(3, trials.leadInSeconds());
        assertEquals(0.5, trials.shortest());
        assertEquals(OptionalDouble.empty(), trials.tolerance());
        Compared compared = least.measures().get(0).compared().orElseThrow();
        assertEquals(Compared.Matters.EITHER, compared.matters());
        assertEquals(true, compared.decides());
        assertEquals(Condition.ParticleReading.SEAL_ONLY, least.conditions().get(0).reading());
    }

    static Stream<String> all() {
        return Stream.concat(Shipped.names(), Stream.of("rigside/protocol/base.yaml"));
    }

    @ParameterizedTest
    @MethodSource("all")
    void theSameProtocolInJsonReadsTheSame(String name) throws IOException {
        String yaml = Shipped.text(name);
        Node node = new Yaml().compose(new StringReader(yaml));
        String json = new ObjectMapper().writeValueAsString(plain(node));
        assertTrue(json.startsWith("{\"format\":1,"), json);
        assertEquals(ProtocolReader.read("x", yaml), ProtocolReader.read("x", json));
    }

    /** Numbers as numbers, all else as the text that was written. */
    private static Object plain(Node node) {
        if (node instanceof MappingNode mapping) {
            Map<Object, Object> object = new LinkedHashMap<>();
            mapping.getValue()
                    .forEach(
                            entry ->
                                    object.put(
                                            plain(entry.getKeyNode()),
                                            plain(entry.getValueNode())));
            return object;
        }
        if (node instanceof SequenceNode sequence) {
            return sequence.getValue().stream().map(ProtocolReaderTest::plain).toList();
        }
        String text = ((ScalarNode) node).getValue();
        return node.getTag().equals(Tag.INT) || node.getTag().equals(Tag.FLOAT)
                ? new BigDecimal(text)
                : text;
    }

    @Test
    void allProblemsOfAFileAreToldAtOnceInItsOrder() {
        String text =
                LEAST.replace("fewest: 2", "fewest: 1")
                        .replace("title: Least", "titel: Least")
                        .replace("1 inH2O", "1 inH20");
        assertEquals(
                List.of(2, 10, 12), Shipped.problems(text).stream().map(Problem::line).toList());
    }

    @Test
    void whatWasReadCannotBeChanged() {
        assertThrows(UnsupportedOperationException.class, () -> BASE.conditions().remove(0));
    }

    @Test
    void mostIsNotBelowTheTrialsOfOneDonningWhereEachTrialCounts() {
        String text =
                LEAST.replace("trials: 1,", "trials: 5,")
                        .replace("most: 2}", "most: 4, design: independent, replicates: trials}");
        assertEquals(
                List.of(
                        "'most' is 4 values per condition, but a donning already gives 5, write 5"
                                + " or more, or ask for fewer trials"),
                Shipped.problems(text).stream().map(p -> p.what() + ", " + p.help()).toList());
        assertEquals(List.<Problem>of(), Shipped.problems(text.replace("most: 4", "most: 5")));
    }
}
