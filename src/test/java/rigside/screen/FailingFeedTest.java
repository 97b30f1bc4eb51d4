package rigside.screen;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rigside.analysis.Live;
import rigside.session.Event;
import rigside.session.Input;
import rigside.session.Story;

class FailingFeedTest {
    @Test
    void aTubeOnTheWrongSideIsSaidBesideTheClockAndBesideTheQuestion() {
        Optional<String> words =
                Optional.of("sample tube: the counter says it is on the room, not the mask");
        for (View view :
                List.of(
                        Scenes.steps().get("exercise"),
                        Scenes.steps().get("gating"),
                        Scenes.steps().get("gate-value"))) {
            String drawn = Drawn.of(view.with(Live.NONE.withAmiss(words)), 80, 24);
            assertTrue(drawn.contains("! " + words.get()), drawn);
            assertTrue(drawn.contains("Ctrl-Q") || drawn.contains("leave"), drawn);
        }
    }

    @Test
    void aTubeOnTheWrongSideIsSeenFromTwoMetres() {
        Live wrong = Live.NONE.withAmiss(Optional.of("sample tube: the counter says no"));
        View view = Scenes.steps().get("gating").with(wrong);
        String large =
                "██      ██  ██████  ██████  ██    ██  ██████        ██████  ██  ████    ██████";
        assertTrue(Drawn.of(view, 120, 36).contains(large), Drawn.of(view, 120, 36));
        assertFalse(Drawn.of(view, 80, 24).contains(large));
    }

    /** Mask pressure, a live reading and the tube's side all at once leave little room. */
    @Test
    void anExerciseWithEverythingToReadKeepsItsClockLarge() {
        String text =
                Story.text("/session/small.yaml")
                        .replace(
                                "plan:\n",
                                "  - id: peak\n    title: Peak\n    kind: pressure-trace\nplan:\n")
                        .replace("feeds: fit\n", "feeds: [fit, peak]\n    pressure-unit: Pa\n")
                        .replace(
                                "mask: 8 to 20 s\n",
                                "mask: 8 to 20 s\n        pressure: 0 to 20 s\n");
        Event.SessionOpened opening =
                new Event.SessionOpened("test", "small.yaml", text, 7, "typed", "", false, 1);
        Story story = Story.opened(opening).goOn().type("W1").type("21").goOn().purged();
        View view = Scenes.later(story.goOn(), 12).with(Live.gate(OptionalDouble.of(4e9)));
        String drawn = Drawn.of(view, 120, 36);
        assertTrue(drawn.contains("mask pressure is read now"), drawn);
        assertTrue(drawn.contains("██"), drawn);
    }

    @Test
    void theValueOfAGateCanBeReadAgain() {
        String drawn = Drawn.of(Scenes.steps().get("gate-value"), 80, 24);
        assertTrue(drawn.contains("[Ctrl-R] read again"), drawn);
    }

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
