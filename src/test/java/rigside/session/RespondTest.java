package rigside.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.measure.TracedInhalation;

/** One session's story at a time: inputs in, events and activities out. */
class RespondTest {

    @Test
    void aSessionBeginsWithItsCautionsThenItsFactsThenWhatComesBefore() {
        Story story = Story.of("/session/small.yaml");
        assertInstanceOf(Activity.Cautions.class, story.activity());
        story.goOn();
        assertEquals("wearer", field(story));
        story.type("W1");
        assertEquals("temperature", field(story));
        story.type("21,5");
        assertInstanceOf(Activity.Reading.class, story.activity());
        story.goOn();
        assertEquals(1, assertInstanceOf(Activity.NextDonning.class, story.activity()).round());
        assertEquals(
                "21.5 degC", story.state().captured().entry(2).orElseThrow().value().toString());
    }

    @Test
    void aWholeDonningRunsThroughEveryStep() {
        Story story = Story.atFirstDonning().purged();
        assertInstanceOf(Activity.Exercising.class, story.activity());
        story.exercised("40");
        assertInstanceOf(Activity.TrialReady.class, story.activity());
        story.inhaled(6.5);
        assertInstanceOf(Activity.Resting.class, story.activity());
        story.pass(30).inhaled(6.7);
        if (story.activity() instanceof Activity.Filling) {
            story.type("3");
        }
        assertInstanceOf(Activity.DonningDone.class, story.activity());
        story.goOn();
        assertEquals(Donning.Outcome.COMPLETE, story.state().course().donnings().get(0).outcome());
        assertEquals(2, assertInstanceOf(Activity.NextDonning.class, story.activity()).turn());
    }

    @Test
    void aStepForOneConditionIsLeftOutForTheOthers() {
        Story story = Story.atFirstDonning().donning("40", 6).donning("40", 6);
        long observed =
                story.state().captured().entries().stream()
                        .filter(
                                entry ->
                                        entry.slot() instanceof Slot.Field field
                                                && field.id().equals("comfort"))
                        .count();
        assertEquals(1, observed);
    }

    @Test
    void aFailedItemThatRepeatsBeginsTheChecklistAgainAndIsCounted() {
        Story story = Story.atFirstDonning().goOn().answer(false);
        assertEquals(0, assertInstanceOf(Activity.Checking.class, story.activity()).item());
        assertEquals(
                "The straps are seated", story.state().captured().failedChecks().get(0).text());
    }

    @Test
    void aFailedItemThatAbandonsEndsTheDonningWithItsReasonAndOffersTheSameTurn() {
        Story story = Story.atFirstDonning();
        Activity first = story.activity();
        story.goOn().goOn().answer(false);
        Donning donning = story.state().course().donnings().get(0);
        assertEquals(Donning.Outcome.ABANDONED, donning.outcome());
        assertEquals("check failed: The seal check holds", donning.reason());
        assertEquals(first, story.activity());
    }

    @Test
    void whatWasSeenAtAFailedCheckIsKeptWithIt() {
        Story story = Story.atFirstDonning().goOn().goOn();
        assertTrue(
                story.send(new Input.CheckFailed(" ")).refusal().startsWith("say what is not so"));
        story.send(new Input.CheckFailed("air at the nose"));
        assertEquals(
                "check failed: The seal check holds (air at the nose)",
                story.state().course().donnings().get(0).reason());
    }

    @Test
    void aFailedItemThatStopsHaltsEverything() {
        Story story = Story.atFirstDonning().goOn().goOn().goOn().answer(false);
        assertEquals(
                "check failed: You feel well",
                assertInstanceOf(Activity.Halted.class, story.activity()).why());
        assertTrue(story.state().course().open().isEmpty());
    }

