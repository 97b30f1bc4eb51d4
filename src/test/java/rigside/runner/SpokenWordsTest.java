package rigside.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigside.rig.Cue;
import rigside.session.Input;
import rigside.session.Story;

class SpokenWordsTest {
    @Test
    void secondsOfTheLeadInAndTheClockAreLeftToTheirTones() {
        Story story = Story.atFirstDonning();
        assertEquals(Optional.empty(), SpokenWords.of(Cue.LEAD_IN, story.state()));
        assertEquals(Optional.empty(), SpokenWords.of(Cue.START, story.state()));
    }

    @Test
    void nextSaysWhatComes() {
        Story story = Story.atFirstDonning().purged();
        assertEquals("next: Normal breathing", said(Cue.NEXT, story));
        story.goOn().pass(20);
        assertEquals("over; the readings, please", said(Cue.NEXT, story));
        story.type("4000").type("40").goOn().pass(20).type("40").type("4000");
        story.inhaled(7).pass(30);
        assertEquals("rested; the next inhalation when you are ready", said(Cue.NEXT, story));
    }

    @Test
    void aStopSaysWhetherAPullIsTimedOrAllStandsStill() {
        Story story = Story.atFirstDonning().purged().exercised("40");
        story.trigger().pass(3).trigger().pass(7).trigger();
        assertEquals("time taken", said(Cue.STOP, story));
        assertEquals("stopped", said(Cue.STOP, story.send(new Input.HaltPressed())));
    }

    private static String said(Cue cue, Story story) {
        return SpokenWords.of(cue, story.state()).orElseThrow();
    }
}
