package rigside.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import rigside.rig.Cue;
import rigside.session.Event;
import rigside.session.Input;
import rigside.session.Place;
import rigside.session.Stage;
import rigside.session.Story;

class CuesTest {
    private static final long SECOND = 1_000_000_000L;
    private static final Place PLACE = new Place(Stage.DONNING, 1, 2);

    @Test
    void anExerciseThatBeginsByItselfHasHadItsCueWhenTheOneBeforeWasOver() {
        List<Event> runsOn =
                List.of(new Event.ExerciseFinished(PLACE, 0), new Event.ExerciseStarted(PLACE, 1));
        assertEquals(List.of(), Cues.of(runsOn));
        assertEquals(List.of(Cue.START), Cues.of(List.of(new Event.ExerciseStarted(PLACE, 1))));
    }

    @Test
    void whateverNeedsTheEyesIsAProblem() {
        for (Event event :
                List.of(
                        new Event.VoidOffered(3, "too short"),
                        new Event.TimeDoubted("the clock jumped"),
                        new Event.FeedFailed("gauge", "gauge: nothing for 2 s"))) {
            assertEquals(List.of(Cue.PROBLEM), Cues.of(List.of(event)));
        }
    }

    @Test
    void stoppingAtOnceIsHeard() {
        Story story = Story.atFirstDonning().purged().send(new Input.HaltPressed());
        assertEquals(List.of(Cue.STOP), Cues.of(story.last()));
    }

    @Test
    void writingThingsDownIsNotCued() {
        Story story = Story.atFirstDonning().purged().goOn().pass(20).type("4000");
        assertEquals(List.of(), Cues.of(story.last()));
    }

    /** The purge of ten seconds: half-way at 5 s, the last three from 7 s. */
    @Test
    void eachMomentIsCuedByTheTickThatReachesIt() {
        Story story = Story.atFirstDonning().goOn().goOn().goOn().goOn().goOn();
        long start = story.now();
        assertEquals(List.of(), between(story, start, start + 5 * SECOND - 1));
        assertEquals(List.of(Cue.HALF_WAY), between(story, start + 4 * SECOND, start + 5 * SECOND));
        assertEquals(List.of(), between(story, start + 5 * SECOND, start + 7 * SECOND - 1));
        assertEquals(
                List.of(Cue.LAST_SECONDS),
                between(story, start + 7 * SECOND - 1, start + 7 * SECOND));
        assertEquals(List.of(), between(story, start + 9 * SECOND, start + 10 * SECOND - 1));
        assertEquals(
                List.of(Cue.NEXT), between(story, start + 10 * SECOND - 1, start + 10 * SECOND));
    }

    @Test
    void theLoopIsToldWhenToWakeForTheNextMomentAndForTheEnd() {
        Story story = Story.atFirstDonning().goOn().goOn().goOn().goOn().goOn();
        long start = story.now();
        for (int[] asked : new int[][] {{0, 5}, {5, 7}, {7, 10}}) {
            assertEquals(
                    OptionalLong.of(start + asked[1] * SECOND),
                    Cues.next(story.state(), start + asked[0] * SECOND));
        }
        assertEquals(OptionalLong.empty(), Cues.next(story.state(), start + 10 * SECOND));
    }

    /**
     * A computer that slept through it: half-way would be a lie by then, that it is over is true.
     */
    @Test
    void aMomentThatIsLongPastIsNotCued() {
        Story story = Story.atFirstDonning().goOn().goOn().goOn().goOn().goOn();
        long start = story.now();
        assertEquals(List.of(), between(story, start, start + 9 * SECOND));
        assertEquals(List.of(Cue.NEXT), between(story, start, start + 900 * SECOND));
    }

    @Test
    void aPullHasNoCueThatTellsItsTime() {
        Story story = Story.atFirstDonning().purged().exercised("40");
        story.trigger().pass(3).trigger();
        assertEquals(List.of(), between(story, story.now(), story.now() + SECOND));
        assertEquals(OptionalLong.empty(), Cues.next(story.state(), story.now()));
    }

    @Test
    void aLeadInIsCuedFromItsVeryBeginning() {
        Story story = Story.atFirstDonning().purged().exercised("40").trigger();
        long start = story.now();
        assertEquals(List.of(Cue.LEAD_IN), between(story, start, start + 1));
        assertEquals(List.of(), between(story, start + 1, start + 2));
        assertEquals(List.of(Cue.GO), between(story, start + 3 * SECOND - 1, start + 3 * SECOND));
    }

    private static List<Cue> between(Story story, long before, long now) {
        return Cues.between(story.state(), before, now);
    }
}