    @Test
    void aTrialIsTimedFromTriggerToTrigger() {
        Story story = Story.atFirstDonning().purged().exercised("40").trigger();
        assertInstanceOf(Activity.LeadIn.class, story.activity());
        story.pass(3.1).trigger();
        assertInstanceOf(Activity.Pulling.class, story.activity());
        story.pass(6.4321).trigger();
        Activity.HoldAsked asked = assertInstanceOf(Activity.HoldAsked.class, story.activity());
        assertEquals(6.4321, asked.seconds(), 1e-9);
        story.answer(true);
        assertEquals("6.432 s", lastEntry(story).value().toString());
        assertEquals(Source.TIMED, lastEntry(story).source());
    }

    @Test
    void theTriggerIsRefusedEarlyInTheLeadInAndTakenWhenItIsOnlyAnticipated() {
        Story story = Story.atFirstDonning().purged().exercised("40").trigger().pass(1).trigger();
        assertTrue(story.refusal().contains("still counting down"));
        story.pass(1.6).trigger();
        assertInstanceOf(Activity.Pulling.class, story.activity());
    }

    @Test
    void aBouncingTriggerDoesNotEndATrial() {
        Story story = Story.atFirstDonning().purged().exercised("40").trigger().pass(3).trigger();
        story.pass(0.7).trigger();
        assertInstanceOf(Activity.Pulling.class, story.activity());
        story.pass(0.05).trigger();
        assertInstanceOf(Activity.HoldAsked.class, story.activity());
    }

    @Test
    void aPullThatWasNotHeldIsKeptStruckOutAndTakenAgainAfterARest() {
        Story story = Story.atFirstDonning().purged().exercised("40");
        story.trigger().pass(3).trigger().pass(5).trigger().answer(false);
        assertEquals("the pull was not held", lastEntry(story).struck().orElseThrow().reason());
        assertEquals(0, assertInstanceOf(Activity.Resting.class, story.activity()).trial());
    }

    @ParameterizedTest(name = "{0} s is offered for voiding: {1}")
    @CsvSource({"1.9,true", "2,false", "20,false", "20.1,true"})
    void implausibleTimesAreOfferedForVoiding(double seconds, boolean offered) {
        Story story = Story.atFirstDonning().purged().exercised("40").inhaled(seconds);
        assertEquals(offered, story.activity() instanceof Activity.VoidAsked);
    }

    @Test
    void anImplausibleTimeCanBeKept() {
        Story story = Story.atFirstDonning().purged().exercised("40").inhaled(1.5).answer(false);
        assertTrue(lastEntry(story).stands());
        assertInstanceOf(Activity.Resting.class, story.activity());
    }

    @Test
    void anImplausibleTimeThatIsVoidedIsTakenAgain() {
        Story story = Story.atFirstDonning().purged().exercised("40").inhaled(1.5).answer(true);
        assertTrue(lastEntry(story).struck().isPresent());
        story.pass(30);
        assertEquals(0, assertInstanceOf(Activity.TrialReady.class, story.activity()).trial());
    }

    /** The small comparison with everything timed beginning by itself. */
    private static Story handsFree() {
        String text =
                Story.text("/session/small.yaml")
                        .replace("for: 10 s\n", "for: 10 s\n    starts: by-itself\n")
                        .replace("feeds: fit\n", "feeds: fit\n    starts: by-itself\n")
                        .replace(
                                "feeds: inhalation\n",
                                "feeds: inhalation\n    starts: by-itself\n");
        return Story.opened(
                        new Event.SessionOpened("test", "small", text, 7, "typed", "", false, 1))
                .goOn()
                .type("W1")
                .type("21")
                .goOn();
    }

    @Test
    void whatStartsByItselfNeedsNoKey() {
        Story story = handsFree().goOn().goOn().goOn().goOn().pass(0).pass(10);
        assertInstanceOf(Activity.Exercising.class, story.pass(0).activity());
        story.pass(20).type("4000").type("40").pass(0);
        assertEquals(1, assertInstanceOf(Activity.Exercising.class, story.activity()).exercise());
        story.pass(20).type("40").type("4000").pass(0);
        assertInstanceOf(Activity.LeadIn.class, story.activity());
        story.pass(3).trigger().pass(5).trigger().answer(true).pass(30).pass(0);
        assertEquals(1, assertInstanceOf(Activity.LeadIn.class, story.activity()).trial());
    }

