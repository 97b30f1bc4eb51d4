package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.analysis.ProtocolAdvice.Counter;
import rigside.protocol.Protocol;
import rigside.protocol.ProtocolReader;
import rigside.protocol.Read;

class ProtocolAdviceTest {
    private static final String SOUND =
            """
            format: 1
            title: Disc
            question: Is it harder to breathe through, or does it leak?
            cautions: [Stop at once when dizzy]
            conditions:
              - {id: a, title: A, specimen: {piece: one, worn-before: 0}, particle-reading: seal-only}
              - {id: b, title: B, specimen: {piece: one, worn-before: 1}, particle-reading: seal-only}
            measures:
              - {id: seal, title: Fit factor, kind: fit-factor, detection-limit: 0.1 /cm3,
                 compare: ratio, meaningful: 2 times, expected-spread: 1.2 times}
              - {id: breathing, title: Time, kind: timed-inhalation, compare: ratio,
                 meaningful: 10%, expected-spread: 3%}
            plan: {fewest: 3, most: 8, order: balanced, donning-takes: 7 min, trial-takes: 1 min}
            donning:
              - {step: checklist, title: On, items: [{check: Seal check passed, if-not: abandon}]}
              - {step: countdown, title: Purge, for: 3 min}
              - step: exercises
                title: Exercises
                feeds: seal
                unit: /cm3
                exercises:
                  - {title: Still, say: Breathe, for: 60 s, ambient: 0 to 10 s, mask: 20 to 60 s}
              - {step: trials, title: Breaths, feeds: breathing, trials: 5, target: 1 inH2O,
                 rest: 1 min, shortest: 500 ms, longest: 1 min}
            """;

    private static List<String> advice(String text) {
        return ProtocolAdvice.of(protocol(text));
    }

    private static Protocol protocol(String text) {
        Read read = ProtocolReader.read("test.yaml", text);
        if (read instanceof Read.Bad bad) {
            throw new AssertionError(bad.problems());
        }
        return ((Read.Good) read).protocol();
    }

    @Test
    void aSoundProtocolIsLeftAlone() {
        assertEquals(List.of(), advice(SOUND));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    expected-spread: 3%               | expected-spread: 15% | 'Time' is settled by this plan with a chance of only
                    , expected-spread: 1.2 times      | ''                   | 'Fit factor' has no expected-spread
                    order: balanced                   | order: as-listed     | the conditions always come in the same order
                    most: 8                           | most: 7              | 7 rounds cannot let each of 2 conditions come first
                    order: balanced,                  | 'order: balanced, conceal: {trial-clock: shown, result: shown},' | nothing is concealed
                    order: balanced,                  | 'order: balanced, conceal: {trial-clock: until-session-ends, result: until-donning-ends},' | times of trials are concealed longer than results, so what is made of them, 'Time', is concealed with them until the session ends;
                    one, worn-before: 0}, particle-reading: seal-only | 'one, worn-before: 0}, particle-reading: seal-and-filter' | a particle reading holds
                    '  - {step: countdown, title: Purge, for: 3 min}' | '  - {step: note, title: Purge, say: Wait}' | no countdown comes before the exercises
                    Seal check passed                 | Straps even          | no check of a donning mentions the seal
                    rest: 1 min                       | rest: 5 s            | 'Breaths' rests less than 30 s between full breaths
                    piece: one, worn-before: 1        | 'piece: two, worn-before: 1' | each condition is one specimen
                    mask: 20 to 60 s                  | mask: 12 to 60 s | 'Exercises': the tube of a counter takes some seconds to clear
                    Stop at once when dizzy           | Mind the tube        | no caution says when to stop
                    """)
    void eachThingToThinkOverIsToldByItself(String sound, String doubtful, String begins) {
        String text = SOUND.replace(sound, doubtful);
        assertEquals(false, text.equals(SOUND), "the text was changed");
        List<String> advice = advice(text);
        assertEquals(1, advice.size(), advice.toString());
        assertEquals(begins, advice.get(0).substring(0, begins.length()));
    }

    /** The expected spread is that of one donning's value, as {@code rigside plan} takes it. */
    @Test
    void theChanceToSettleIsThatOfThePlan() {
        Protocol protocol = protocol(SOUND.replace("expected-spread: 3%", "expected-spread: 6%"));
        PlanTerms terms =
                PlanTerms.of(
                                protocol,
                                protocol.measure("breathing").orElseThrow(),
                                OptionalDouble.empty())
                        .orElseThrow();
        double settled = 1 - PlanTable.of(terms, 0.8, 1).outcomes().get(0).unsettled();
        assertEquals(0.456, settled, 0.01, "below a half");
        assertTrue(
                DesignAdvice.settling(protocol).get(0).contains("only " + Digits.chance(settled)),
                DesignAdvice.settling(protocol).toString());
    }

    /**
     * 10 particles x 100 / (0.1 L/min x 40 s = 66.7 cm3) = 15 /cm3, by hand; the level is that of
     * 29 CFR 1910.134 for half masks, the 10 particles are our own (see {@code Ambient}).
     */
    @Test
    void theRoomNeedsParticlesForTheLevelAndAGateToSeeToIt() {
        String level =
                SOUND.replace(
                        "detection-limit: 0.1 /cm3,",
                        "detection-limit: 0.1 /cm3, sample-flow: 0.1 L/min,"
                                + " required: {level: 100, rule: overall},");
        assertEquals(
                List.of(
                        "in the 40 s of 'Still' a mask that just reaches 100 gives fewer than 10"
                                + " particles to count where the room holds less than 15 /cm3; put"
                                + " a gate 'ambient' with at least that before it"),
                advice(level));
        assertEquals(List.of(), advice(gated(level, "15 /cm3")));
        assertEquals(1, advice(gated(level, "14.9 /cm3")).size());
    }

    private static String gated(String text, String least) {
        return text.replace(
                "donning:\n",
                "before:\n  - {step: gates, title: Air, gates: [{gate: ambient, at-least: "
                        + least
                        + ", for: 10 s}]}\ndonning:\n");
    }

    @Test
    void aPlanThatOneDonningUsesUpIsToldSo() {
        String text =
                SOUND.replace("plan: {", "plan: {design: independent, replicates: trials, ")
                        .replace(
                                "compare: ratio, meaningful: 2 times",
                                "decides: no, compare: ratio, meaningful: 2 times")
                        .replace("most: 8", "most: 5");
        assertTrue(
                advice(text).toString().contains("one donning of each condition uses the plan up"),
                advice(text).toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    5  | false | ''
                    6  | false | 6.00 s after its tube is switched, which leaves less than half of 1 window, and no value is taken then; of the ambient window of 'Still' it leaves 4.00 of 10.0 s
                    25 | false | less than half of 2 windows, and no value is taken then; of the ambient window of 'Still' it leaves 0 of 10.0 s
                    31 | true  | less than half of 1 window
                    """)
    void windowsAreHeldAgainstTheCounterThatIsUsed(double settling, boolean tells, String told) {
        Counter counter = new Counter(settling, tells);
        String advice = String.join("", ProtocolAdvice.of(protocol(SOUND), Optional.of(counter)));
        assertTrue(advice.contains(told), advice);
        assertEquals(told.isEmpty(), advice.isEmpty(), advice);
    }

    @Test
    void aCounterThatNeedsNoSettlingNeedsNoGap() {
        String text = SOUND.replace("mask: 20 to 60 s", "mask: 10 to 60 s");
        Counter counter = new Counter(0, false);
        assertEquals(List.of(), ProtocolAdvice.of(protocol(text), Optional.of(counter)));
    }
}
