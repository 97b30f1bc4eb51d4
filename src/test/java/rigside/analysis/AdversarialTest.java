package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.analysis.Tables.Terms;
import rigside.decide.Verdict;
import rigside.session.Event;

/**
 * Input that invites a wrong verdict: each gets a plain message and none a verdict it cannot bear.
 */
class AdversarialTest {

    private static final Terms RATIO = Terms.PAIRED;
    private static final Terms DIFFERENCE = Terms.PAIRED.difference("1");

    /** The values of a and b, round by round. */
    private static String rows(String... pairs) {
        StringBuilder rows = new StringBuilder();
        for (int at = 0; at < pairs.length; at++) {
            String[] both = pairs[at].split(" ", -1);
            rows.append(at + 1).append(",a,").append(both[0]).append('\n');
            rows.append(at + 1).append(",b,").append(both[1]).append('\n');
        }
        return rows.toString();
    }

    static Stream<Arguments> everyTable() {
        String finer = "read them finer";
        return Stream.of(
                Arguments.of("all alike", RATIO, rows("5 5", "5 5", "5 5", "5 5"), finer),
                Arguments.of("alike, far apart", RATIO, rows("5 50", "5 50", "5 50"), finer),
                Arguments.of(
                        "alike to ten digits",
                        DIFFERENCE,
                        rows("5.0000000001 50.1", "5.0000000001 50.1", "5.0000000001 50.1"),
                        finer),
                Arguments.of(
                        "alike and independent",
                        RATIO.independent(),
                        rows("5 50", "5 50", "5 50"),
                        finer),
                Arguments.of("one round", RATIO, rows("5 6"), "the first look comes after 2 more"),
                Arguments.of(
                        "one value each", RATIO.independent(), rows("5 6"), "the first look comes"),
                Arguments.of(
                        "as large as tables go",
                        DIFFERENCE,
                        rows("1e100 -1e100", "-1e100 1e100", "1e99 1e100", "1e100 1e99"),
                        "Not settled yet"),
                Arguments.of(
                        "as far apart as tables go",
                        RATIO,
                        rows("1e-100 1e100", "1e100 1e-100", "1e-100 1e100", "1e-100 1e100"),
                        "Not settled yet"),
                Arguments.of(
                        "a gap in every second round",
                        RATIO,
                        "1,a,5\n1,b,6\n2,a,5\n3,b,6.2\n4,a,5.1\n4,b,6.3\n",
                        "the first look comes after 1 more round"),
                Arguments.of(
                        "ties but for one",
                        DIFFERENCE,
                        rows("5 6", "5 6", "5 6", "5 6", "5 6.5"),
                        "Not settled yet"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everyTable")
    void aTableThatInvitesAWrongVerdictGetsNone(
            String name, Terms terms, String rows, String next) {
        TableAnalysis analysis = terms.of(rows);
        Comparison comparison = analysis.comparisons().get(0);
        assertFalse(comparison.isSettled(), comparison.sentence());
        assertTrue(comparison.next().contains(next), comparison.next());
        assertPlain(comparison);
    }

    /** No NaN or infinity reaches the words, and none is empty. */
    private static void assertPlain(Comparison comparison) {
        Comparison.Words words = comparison.words();
        for (String each :
                List.of(words.sentence(), words.technical(), words.next(), words.change())) {
            assertFalse(each.isBlank(), comparison.sentence());
            assertFalse(each.contains("NaN"), each);
            assertFalse(each.contains("Infinity"), each);
        }
    }

    @Test
    void tiesAreNoReasonToDoubtWhatIsClear() {
        Comparison ties =
                RATIO.of(rows("5.0 6.0", "5.0 6.1", "5.0 6.0", "5.0 6.1", "5.0 6.0"))
                        .comparisons()
                        .get(0);
        assertEquals(Verdict.MEANINGFUL_DIFFERENCE, ties.verdict());
        assertPlain(ties);
    }

    @Test
    void aRoundWithoutOneConditionIsNamed() {
        Comparison comparison =
                RATIO.of("1,a,5\n1,b,6\n2,a,5\n3,b,6.2\n4,a,5.1\n4,b,6.3\n").comparisons().get(0);
        assertEquals(2, comparison.n());
        assertEquals(
                List.of("Left out, since one of the two has no value there: rounds 2 and 3."),
                comparison.remarks());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    0            | value '0' has no ratio, it must be above 0
                    -3           | value '-3' has no ratio, it must be above 0
                    1e300        | value '1e300' is too large
                    -1e300       | value '-1e300' is too large
                    1e-300       | value '1e-300' is too small
                    1e999999999  | value '1e999999999' is too large
                    1e-999999999 | value '1e-999999999' is too small
                    NaN          | value 'NaN' is not a number
                    nan          | value 'nan' is not a number
                    inf          | value 'inf' is not a number
                    -Infinity    | value '-Infinity' is not a number
                    0x1F         | value '0x1F' is not a number
                    1e           | value '1e' is not a number
                    1 000        | value '1 000' is not a number
                    ''           | value '' is not a number
                    """)
    void whatIsNoValueIsRefusedWithItsPlace(String text, String problem) {
        ValueTable.Read read =
                ValueTable.read("round,condition,value\n1,a,5\n1,b," + text + "\n", true);
        ValueTable.Problem first = ((ValueTable.Read.Bad) read).problems().get(0);
        assertEquals(problem, first.what());
        assertEquals(3, first.line());
        assertEquals(5, first.column());
    }

    private static final Map<String, String> AS_RATIO =
            Map.of(
                    "compare: difference\n    meaningful: 25 Pa",
                    "compare: ratio\n    meaningful: 10 %");

    /** Rounds of efforts, bare and disc in turn. */
    private static Bench efforts(Map<String, String> changes, double... pairs) {
        Bench bench = Bench.with(changes);
        for (int at = 0; at < pairs.length; at += 2) {
            int round = at / 2 + 1;
            bench.donning(round, "bare", 20, 5, pairs[at]);
            bench.donning(round, "disc", 20, 5.5, pairs[at + 1]);
        }
        return bench;
    }

    private static Bench allVoid() {
        Bench bench = Bench.plain().round(1, 5, 5.5).start(2, "bare").exercises(20).trials(5, 5);
        bench.effort(300);
        int last = bench.state().captured().entries().size();
        for (int entry = last - 6; entry <= last; entry++) {
            bench.voided(entry);
        }
        return bench.complete().donning(2, "disc", 20, 5.6, 310).look();
    }

    static Stream<Arguments> everySession() {
        String large = "Effort: too large or too small to reckon with";
        String none = "the value is not above 0, so it has no ratio";
        return Stream.of(
                session(
                        "huge numbers",
                        () -> efforts(Map.of(), 1e300, 2e300, 1e300, 3e300, 1e300, 2.1e300),
                        "effort",
                        large),
                session(
                        "the largest there are",
                        () -> efforts(Map.of(), 1.7e308, -1.7e308, 1.7e308, -1.6e308, 1e308, 0),
                        "effort",
                        large),
                session(
                        "tiny numbers",
                        () -> efforts(Map.of(), 1e-300, 2e-300, 1e-300, 3e-300, 1e-300, 2.1e-300),
                        "effort",
                        large),
                session(
                        "huge over tiny as a ratio",
                        () -> efforts(AS_RATIO, 1e-300, 1e300, 1e-299, 1e300, 1e-300, 1e299),
                        "effort",
                        large),
                session(
                        "zero and below in a ratio",
                        () -> efforts(AS_RATIO, 0, 2, 1, 3, 1, -2.5),
                        "effort",
                        none),
                session(
                        "a trial of no time",
                        () -> Bench.plain().round(1, 0, 5).round(2, 5, -1).round(3, 5, 6),
                        "inhalation",
                        "trial 1: not above 0"),
                session(
                        "trials without end",
                        () -> Bench.plain().round(1, 1e300, 5).round(2, 1e300, 5).round(3, 5, 6),
                        "inhalation",
                        "trial 1: too large or too small to reckon with"),
                session(
                        "all of a donning struck out, breathing",
                        AdversarialTest::allVoid,
                        "inhalation",
                        "trial 1: struck out: the mask moved"),
                session(
                        "all of a donning struck out, seal",
                        AdversarialTest::allVoid,
                        "fit",
                        "Normal breathing: struck out: the mask moved"),
                session(
                        "a condition missing in a round",
                        () ->
                                Bench.plain()
                                        .round(1, 5, 5.5)
                                        .donning(2, "bare", 20, 5, 300)
                                        .start(2, "disc")
                                        .take(new Event.DonningAbandoned(4, "slipped"))
                                        .round(3, 5.1, 5.6),
                        "inhalation",
                        "trial 1: not captured"),
                session(
                        "no particles in the mask, and no limit stated",
                        () ->
                                Bench.with(Map.of("    detection-limit: 2 /cm3\n", ""))
                                        .donning(1, "bare", 0, 5, 300)
                                        .donning(1, "disc", 20, 5, 300),
                        "fit",
                        "Normal breathing: the mask concentration is 0 and the protocol states no"
                                + " detection limit"),
                session(
                        "no particles outside",
                        () ->
                                Bench.plain()
                                        .start(1, "bare")
                                        .sampled(0, 20, 20)
                                        .complete()
                                        .donning(1, "disc", 20, 5, 300),
                        "fit",
                        "Normal breathing: the ambient concentration is 0"),
                session(
                        "more particles than there can be",
                        () ->
                                Bench.plain()
                                        .start(1, "bare")
                                        .exercises(1e300)
                                        .complete()
                                        .donning(1, "disc", 20, 5, 300),
                        "fit",
                        "Normal breathing: the mask concentration is too large or too small to"
                                + " reckon with"));
    }

    private static Arguments session(
            String name, Supplier<Bench> bench, String measure, String missing) {
        return Arguments.of(name, bench, measure, missing);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everySession")
    void aSessionThatInvitesAWrongVerdictGetsNone(
            String name, Supplier<Bench> made, String measure, String missing) {
        Bench bench = made.get();
        Comparison comparison = bench.comparison(measure);
        assertFalse(comparison.isSettled(), comparison.sentence());
        assertPlain(comparison);
        assertTrue(
                bench.measure(measure).values().stream()
                        .anyMatch(value -> value.missing().contains(missing)),
                bench.measure(measure).values().toString());
        assertEquals(bench.analysis(), bench.analysis());
    }

    @Test
    void roundsWithoutAValueAreSaidToBeThat() {
        Comparison comparison = efforts(Map.of(), 1e300, 2e300, 1e300, 3e300).comparison("effort");
        assertEquals(
                "The mask with disc, compared with the bare mask: nothing to compare yet.",
                comparison.sentence());
        assertTrue(comparison.remarks().contains("Left out, for lack of a value: rounds 1 and 2."));
    }

    @Test
    void aStepFinerThanItsNumberCanHoldIsThatOfTheNumber() {
        // Doubles about 1e16 are 2 apart.
        assertEquals(2, Scale.DIFFERENCE.step(0.1, 1e16));
        assertEquals(2e-16, Scale.RATIO.step(0.1, 1e16), 1e-31);
        assertEquals(0.1, Scale.DIFFERENCE.step(0.1, 12.4));
        assertEquals(0, Scale.DIFFERENCE.step(0, 1e16), "none is known");
    }

    @Test
    void aNumberThatIsNoneCannotBeCaptured() {
        assertThrows(IllegalArgumentException.class, () -> Bench.plain().round(1, Double.NaN, 5));
    }
}