    @Test
    void whatStartsByItselfWaitsWhileEverythingStandsStill() {
        Story story = handsFree().goOn().goOn().goOn().goOn().pass(0);
        story.send(new Input.HaltPressed()).pass(60);
        assertInstanceOf(Activity.Halted.class, story.activity());
    }

    @Test
    void aPullDuringWhichTheClockJumpedIsOfferedForVoidingWithThatReason() {
        Story story = Story.atFirstDonning().purged().exercised("40");
        story.trigger().pass(3).trigger().pass(2).send(new Input.TimeDoubted("the clock jumped"));
        story.pass(3).trigger().answer(true);
        assertEquals(
                "the clock jumped",
                assertInstanceOf(Activity.VoidAsked.class, story.activity()).why());
        assertEquals("the clock jumped", story.state().captured().notes().get(0).text());
        story.answer(true);
        assertEquals("the clock jumped", lastEntry(story).struck().orElseThrow().reason());
    }

    @Test
    void aJumpOfTheClockOutsideAPullIsNotedAndDoubtsNothing() {
        Story story = Story.atFirstDonning().purged().exercised("40").trigger();
        story.send(new Input.TimeDoubted("the clock jumped")).pass(3).trigger();
        story.pass(6).trigger().answer(true);
        assertTrue(lastEntry(story).stands());
        assertInstanceOf(Activity.Resting.class, story.activity());
        assertEquals(1, story.state().captured().notes().size());
    }

    @Test
    void theDoubtEndsWithThePullItIsAbout() {
        Story story = Story.atFirstDonning().purged().exercised("40");
        story.trigger().pass(3).trigger().send(new Input.TimeDoubted("jumped")).pass(6);
        story.trigger().answer(true).answer(false).pass(30).inhaled(6);
        assertTrue(lastEntry(story).stands());
        assertInstanceOf(Activity.DonningDone.class, story.activity());
    }

    @Test
    void theRestIsNeverShorterThanDeclared() {
        Story story = Story.atFirstDonning().purged().exercised("40").inhaled(6).pass(29.9);
        assertInstanceOf(Activity.Resting.class, story.activity());
        assertTrue(story.goOn().refusal().startsWith("rest until"));
        story.pass(0.1);
        assertInstanceOf(Activity.TrialReady.class, story.activity());
    }

    @Test
    void anEntryOutsideItsRangeIsAskedAboutOnceMoreAndThenTaken() {
        Story story = Story.of("/session/small.yaml").goOn().type("W1").type("41");
        Activity.Doubting doubt = assertInstanceOf(Activity.Doubting.class, story.activity());
        assertEquals("41 degC is above the largest plausible 35 degC", doubt.why());
        story.answer(true);
        assertEquals("41 degC", lastEntry(story).value().toString());
    }

    @Test
    void aDoubtedEntryCanBeTypedAgain() {
        Story story =
                Story.of("/session/small.yaml")
                        .goOn()
                        .type("W1")
                        .type("2")
                        .answer(false)
                        .type("20");
        assertEquals("20 degC", lastEntry(story).value().toString());
        assertEquals(2, story.state().captured().entries().size());
    }

    @Test
    void undoVoidsTheLastEntryAndAsksForItAgain() {
        Story story = Story.atFirstDonning().purged().goOn().pass(20).type("4000");
        story.send(new Input.UndoAsked());
        assertEquals("undone", lastEntry(story).struck().orElseThrow().reason());
        assertInstanceOf(
                Slot.Ambient.class,
                assertInstanceOf(Activity.Filling.class, story.activity()).slot());
    }

