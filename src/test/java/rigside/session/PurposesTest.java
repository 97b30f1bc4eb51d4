package rigside.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Sessions in which nothing is worn, and those in which the mask stays on within a round. */
class PurposesTest {
    private static final String CHECK =
            """
            format: 1
            title: Check
            question: Is the counter fit?
            cautions: [Stop when dizzy]
            before:
              - step: gates
                title: Counter
                gates:
                  - {gate: ambient, at-least: 1000 /cm3, for: 10 s}
            """;

    private static final String SETTINGS =
            """
            format: 1
            title: Straps
            question: Do straps matter?
            cautions: [Stop when dizzy]
            conditions:
              - {id: usual, title: As usual, specimen: {piece: A, worn-before: 0}}
              - {id: tight, title: Tighter, specimen: {piece: A, worn-before: 0}}
            measures:
              - id: grip
                title: Grip
                kind: typed-number
                unit: g
                resolution: 1 g
                field: grip
                compare: difference
                meaningful: 10 g
            plan: {fewest: 2, most: 4, order: as-listed, mask: stays-on}
            donning:
              - {step: note, title: Put it on, say: Now, only-after: putting-on}
              - {step: note, title: Set, say: Set the straps}
              - step: form
                title: Reading
                fields:
                  - {id: grip, ask: Grip, unit: g, from: 0, to: 1000}
            """;

    private static final String PULLS =
            """
            format: 1
            title: Straps
            question: Do straps matter?
            cautions: [Stop when dizzy]
            conditions:
              - {id: usual, title: As usual, specimen: {piece: A, worn-before: 0}}
              - {id: tight, title: Tighter, specimen: {piece: A, worn-before: 0}}
            measures:
              - {id: breath, title: Breath, kind: timed-inhalation, compare: ratio, meaningful: 10 %}
            plan: {fewest: 2, most: 4, order: as-listed, mask: stays-on}
            donning:
              - step: trials
                title: Pulls
                feeds: breath
                trials: 1
                target: 100 Pa
                rest: 60 s
                shortest: 1 s
                longest: 40 s
            """;

    @Test
    void aCheckEndsWithItsLastStepAndNothingIsPutOn() {
        Story story = opened(CHECK).goOn().goOn().pass(10).type("4000");
        assertInstanceOf(Activity.Closing.class, story.activity());
        story.send(new Input.EndAsked("enough"));
        assertFalse(story.refusal().isEmpty(), "no donnings to end");
        story.goOn();
        assertTrue(story.state().course().closed());
        assertEquals(story.state(), Evolve.fold(story.journal()));
    }

    @Test
    void ofAClosedSessionNothingIsUndone() {
        Story story = opened(CHECK).goOn().goOn().pass(10).type("4000");
        assertTrue(story.state().isUndoable());
        story.goOn();
        assertFalse(story.state().isUndoable());
        int before = story.journal().size();
        story.send(new Input.UndoAsked());
        assertEquals(before, story.journal().size());
    }

    @Test
    void aGateThatIsUndoneAtTheEndOfACheckIsReadAgain() {
        Story story = opened(CHECK).goOn().goOn().pass(10).type("4000");
        story.send(new Input.UndoAsked());
        assertInstanceOf(Activity.Gating.class, story.activity());
    }

    @Test
    void theMaskIsPutOnOnceARound() {
        Story story = opened(SETTINGS).goOn();
        assertTrue(Schedule.isPutOn(story.state(), next(story)));
        story.goOn();
        assertEquals("Put it on", title(story));
        story.goOn().goOn().type("100");
        assertTrue(Schedule.isLeftOn(story.state(), open(story)));
        story.goOn();
        assertFalse(Schedule.isPutOn(story.state(), next(story)));
        story.goOn();
        assertEquals("Set", title(story));
        story.goOn().type("100");
        assertFalse(Schedule.isLeftOn(story.state(), open(story)), "the round is over");
        story.goOn();
        assertEquals(2, next(story).round());
        assertTrue(Schedule.isPutOn(story.state(), next(story)));
        assertEquals(story.state(), Evolve.fold(story.journal()));
    }

    @Test
    void anAbandonedSettingTookTheMaskOff() {
        Story story = opened(SETTINGS).goOn().goOn().goOn().goOn().type("100").goOn();
        story.goOn().send(new Input.AbandonAsked("it slipped off"));
        assertTrue(Schedule.isPutOn(story.state(), next(story)));
        story.goOn();
        assertEquals("Put it on", title(story));
    }

    @Test
    void aSettingDoneAgainBeginsWithPuttingOnAndChangesNoOtherDonning() {
        Story story = opened(SETTINGS).goOn().goOn().goOn().goOn().type("100").goOn();
        story.goOn().goOn().type("100").goOn();
        story.send(new Input.StrikeAsked(1, "strap was twisted"));
        assertEquals(1, next(story).turn());
        assertTrue(Schedule.isPutOn(story.state(), next(story)));
        Donning second = story.state().course().donning(2).orElseThrow();
        assertFalse(Schedule.isPutOn(story.state(), second), "it was a setting all the same");
    }

    /** Full breaths in a row make dizzy, whatever the straps are set to. */
    @Test
    void theRestCountsOnIntoTheNextSettingButNotIntoTheNextPuttingOn() {
        Story story = opened(PULLS).goOn().goOn();
        assertInstanceOf(Activity.TrialReady.class, story.activity());
        story.inhaled(5).goOn().pass(20).goOn();
        assertInstanceOf(Activity.Resting.class, story.activity());
        assertEquals(story.state(), Evolve.fold(story.journal()));
        story.pass(41);
        assertInstanceOf(Activity.TrialReady.class, story.activity());
        story.inhaled(5).goOn();
        assertTrue(Schedule.isPutOn(story.state(), next(story)));
        story.goOn();
        assertInstanceOf(Activity.TrialReady.class, story.activity());
    }

    @Test
    void anAbandonedSettingLeavesNoRest() {
        Story story = opened(PULLS).goOn().goOn().inhaled(5).goOn().goOn();
        story.send(new Input.AbandonAsked("it slipped off")).goOn();
        assertInstanceOf(Activity.TrialReady.class, story.activity());
    }

    private static Story opened(String text) {
        return Story.opened(
                new Event.SessionOpened("test", "t.yaml", text, 7, "typed", "", false, 1));
    }

    private static Activity.NextDonning next(Story story) {
        return assertInstanceOf(Activity.NextDonning.class, story.activity());
    }

    private static Donning open(Story story) {
        return story.state().course().open().orElseThrow();
    }

    private static String title(Story story) {
        Activity.Reading reading = assertInstanceOf(Activity.Reading.class, story.activity());
        return Procedure.step(story.state(), reading.place()).title();
    }
}
