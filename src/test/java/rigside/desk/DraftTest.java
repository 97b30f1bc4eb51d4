package rigside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.analysis.ProtocolAdvice;
import rigside.desk.DraftQuestion.Kind;
import rigside.desk.DraftQuestion.Option;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;
import rigside.protocol.ProtocolReader;
import rigside.protocol.Read;

/** The interview, and the files it leads to. */
class DraftTest {
    private static final List<String> HOSTILE =
            List.of(
                    "\"quoted\" and 'so'",
                    "key: value # not a comment",
                    "- [a, {b: c}] *x &y !z",
                    "back\\slash\\",
                    "\u00dcberzug \u4e2d\u6587 \ud83d\ude37",
                    "%",
                    "---",
                    "yes");

    /** Enter at every question, with {@code answers} at those named. */
    private static Draft answered(Map<String, String> answers) {
        Draft draft = Draft.begin();
        while (draft.question().isPresent()) {
            DraftQuestion asked = draft.question().get();
            String answer = answers.getOrDefault(asked.id(), standIn(asked));
            Draft next = given(draft, asked, answer).take();
            assertEquals(Optional.empty(), next.message(), asked.id() + ": " + answer);
            draft = next;
        }
        return draft;
    }

    /** What Enter takes, or at a question without a usual answer something good. */
    private static String standIn(DraftQuestion asked) {
        return asked.usual().isEmpty() ? asked.standIn() : asked.usual();
    }

    private static Draft given(Draft draft, DraftQuestion asked, String answer) {
        if (asked.kind() instanceof Kind.Text) {
            return draft.typing(answer);
        }
        List<String> words = asked.options().stream().map(Option::word).toList();
        Draft at = draft.choosing(-words.size());
        if (asked.kind() instanceof Kind.One) {
            return at.choosing(words.indexOf(answer));
        }
        Set<String> wanted = Set.of(answer.split(",", -1));
        for (int i = 0; i < words.size(); i++) {
            boolean other = wanted.contains(words.get(i)) != at.ticked().contains(words.get(i));
            at = (other ? at.ticking() : at).choosing(1);
        }
        return at;
    }

    @Test
    void enterAtAlmostEveryQuestionGivesAProtocolWithNothingToThinkOver() {
        Protocol protocol = answered(Map.of("title", "Half mask and disc (invented)")).protocol();
        // One piece a condition is what the draft asks for, and the advice on it is right.
        assertEquals(
                List.of(),
                ProtocolAdvice.of(protocol).stream()
                        .filter(advice -> !advice.startsWith("each condition is one specimen"))
                        .toList());
        assertEquals(List.of(3, 10), List.of(protocol.plan().fewest(), protocol.plan().most()));
        assertEquals(2, protocol.measures().size());
    }

    @Test
    void everyKindOfAnswerWithEveryOtherGivesAFileWithoutProblems() {
        SplittableRandom random = new SplittableRandom(20261128);
        Set<String> seen = new TreeSet<>();
        for (int conditions = 2; conditions <= 6; conditions++) {
            for (int measured = 1; measured < 16; measured++) {
                Draft draft = Draft.begin();
                while (draft.question().isPresent()) {
                    DraftQuestion asked = draft.question().get();
                    String answer = drawn(asked, conditions, measured, random);
                    Draft next = given(draft, asked, answer).take();
                    assertEquals(Optional.empty(), next.message(), asked.id() + ": " + answer);
                    seen.add(asked.id());
                    draft = next;
                }
                Read read = ProtocolReader.read("draft.yaml", draft.text());
                assertTrue(read instanceof Read.Good, () -> read.toString());
                holds(draft, ((Read.Good) read).protocol());
            }
        }
        assertTrue(seen.size() > 40, seen.toString());
    }

    private static String drawn(
            DraftQuestion asked, int conditions, int measured, SplittableRandom random) {
        if (asked.id().equals("conditions")) {
            return String.valueOf(conditions);
        }
        if (asked.kind() instanceof Kind.Several) {
            List<String> words = new ArrayList<>();
            for (int i = 0; i < asked.options().size(); i++) {
                if ((measured & (1 << i)) != 0) {
                    words.add(asked.options().get(i).word());
                }
            }
            return String.join(",", words);
        }
        if (asked.kind() instanceof Kind.One) {
            return asked.options().get(random.nextInt(asked.options().size())).word();
        }
        boolean words =
                asked.id().startsWith("condition-")
                        || asked.id().startsWith("piece-")
                        || Set.of("title", "question", "number-name").contains(asked.id());
        if (words && random.nextBoolean()) {
            String hostile = HOSTILE.get(random.nextInt(HOSTILE.size()));
            // Conditions have titles of their own: each ends in its number.
            return asked.id().startsWith("condition-")
                    ? hostile + asked.id().substring("condition".length())
                    : hostile;
        }
        List<String> others =
                switch (asked.id()) {
                    case "number-unit" -> List.of("none", "mm", "degC", "%", "L/min", "Pa s/L");
                    case "detection-limit" -> List.of("", "0.02 /cm3", "20 /L");
                    case "bench-time" -> List.of("", "30 min", "20 h");
                    case "seal-spread", "breathing-spread", "pressure-spread" ->
                            List.of("unknown", "4 %", "1.8 times");
                    case "seal-meaningful", "breathing-meaningful" ->
                            List.of("2 times", "12 %", "0.8 to 1.25");
                    case "target" -> List.of("0.4 inH2O", "250 Pa");
                    case "fewest" -> List.of("2", "5", "12");
                    default -> List.of(standIn(asked));
                };
        return others.get(random.nextInt(others.size()));
    }