    @Test
    void undoReachesBackIntoAStepThatWasDone() {
        Story story = Story.atFirstDonning().purged().exercised("40");
        story.send(new Input.UndoAsked());
        assertInstanceOf(Activity.Filling.class, story.activity());
        story.type("4100");
        assertInstanceOf(Activity.TrialReady.class, story.activity());
    }

    @Test
    void undoDoesNotReachIntoAnEarlierDonning() {
        Story story = Story.atFirstDonning().donning("40", 6).goOn().send(new Input.UndoAsked());
        assertTrue(story.refusal().startsWith("there is nothing to undo"));
    }

    @Test
    void anyEntryCanBeVoidedWithAReasonOnlyOnce() {
        Story story = Story.atFirstDonning().donning("40", 6);
        assertTrue(story.send(new Input.VoidAsked(3, " ")).refusal().startsWith("say why"));
        story.send(new Input.VoidAsked(3, "wrong tube"));
        assertEquals(
                "wrong tube",
                story.state().captured().entry(3).orElseThrow().struck().orElseThrow().reason());
        assertEquals(
                "entry 3 is struck out already", story.send(new Input.VoidAsked(3, "x")).refusal());
        assertEquals("there is no entry 99", story.send(new Input.VoidAsked(99, "x")).refusal());
    }

    @Test
    void aStruckDonningIsDoneAgainInItsOwnRound() {
        Story story = Story.atFirstDonning();
        Activity first = story.activity();
        story.donning("40", 6).donning("40", 6).donning("40", 6);
        story.send(new Input.StrikeAsked(1, "hair under the seal"));
        assertEquals(first, story.activity());
        assertEquals(4, story.goOn().state().course().open().orElseThrow().number());
    }

    @Test
    void stoppingBreaksAnExerciseOffAndOffersItAfresh() {
        Story story = Story.atFirstDonning().purged().goOn().pass(12).send(new Input.HaltPressed());
        assertInstanceOf(Event.ExerciseInterrupted.class, story.last().get(0));
        assertInstanceOf(Activity.Halted.class, story.activity());
        story.goOn();
        assertTrue(
                assertInstanceOf(Activity.Exercising.class, story.activity())
                        .startedAt()
                        .isEmpty());
    }

    @Test
    void stoppingBreaksATrialOffAndItsRestStillHolds() {
        Story story =
                Story.atFirstDonning().purged().exercised("40").trigger().pass(3).trigger().pass(2);
        story.send(new Input.HaltPressed()).goOn();
        assertInstanceOf(Activity.Resting.class, story.activity());
        assertTrue(
                story.state().captured().entries().stream()
                        .noneMatch(e -> e.slot() instanceof Slot.Trial));
    }

    @Test
    void aCountdownGoesOnThroughAStop() {
        Story story = Story.atFirstDonning().goOn().goOn().goOn().goOn().goOn().pass(4);
        story.send(new Input.HaltPressed()).pass(60).goOn().pass(0);
        assertInstanceOf(Activity.Exercising.class, story.activity());
    }

    @Test
    void aDonningIsAbandonedWithAReasonFromAnywhere() {
        Story story = Story.atFirstDonning().purged().goOn().pass(3);
        assertTrue(story.send(new Input.AbandonAsked("")).refusal().startsWith("say why"));
        story.send(new Input.AbandonAsked("strap slipped"));
        assertEquals("strap slipped", story.state().course().donnings().get(0).reason());
        assertInstanceOf(Activity.NextDonning.class, story.activity());
    }

    @Test
    void aReopenedSessionAsksWhetherTheMaskStayedOnAndOffersTheTrialAfresh() {
        Story story =
                Story.atFirstDonning().purged().exercised("40").trigger().pass(3).trigger().pass(1);
        story.send(new Input.Reopened("test"));
        assertEquals(
                List.of(
                        Event.SessionReopened.class,
                        Event.TrialInterrupted.class,
                        Event.Halted.class),
                story.last().stream().map(Object::getClass).toList());
        story.goOn().pass(30);
        assertEquals(0, assertInstanceOf(Activity.TrialReady.class, story.activity()).trial());
    }

