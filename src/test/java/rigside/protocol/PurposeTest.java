package rigside.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What a file leaves out says what it is for. */
class PurposeTest {
    private static final String HEAD =
            """
            format: 1
            title: T
            question: Q?
            cautions: [Stop when dizzy]
            """;

    private static final String BEFORE =
            """
            before:
              - step: note
                title: N
                say: Look
            """;

    private static final String ONE =
            HEAD
                    + """
                    conditions:
                      - id: plain
                        title: Mask
                        specimen: {piece: A, worn-before: 0}
                    measures:
                      - id: breathing
                        title: Time
                        kind: timed-inhalation
                    plan:
                      most: 6
                    donning:
                      - step: trials
                        title: Pulls
                        feeds: breathing
                        trials: 2
                        target: 100 Pa
                        rest: 60 s
                        shortest: 1 s
                        longest: 40 s
                    """;

    private static final String TWO =
            ONE.replace(
                            "measures:",
                            """
                              - id: other
                                title: Other
                                specimen: {piece: B, worn-before: 0}
                            measures:\
                            """)
                    .replace(
                            "kind: timed-inhalation",
                            "kind: timed-inhalation\n    compare: ratio\n    meaningful: 10 %")
                    .replace("most: 6", "fewest: 2\n  most: 6");

    @Test
    void oneConditionIsAStudyOfRepeatability() {
        Protocol read = read(ONE);
        assertEquals(Protocol.Purpose.REPEATABILITY, read.purpose());
        assertEquals(6, read.plan().most());
    }

    @Test
    void stepsBeforeAloneAreAnInstrumentCheck() {
        Protocol read = read(HEAD + BEFORE);
        assertEquals(Protocol.Purpose.INSTRUMENT_CHECK, read.purpose());
        assertEquals(Plan.NONE, read.plan());
        assertEquals(List.of(), read.measures());
    }

    @Test
    void twoConditionsAreCompared() {
        Protocol read = read(TWO);
        assertEquals(Protocol.Purpose.COMPARISON, read.purpose());
        assertFalse(read.plan().maskStaysOn());
    }

    @Test
    void aMaskThatStaysOnHasStepsOnlyAfterPuttingOn() {
        Protocol read =
                read(
                        TWO.replace("most: 6", "most: 6\n  mask: stays-on")
                                .replace(
                                        "donning:\n",
                                        """
                                        donning:
                                          - step: note
                                            title: On
                                            say: Now
                                            only-after: putting-on
                                        """));
        assertTrue(read.plan().maskStaysOn());
        assertTrue(read.donning().get(0).head().applies().onlyAfterPuttingOn());
        assertFalse(read.donning().get(1).head().applies().onlyAfterPuttingOn());
    }

    static Stream<Arguments> mistakes() {
        String stays = TWO.replace("most: 6", "most: 6\n  mask: stays-on");
        return Stream.of(
                Arguments.of(
                        "one condition with a plan to compare",
                        ONE.replace("most: 6", "fewest: 2\n  most: 6"),
                        "there is one condition, but the plan says 'fewest'"),
                Arguments.of(
                        "one condition with an order",
                        ONE.replace("most: 6", "order: random\n  most: 6"),
                        "there is one condition, but the plan says 'order'"),
                Arguments.of(
                        "one condition with a measure that is compared",
                        ONE.replace(
                                "kind: timed-inhalation",
                                "kind: timed-inhalation\n    compare: ratio\n    meaningful: 9 %"),
                        "there is one condition, but the measure 'breathing' is compared"),
                Arguments.of(
                        "a check with a plan",
                        HEAD + "plan: {most: 3}\n" + BEFORE,
                        "'plan' is for a protocol in which something is worn"),
                Arguments.of(
                        "a check with steps after",
                        HEAD + BEFORE + "after:\n  - step: note\n    title: N\n    say: S\n",
                        "'after' is for a protocol in which something is worn"),
                Arguments.of(
                        "a donning without conditions",
                        TWO.replaceAll("(?s)conditions:.*measures:", "measures:"),
                        "missing key 'conditions' in the file"),
                Arguments.of(
                        "a step after putting on though the mask comes off",
                        TWO.replace("title: Pulls", "title: Pulls\n    only-after: putting-on"),
                        "the mask is put on for every step of this kind"),
                Arguments.of(
                        "values only after putting on",
                        stays.replace("title: Pulls", "title: Pulls\n    only-after: putting-on"),
                        "'breathing' is fed by a step that is left out while the mask stays on"),
                Arguments.of(
                        "a mask that stays on with independent values",
                        stays.replace("most: 6", "most: 6\n  design: independent"),
                        "the mask stays on, but values are independent"),
                Arguments.of(
                        "putting on before the first donning",
                        TWO + BEFORE.replace("title: N", "title: N\n    only-after: putting-on"),
                        "'only-after' is for steps of a donning"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mistakes")
    void eachMistakeIsOneProblem(String name, String file, String what) {
        assertEquals(
                List.of(what),
                Shipped.problems(file).stream().map(problem -> problem.what()).toList(),
                name);
    }

    private static Protocol read(String text) {
        assertEquals(List.of(), Shipped.problems(text));
        return ((Read.Good) ProtocolReader.read("file.yaml", text)).protocol();
    }
}
