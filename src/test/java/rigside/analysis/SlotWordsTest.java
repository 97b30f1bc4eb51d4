package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Story;

/** What is asked for, told apart where it is asked for more than once. */
class SlotWordsTest {
    private static List<String> captured(Story story) {
        return story.state().captured().entries().stream()
                .map(Entry::slot)
                .map(slot -> SlotWords.of(story.state(), slot))
                .toList();
    }

    @Test
    void whatARepeatedGroupAsksIsCounted() {
        Story story = Story.of("/session/groups.yaml").goOn().type("60").type("shaved");
        story.goOn().goOn().goOn().type("50").type("51").type("52").type("60");
        assertEquals(
                List.of(
                        "Flow of the pump",
                        "Is the wearer shaved?",
                        "Pressure drop (1 of 3)",
                        "Pressure drop (2 of 3)",
                        "Pressure drop (3 of 3)",
                        "Pressure drop at the end"),
                captured(story));
    }

    @Test
    void gatesOfSeveralStepsBearTheTitlesOfTheirSteps() {
        String text =
                """
                format: 1
                title: Check
                question: Is the counter fit?
                cautions: [Stop when dizzy]
                before:
                  - step: gates
                    title: Counter alone
                    gates: [{gate: zero, at-most: 0.02 /cm3, for: 10 s}]
                  - step: gates
                    title: Whole line
                    gates: [{gate: zero, at-most: 0.02 /cm3, for: 10 s}]
                """;
        Story story =
                Story.opened(new Event.SessionOpened("test", "t", text, 7, "typed", "", false, 1));
        story.goOn().goOn().pass(10).type("0").goOn().pass(10).type("0.01");
        assertEquals(
                List.of(
                        "gate: concentration of filtered air, Counter alone",
                        "gate: concentration of filtered air, Whole line"),
                captured(story));
    }
}