    @Test
    void aReopenedSessionCountsTheRestThatReallyPassed() {
        Story story = Story.atFirstDonning().purged().exercised("40").inhaled(6).pass(10);
        story.pass(600).send(new Input.Reopened("test")).goOn().pass(0);
        assertInstanceOf(Activity.TrialReady.class, story.activity());
    }

    @Test
    void aSessionLeftBetweenDonningsIsTakenUpWhereItStood() {
        Story story = Story.atFirstDonning().donning("40", 6);
        Activity stood = story.activity();
        story.send(new Input.LeaveAsked()).send(new Input.Reopened("test"));
        assertEquals(stood, story.activity());
    }

    @Test
    void theHoldQuestionOutlivesAKill() {
        Story story =
                Story.atFirstDonning()
                        .purged()
                        .exercised("40")
                        .trigger()
                        .pass(3)
                        .trigger()
                        .pass(6)
                        .trigger();
        story.send(new Input.Reopened("test")).goOn();
        assertEquals(
                6, assertInstanceOf(Activity.HoldAsked.class, story.activity()).seconds(), 1e-9);
    }

    @Test
    void aGapCanBeLeftOutWithAReason() {
        Story story = Story.atFirstDonning().purged().goOn().pass(20).type("4000");
        story.send(new Input.LeaveOutAsked("counter froze"));
        assertInstanceOf(Activity.Exercising.class, story.activity());
        assertEquals("counter froze", story.state().captured().leftOut().get(0).reason());
    }

    @Test
    void theReasonToEndTheRepeatsIsKept() {
        Story story = Story.atFirstDonning();
        assertEquals(Optional.empty(), story.state().course().ended());
        story.send(new Input.EndAsked(" tired "));
        assertEquals(Optional.of("tired"), story.state().course().ended());
        story.type("").goOn();
        assertInstanceOf(Activity.Closed.class, story.activity());
        assertEquals(Optional.of("tired"), story.state().course().ended());
    }

    @Test
    void whatNeedNotBeAnsweredMayBeLeftEmpty() {
        Story story = Story.atFirstDonning().send(new Input.EndAsked("enough for today"));
        assertEquals("remarks", field(story));
        story.type("");
        assertInstanceOf(Activity.Closing.class, story.activity());
        story.goOn();
        assertInstanceOf(Activity.Closed.class, story.activity());
    }

    @Test
    void aSettledLookRecommendsTheEndAndTheTesterMayGoOn() {
        Story story = Story.atFirstDonning().donning("40", 6).donning("40", 6);
        assertTrue(story.state().lookDue());
        story.send(new Input.LookArrived(new Look(1, true, false, List.of())));
        assertEquals(new Activity.Recommended(true), story.activity());
        story.send(new Input.MoreAsked());
        assertEquals(2, assertInstanceOf(Activity.NextDonning.class, story.activity()).round());
    }

    @Test
    void aPlanUsedUpLeadsOnlyToTheEnd() {
        Story story = Story.atFirstDonning().donning("40", 6).donning("40", 6);
        story.send(new Input.LookArrived(new Look(1, false, true, List.of())));
        assertTrue(story.send(new Input.MoreAsked()).refusal().startsWith("the plan is used up"));
        story.goOn();
        assertEquals(Stage.AFTER, story.state().course().stage());
    }

    @Test
    void aVoidOfAnEntryThatALookUsedMakesANewLookDue() {
        Story story = Story.atFirstDonning().donning("40", 6).donning("40", 6);
        Look.Line used =
                new Look.Line(
                        "fit",
                        "disc",
                        1,
                        List.of(3, 4),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        "too-few-rounds",
                        false);
        story.send(new Input.LookArrived(new Look(1, false, false, List.of(used))));
        assertEquals(false, story.state().lookDue());
        story.send(new Input.VoidAsked(4, "typed in the wrong place"));
        assertEquals(true, story.state().lookDue());
    }

