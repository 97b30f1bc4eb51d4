package rigside.screen;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import rigside.session.Input;
import rigside.session.Story;

class FailingFeedTest {
    @Test
    void anInstrumentThatFailsStandsOnTheTopLineUntilItIsBack() {
        Story story = Story.atFirstDonning().purged();
        story.send(new Input.FeedNoticed("gauge", true, "gauge: nothing for 2 s"));
        story.send(new Input.FeedNoticed("counter", true, "counter: nothing for 5 s"));
        String top = Drawn.of(Scenes.step(story), 80, 24).lines().findFirst().orElseThrow();
        assertTrue(top.endsWith("[fails: counter, gauge]"), top);
        story.send(new Input.FeedNoticed("gauge", false, "gauge: reads well again"));
        story.send(new Input.FeedNoticed("counter", false, "counter: reads well again"));
        assertFalse(Drawn.of(Scenes.step(story), 80, 24).contains("fails"));
    }
}