    /** The file says what was answered. */
    private static void holds(Draft draft, Protocol protocol) {
        DraftAnswers answers = draft.answers();
        assertEquals(answers.of("title"), protocol.title());
        assertEquals(answers.of("question"), protocol.question());
        assertEquals(answers.conditions(), protocol.conditions().size());
        for (int at = 1; at <= answers.conditions(); at++) {
            Condition condition = protocol.conditions().get(at - 1);
            assertEquals(answers.of("condition-" + at), condition.title());
            assertEquals(answers.of("piece-" + at), condition.specimen().piece());
        }
        assertEquals(
                List.of(answers.of("measures").split(",", -1)),
                protocol.measures().stream().map(Measure::id).toList());
        for (Measure measure : protocol.measures()) {
            Measure.Compared compared = measure.compared().orElseThrow();
            assertEquals(answers.of(measure.id() + "-meaningful"), compared.meaningful());
            assertEquals(
                    answers.of(measure.id() + "-spread").equals("unknown"),
                    compared.expectedSpread().isEmpty());
        }
        assertEquals(answers.of("most"), String.valueOf(protocol.plan().most()));
        assertTrue(protocol.cautions().size() >= 6, protocol.cautions().toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "title           |    | nothing is typed yet; type an answer, then press Enter",
                "condition-2     | Condition 1 | is given to more than one condition",
                "seal-meaningful | 3  | 'meaningful' is '3', a plain number, must be a percentage or a factor",
                "seal-meaningful | 10 Pa | 'meaningful' is '10 Pa', a pressure, must be a percentage or a factor",
                "seal-spread     | 1 times | must be above 0 % or above 1 times",
                "detection-limit | 0.02 Pa | a pressure, must be",
                "target          | 100 | write its unit too",
                "trials          | 99 | too high",
                "trials          | 3 # | a whole number is asked for",
                "worn-1          | never | a whole number is asked for",
                "fewest          | 1  | too low",
                "most            | 2  | below 'fewest'",
                "bench-time      | long | write a number and min or h",
                "number-unit     | furlong | unknown unit 'furlong'",
                "number-meaningful | 5 mm | must be a percentage",
            })
    void anAnswerThatCannotBeOneIsNotTaken(String id, String answer, String why) {
        Draft draft = Draft.begin();
        while (!draft.question().orElseThrow().id().equals(id)) {
            DraftQuestion asked = draft.question().get();
            boolean number = id.startsWith("number") && asked.id().equals("measures");
            draft = given(draft, asked, number ? "number" : standIn(asked)).take();
        }
        Draft refused = draft.typing(answer == null ? "" : answer).take();
        assertEquals(draft.answers(), refused.answers());
        assertTrue(
                refused.message().orElseThrow().contains(why), () -> refused.message().toString());
    }

    @Test
    void somethingHasToBeMeasured() {
        Draft draft = Draft.begin();
        while (!draft.question().orElseThrow().id().equals("measures")) {
            draft = given(draft, draft.question().get(), standIn(draft.question().get())).take();
        }
        Draft none = given(draft, draft.question().get(), "").take();
        assertTrue(none.message().orElseThrow().contains("nothing is ticked"));
    }

    @Test
    void goingBackKeepsTheAnswerAndGoingOnAgainGivesTheSameFile() {
        Draft all =
                answered(Map.of("title", "One", "conceal", "session", "seal-spread", "1.7 times"));
        Draft back = all;
        while (!back.answers().all().isEmpty()) {
            back = back.back();
            assertTrue(back.question().isPresent());
        }
        assertEquals(back.answers(), back.back().answers());
        while (back.question().isPresent()) {
            back = back.take();
        }
        assertEquals(all.text(), back.text());
    }

    @Test
    void aChangedAnswerAsksWhatThenHasToBeAsked() {
        Draft all = answered(Map.of());
        Draft back = all;
        while (!back.question().map(DraftQuestion::id).equals(Optional.of("measures"))) {
            back = back.back();
        }
        Draft other = given(back, back.question().orElseThrow(), "number").take();
        assertEquals("number-name", other.question().orElseThrow().id());
    }

    @Test
    void benchTimeSaysHowManyRoundsItHolds() {
        Draft draft = Draft.begin();
        while (!draft.question().orElseThrow().id().equals("most")) {
            DraftQuestion asked = draft.question().get();
            String answer = asked.id().equals("bench-time") ? "4 h" : standIn(asked);
            draft = given(draft, asked, answer).take();
        }
        DraftQuestion most = draft.question().orElseThrow();
        String why = String.join(" ", most.why());
        double round = rigside.protocol.BenchTime.round(draft.protocol());
        int holds = (int) (4 * 3600 / round);
        assertTrue(why.contains("4 h hold " + holds + "."), why);
        assertEquals(String.valueOf(holds - holds % 2), most.usual());
    }

    @Test
    void whatIsConcealedIsAsChosen() {
        assertEquals(
                Plan.Until.SESSION_ENDS,
                answered(Map.of("conceal", "session")).protocol().plan().result());
        assertEquals(
                Plan.Until.SHOWN,
                answered(Map.of("conceal", "shown")).protocol().plan().trialClock());
    }

    @Test
    void nothingIsLostByLeavingBeforeAnythingWasSaid() {
        assertFalse(Draft.begin().isBegun());
        assertTrue(Draft.begin().typing("a").isBegun());
    }
}