    @Test
    void readingsAreTakenOnlyForTheGapThatWaits() {
        Story story = Story.atFirstDonning().purged().goOn().pass(20);
        Slot waiting = ((Activity.Filling) story.activity()).slot();
        rigside.measure.Quantity value =
                new rigside.measure.Quantity(4000, rigside.measure.Unit.PER_CUBIC_CENTIMETRE);
        Slot other = new Slot.Mask(waiting.place(), 1);
        assertEquals(
                List.of(),
                story.send(new Input.ReadingArrived(other, value, Source.SIMULATED)).last());
        story.send(new Input.ReadingArrived(waiting, value, Source.SIMULATED));
        assertEquals(Source.SIMULATED, lastEntry(story).source());
    }

    @Test
    void freeNotesAreKeptWithTheDonningTheyWereWrittenIn() {
        Story story =
                Story.atFirstDonning().goOn().send(new Input.NoteTyped(" a draught at the nose "));
        assertEquals(
                new Captured.Note("a draught at the nose", 1, story.now()),
                story.state().captured().notes().get(0));
    }

    @Test
    void undoTakesBackTheLastThingOnlyOnce() {
        Story story = Story.atFirstDonning().purged().goOn().pass(20).type("4000").type("40");
        story.send(new Input.UndoAsked()).send(new Input.UndoAsked());
        assertTrue(story.refusal().startsWith("there is nothing to undo"));
        assertEquals(
                1, story.state().captured().entries().stream().filter(e -> !e.stands()).count());
    }

    @Test
    void undoAsksAgainForWhatWasLeftOut() {
        Story story = Story.of("/session/small.yaml").goOn().type("W1");
        story.send(new Input.LeaveOutAsked("no thermometer")).send(new Input.UndoAsked());
        assertEquals("temperature", field(story));
        assertTrue(story.state().captured().entry(1).orElseThrow().stands());
    }

    @Test
    void aFactVoidedLaterIsAskedForBeforeTheNextDonning() {
        Story story =
                Story.atFirstDonning().donning("40", 6).send(new Input.VoidAsked(2, "wrong room"));
        assertEquals("temperature", field(story));
        assertInstanceOf(Activity.NextDonning.class, story.type("19").activity());
    }

    @Test
    void aSpoiltExerciseIsDoneAgainWithItsReadingsStruckOut() {
        Story story = Story.atFirstDonning().purged().goOn().pass(20).type("4000");
        story.send(new Input.RetakeAsked("the tube came off"));
        assertEquals(0, assertInstanceOf(Activity.Exercising.class, story.activity()).exercise());
        assertEquals("the tube came off", lastEntry(story).struck().orElseThrow().reason());
        story.exercised("40");
        assertInstanceOf(Activity.TrialReady.class, story.activity());
    }

    @Test
    void noExerciseIsDoneAgainBeforeTheFirst() {
        Story story = Story.atFirstDonning().purged().send(new Input.RetakeAsked("why"));
        assertEquals("no exercise was done just now", story.refusal());
    }

    @Test
    void anExerciseThatCannotBeDoneIsLeftOutWithAllItsReadings() {
        Story story = Story.atFirstDonning().purged().goOn().pass(20).type("4000").type("40");
        story.send(new Input.LeaveOutAsked("the back hurts"));
        assertInstanceOf(Activity.TrialReady.class, story.activity());
        assertEquals(2, story.state().captured().leftOut().size());
    }

    @Test
    void aCheckInADonningIsNotLeftOut() {
        Story story = Story.atFirstDonning().goOn().send(new Input.LeaveOutAsked("in a hurry"));
        assertTrue(story.refusal().startsWith("a check is not left out here"));
    }

