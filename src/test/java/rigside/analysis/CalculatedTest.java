package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigside.protocol.Measure;
import rigside.session.Input;
import rigside.session.Story;

/** Measures calculated from what was typed in a donning. */
class CalculatedTest {
    /** The first of three readings waits. */
    private static Story atReadings() {
        return Story.of("/session/groups.yaml")
                .goOn()
                .type("60")
                .type("shaved")
                .goOn()
                .goOn()
                .goOn();
    }

    private static DonningValue value(Story story, String measure) {
        Measure of = story.state().protocol().measure(measure).orElseThrow();
        return Values.of(Evidence.of(story.state()), of).get(0);
    }

    @Test
    void aFieldOfAGroupDoneSeveralTimesGivesAllItsValues() {
        DonningValue mean = value(atReadings().type("50").type("51").type("55").type("60"), "drop");
        assertEquals(52, mean.value().orElseThrow(), 1e-12);
        assertEquals(List.of(3, 4, 5), mean.entries());
        assertEquals(List.of(), mean.missing());
    }

    /** 60 Pa over 60 L/min, which is 1 L/s. */
    @Test
    void aFactEntersWithItsUnit() {
        DonningValue ratio =
                value(atReadings().type("50").type("51").type("55").type("60"), "resistance");
        assertEquals(60, ratio.value().orElseThrow(), 1e-9);
        assertEquals(List.of(6, 1), ratio.entries());
    }

    @Test
    void oneNumberThatIsMissingMakesTheValueMissingAndSaysWhy() {
        Story story = atReadings().type("50").send(new Input.LeaveOutAsked("the hose came off"));
        DonningValue mean = value(story.type("55").type("60"), "drop");
        assertTrue(mean.value().isEmpty());
        assertEquals(
                List.of("Mean pressure drop: Pressure drop (2 of 3): left out: the hose came off"),
                mean.missing());
    }

    @Test
    void whatIsStruckOutIsAskedAnewAndCountsInItsPlace() {
        Story story = atReadings().type("50").type("51").type("55").type("60");
        story.send(new Input.VoidAsked(4, "misread"));
        assertTrue(value(story, "drop").value().isEmpty());
        assertEquals(53, value(story.type("54"), "drop").value().orElseThrow(), 1e-12);
    }
}
