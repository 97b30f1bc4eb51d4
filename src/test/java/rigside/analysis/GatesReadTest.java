package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigside.session.Gated;
import rigside.session.Input;
import rigside.session.Story;

class GatesReadTest {
    private static List<String> lines(Story story) {
        return new GatesRead(story.state()).lines();
    }

    @Test
    void aSessionWithoutGatesSaysNothing() {
        assertEquals(List.of(), lines(Story.atFirstDonning()));
    }

    @Test
    void everyReadingAndWhatBecameOfItIsTold() {
        Story story = Gated.roomRead().type("430").goOn().goOn().pass(10).type("1500");
        assertEquals(
                List.of(
                        "concentration of filtered air: 0 /cm3, needed at most 0.01 /cm3: met",
                        "ambient concentration: 430 /cm3, needed at least 1000 /cm3: NOT MET; struck"
                                + " out: the gate needs at least 1000 /cm3; read again",
                        "ambient concentration: 1500 /cm3, needed at least 1000 /cm3: met"),
                lines(story));
    }

    @Test
    void goingOnAllTheSameStandsWithItsReasonAndIsNotToldTwice() {
        Story story = Gated.roomRead().type("430").send(new Input.LeaveOutAsked("a calm day"));
        assertEquals(
                "ambient concentration: 430 /cm3, needed at least 1000 /cm3: NOT MET, went on all"
                        + " the same: a calm day",
                lines(story).get(1));
        assertEquals(2, lines(story).size());
        assertEquals(false, Happened.of(story.state()).contains("Left out"));
    }

    @Test
    void aGatePassedOverUnreadIsTold() {
        Story story = Gated.atGates().send(new Input.LeaveOutAsked("no zero filter here"));
        assertEquals(
                List.of(
                        "concentration of filtered air: not read, went on all the same: no zero"
                                + " filter here"),
                lines(story));
    }
}