    @Test
    void aCheckOutsideDonningsIsLeftOutWithItsReasonKept() {
        Story story = bothSteps().send(new Input.LeaveOutAsked("no second chair"));
        assertInstanceOf(Activity.NextDonning.class, story.activity());
        assertEquals(
                "A steady chair is there (no second chair)",
                story.state().captured().failedChecks().get(0).text());
    }

    private static Story bothSteps() {
        String text =
                Story.text("/session/small.yaml")
                        .replace(
"""
  - step: note
    title: Before you begin
    say: Read this.
""",
"""
  - step: checklist
    title: Bench
    items:
      - check: A steady chair is there
        if-not: repeat
""");
        return Story.opened(new Event.SessionOpened("test", "t", text, 7, "typed", "", false, 1))
                .goOn()
                .type("W1")
                .type("21");
    }

    @Test
    void theLongerRestOfAnEarlierStepIsNotCutShortByALaterOne() {
        String text =
                Story.text("/session/small.yaml")
                        .replace(
                                "  - step: observations",
"""
  - step: trials
    title: More
    feeds: deeper
    trials: 2
    target: 100 Pa
    rest: 10 s
    shortest: 1 s
    longest: 20 s
  - step: observations
""")
                        .replace(
                                "plan:",
"""
  - id: deeper
    title: Deeper
    kind: timed-inhalation
    compare: ratio
    meaningful: 10 %
plan:""");
        Story story =
                Story.opened(new Event.SessionOpened("test", "t", text, 7, "typed", "", false, 1))
                        .goOn()
                        .type("W1")
                        .type("21")
                        .goOn()
                        .purged()
                        .exercised("40")
                        .inhaled(6)
                        .pass(30)
                        .inhaled(6);
        int first = lastEntry(story).number();
        story.pass(10);
        assertInstanceOf(Activity.TrialReady.class, story.activity());
        story.send(new Input.VoidAsked(first, "leaked"));
        assertInstanceOf(Activity.Resting.class, story.activity());
        story.pass(20);
        assertInstanceOf(Activity.TrialReady.class, story.activity());
    }

    @Test
    void aClosedSessionIsOnlyCorrected() {
        Story story = Story.atFirstDonning().send(new Input.EndAsked("enough")).type("").goOn();
        assertInstanceOf(Activity.Closed.class, story.activity());
        for (Input input : EVERYTHING) {
            boolean corrects =
                    input instanceof Input.VoidAsked || input instanceof Input.AmendAsked;
            assertEquals(corrects, !story.send(input).last().isEmpty(), input.toString());
        }
        assertEquals(
                "the session is closed; entries can still be amended or struck out, nothing else",
                story.send(new Input.StrikeAsked(1, "why")).refusal());
    }

    @Test
    void everySettledLookRecommendsTheEndAgain() {
        Story story = Story.atFirstDonning().donning("40", 6).donning("40", 6);
        story.send(new Input.LookArrived(new Look(1, true, false, List.of())))
                .send(new Input.MoreAsked());
        story.donning("40", 6).donning("40", 6);
        story.send(new Input.LookArrived(new Look(2, true, false, List.of())));
        assertEquals(new Activity.Recommended(true), story.activity());
    }

    @Test
    void aRoundDoneAgainIsLookedAtAgain() {
        Story story = Story.atFirstDonning().donning("40", 6).donning("40", 6);
        story.send(new Input.LookArrived(new Look(1, false, false, List.of())));
        assertEquals(false, story.state().lookDue());
        story.send(new Input.StrikeAsked(1, "hair under the seal"));
        story.donning("40", 6);
        assertEquals(true, story.state().lookDue());
    }

    @Test
    void aDonningStruckOutAfterTheRepeatsEndedIsDoneAgain() {
        Story story = Story.atFirstDonning().donning("40", 6).donning("40", 6);
        Donning last = story.state().course().donnings().get(1);
        story.send(new Input.EndAsked("enough")).send(new Input.StrikeAsked(2, "wrong disc"));
        assertEquals(new Activity.NextDonning(1, 2, last.condition()), story.activity());
        story.send(new Input.EndAsked("no time left"));
        assertEquals("remarks", field(story));
    }

