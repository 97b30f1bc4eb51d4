package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import rigside.session.Event;
import rigside.session.Story;

/** What comes of a session in which nothing is worn. */
class InstrumentCheckTest {
    private static final String CHECK =
            """
            format: 1
            title: Check
            question: Is the counter fit?
            cautions: [Stop when dizzy]
            facts:
              - {id: line, ask: Sample line, choices: [long, short]}
            before:
              - step: gates
                title: Counter
                gates:
                  - {gate: ambient, at-least: 1000 /cm3, for: 10 s}
              - step: gates
                title: Long line
                only-if: {answer: line, is: long}
                gates:
                  - {gate: zero, at-most: 0.02 /cm3, for: 60 s}
            """;

    private static Story asked(String line) {
        Event.SessionOpened opening =
                new Event.SessionOpened("test", "t.yaml", CHECK, 7, "typed", "", false, 1);
        return Story.opened(opening).goOn().type(line).goOn().pass(10).type("4000");
    }

    private static InstrumentCheck found(Story story) {
        return InstrumentCheck.of(story.state()).orElseThrow();
    }

    @Test
    void aGateThatAnAnswerLedPastIsNotMissed() {
        InstrumentCheck found = found(asked("short"));
        assertEquals(1, found.gates().size());
        assertTrue(found.isMet());
        assertEquals("The gate is met", found.sentence());
    }

    @Test
    void aGateThatAnAnswerAskedForIsMissedUntilItIsRead() {
        Story story = asked("long");
        assertFalse(found(story).isMet());
        assertEquals(
                "Not met: Long line, filtered air (not read, needed at most 0.02 /cm3)",
                found(story).sentence());
        assertTrue(found(story.goOn().pass(60).type("0.01")).isMet());
    }
}
