package rigside.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A form that was filled in by hand, typed in: nothing is timed, all else is as at the bench. */
class PaperTest {
    private static final String SMALL = Story.text("/session/small.yaml");

    private static Story atFirstDonning(String text) {
        return Story.onPaper(text).goOn().type("W1").type("21").goOn();
    }

    private static Story atTrials() {
        return atFirstDonning(SMALL).purged().exercised("40");
    }

    private static Story donning(Story story, String mask, String seconds) {
        story.purged().exercised(mask);
        story.type(seconds).answer(true).type(seconds).answer(true);
        if (story.activity() instanceof Activity.Filling) {
            story.type("3");
        }
        return story.goOn();
    }

    @Test
    void aWholeDonningTakesNoTimeAndNoClockRuns() {
        Story story = atFirstDonning(SMALL);
        long before = story.now();
        story.goOn().goOn().goOn().goOn().goOn();
        story.goOn().type("4000").type("40").goOn().type("40").type("4000");
        story.type("6.5").answer(true).type("6.7").answer(true);
        if (story.activity() instanceof Activity.Filling) {
            story.type("3");
        }
        story.goOn();
        assertEquals(before, story.now());
        assertEquals(Donning.Outcome.COMPLETE, story.state().course().donnings().get(0).outcome());
        Set<Class<?>> timed =
                Set.of(
                        Event.CountdownStarted.class,
                        Event.ExerciseStarted.class,
                        Event.LeadInStarted.class,
                        Event.TrialStarted.class,
                        Event.RestFinished.class);
        assertTrue(
                story.journal().stream()
                        .noneMatch(each -> timed.contains(each.event().getClass())));
        assertTrue(
                story.state().captured().entries().stream()
                        .allMatch(entry -> entry.source() == Source.TYPED));
        assertEquals(story.state(), Evolve.fold(story.journal()));
    }

    @Test
    void theOrderIsThatOfTheSeedOnTheForm() {
        Story story = atFirstDonning(SMALL);
        for (int round = 1; round <= 4; round++) {
            for (String condition : Schedule.order(story.state().protocol(), 7, round)) {
                Activity next = story.activity();
                assertEquals(
                        condition, assertInstanceOf(Activity.NextDonning.class, next).condition());
                donning(story, "40", "6." + round);
            }
        }
        assertEquals(8, story.state().course().donnings().size());
        assertEquals(story.state(), Evolve.fold(story.journal()));
    }

    @Test
    void whetherAPullWasHeldIsAskedBeforeItsTimeCounts() {
        Story story = atTrials().type("6,5");
        assertInstanceOf(Activity.HoldAsked.class, story.activity());
        int entries = story.state().captured().entries().size();
        story.answer(false);
        Entry spoilt = story.state().captured().entries().get(entries);
        assertEquals("6.5 s", spoilt.value().toString());
        assertFalse(spoilt.stands());
        assertEquals(
                new Slot.Trial(spoilt.slot().place(), 0),
                assertInstanceOf(Activity.Filling.class, story.activity()).slot());
    }

    @Test
    void anImplausibleTimeIsOfferedForVoiding() {
        Story story = atTrials().type("21").answer(true);
        assertEquals(
                "longer than the longest plausible 20 s",
                assertInstanceOf(Activity.VoidAsked.class, story.activity()).why());
        story.answer(true);
        assertInstanceOf(Activity.Filling.class, story.activity());
    }

    @ParameterizedTest
    @CsvSource({"6500 ms, 6.5", "'0,1 min', 6", "12.3456, 12.346"})
    void timesTakeTheirUnit(String typed, double seconds) {
        Story story = atTrials().type(typed);
        assertEquals(
                seconds,
                assertInstanceOf(
                                Event.TrialStopped.class,
                                story.answer(true).journal().stream()
                                        .map(Recorded::event)
                                        .filter(Event.TrialStopped.class::isInstance)
                                        .findFirst()
                                        .orElseThrow())
                        .seconds(),
                0.0005);
    }

    @ParameterizedTest
    @CsvSource({"0", "-3", "0.0001", "6.5 Pa", "quick", "''"})
    void whatIsNoTimeIsRefused(String typed) {
        Story story = atTrials().type(typed);
        assertFalse(story.refusal().isEmpty());
        assertInstanceOf(Activity.Filling.class, story.activity());
    }

    @Test
    void aTrialMissingOnTheFormIsLeftOutWithItsReason() {
        Story story = atTrials().send(new Input.LeaveOutAsked("no time written"));
        assertEquals(1, story.state().captured().leftOut().size());
        assertEquals(
                1,
                ((Slot.Trial) assertInstanceOf(Activity.Filling.class, story.activity()).slot())
                        .trial());
    }

    @Test
    void failedChecksAndAbandonedDonningsAreAsEver() {
        Story story = atFirstDonning(SMALL).goOn().goOn();
        story.send(new Input.CheckFailed("leaked at the nose"));
        Donning abandoned = story.state().course().donnings().get(0);
        assertEquals(Donning.Outcome.ABANDONED, abandoned.outcome());
        assertEquals("check failed: The seal check holds (leaked at the nose)", abandoned.reason());
        story.goOn().send(new Input.AbandonAsked("the strap broke"));
        assertEquals(2, story.state().course().donnings().size());
        assertEquals("the strap broke", story.state().course().donnings().get(1).reason());
    }

    @Test
    void gatesAreTypedAndHeldAgainstTheirLimits() {
        Story story = Story.onPaper(Gated.text()).goOn().type("W1").type("21");
        assertInstanceOf(Activity.Filling.class, story.activity());
        assertTrue(story.state().rereadable().isEmpty());
        story.type("430");
        assertInstanceOf(Activity.GateMissed.class, story.activity());
        story.goOn();
        assertInstanceOf(Activity.Filling.class, story.activity());
    }

    @Test
    void nothingStartsByItself() {
        String text = SMALL.replace("    for: 10 s\n", "    for: 10 s\n    starts: by-itself\n");
        Story story = atFirstDonning(text).goOn().goOn().goOn().goOn();
        Activity waiting = story.activity();
        assertInstanceOf(Activity.Waiting.class, waiting);
        assertEquals(waiting, story.pass(600).activity());
        assertInstanceOf(Activity.Exercising.class, story.goOn().activity());
    }

    @Test
    void takenUpAgainItStandsWhereItStood() {
        Story story = atTrials().type("6.5");
        Activity asked = story.activity();
        story.send(new Input.Reopened("test"));
        assertEquals(asked, story.activity());
        story.send(new Input.HaltPressed());
        assertEquals("nothing runs here that could be stopped", story.refusal());
        assertEquals(asked, story.activity());
    }

    @Test
    void atTheBenchNoTimeIsTyped() {
        Story story = Story.atFirstDonning().purged().exercised("40").type("6.5");
        assertEquals("nothing is to be typed here", story.refusal());
        assertEquals(List.of(), story.last());
    }
}