    private static final TracedInhalation HELD =
            new TracedInhalation(-0.1, 6, 1500, 245.9, 20, 1, 0, true, 1);

    private static final List<Input> EVERYTHING =
            List.of(
                    new Input.GoOnPressed(),
                    new Input.TriggerPressed(),
                    new Input.Answered(true),
                    new Input.Answered(false),
                    new Input.CheckFailed("seen"),
                    new Input.Typed("12"),
                    new Input.Typed(""),
                    new Input.Ticked(),
                    new Input.TriggerPressed(true),
                    new Input.PullEnded(6),
                    new Input.PullTraced(HELD),
                    new Input.PullNotTraced("not seen"),
                    new Input.UndoAsked(),
                    new Input.AmendAsked(1, "W2", "why", false),
                    new Input.VoidAsked(1, "why"),
                    new Input.StrikeAsked(1, "why"),
                    new Input.LeaveOutAsked("why"),
                    new Input.RetakeAsked("why"),
                    new Input.NoteTyped("note"),
                    new Input.HaltPressed(),
                    new Input.AbandonAsked("why"),
                    new Input.MoreAsked(),
                    new Input.EndAsked("why"),
                    new Input.LeaveAsked(),
                    new Input.Reopened("test"));

    /**
     * Mostly what is asked, now and then anything at all; every activity is met and every journal
     * folds back.
     */
    @Test
    void whateverIsPressedTheJournalLeadsToTheSameState() {
        Random random = new Random(20261125);
        Set<Class<?>> met = new HashSet<>();
        for (int session = 0; session < 12; session++) {
            Story story = Story.opened(Gated.opening());
            met.add(story.activity().getClass());
            for (int i = 0; i < 1200 && !story.state().course().closed(); i++) {
                Input input =
                        random.nextInt(30) == 0
                                ? EVERYTHING.get(random.nextInt(EVERYTHING.size()))
                                : asked(story, random);
                story.send(input).pass(random.nextInt(12));
                if (story.state().lookDue()) {
                    int rounds = Schedule.completeRounds(story.state()).size();
                    Look look = new Look(rounds, rounds >= 2, rounds >= 4, List.of());
                    story.send(new Input.LookArrived(look));
                }
                met.add(story.activity().getClass());
            }
            assertEquals(story.state(), Evolve.fold(story.journal()));
        }
        assertEquals(Set.of(Activity.class.getPermittedSubclasses()), met);
    }

    private static Input asked(Story story, Random random) {
        Activity activity = story.activity();
        if (activity instanceof Activity.Filling filling) {
            boolean mask = filling.slot() instanceof Slot.Mask;
            if (filling.slot() instanceof Slot.Gate gate) {
                boolean missed = random.nextInt(4) == 0;
                return new Input.Typed(missed ? "500" : gate.gate() == 0 ? "0" : "4000");
            }
            return new Input.Typed(mask ? "40" : random.nextInt(8) == 0 ? "4" : "4000");
        }
        if (activity instanceof Activity.LeadIn || activity instanceof Activity.Pulling) {
            return new Input.TriggerPressed(random.nextBoolean());
        }
        if (activity instanceof Activity.Tracing) {
            return random.nextBoolean()
                    ? new Input.PullTraced(HELD)
                    : new Input.PullNotTraced("not seen");
        }
        boolean question =
                activity instanceof Activity.HoldAsked
                        || activity instanceof Activity.VoidAsked
                        || activity instanceof Activity.Doubting;
        return question ? new Input.Answered(random.nextBoolean()) : new Input.GoOnPressed();
    }

    private static String field(Story story) {
        return ((Slot.Field) assertInstanceOf(Activity.Filling.class, story.activity()).slot())
                .id();
    }

    private static Entry lastEntry(Story story) {
        List<Entry> entries = story.state().captured().entries();
        return entries.get(entries.size() - 1);
    }
}
