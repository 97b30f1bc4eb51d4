package rigside.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Steps that repeat, and steps that depend on an earlier answer. */
class GroupsTest {
    private static final int FIRST_READING = 6;
    private static final int AT_END = 9;
    private static final int MUCH = 10;

    /** The first donning's first seal check waits. */
    private static Story atSealCheck(String beard) {
        Story story = Story.of("/session/groups.yaml").goOn().type("60").type(beard);
        return story.activity() instanceof Activity.Reading ? story : story.goOn();
    }

    private static Place place(int step) {
        return new Place(Stage.DONNING, 1, step);
    }

    /** A donning in which the seal held at once: the first of three readings waits. */
    private static Story atReadings() {
        return atSealCheck("shaved").goOn().goOn();
    }

    private static List<Integer> steps(Story story) {
        return Applicable.steps(story.state(), Stage.DONNING, 1);
    }

    @Test
    void aFactDecidesAStepBeforeTheFirstDonning() {
        assertInstanceOf(Activity.Reading.class, atSealCheck("stubble").activity());
        assertInstanceOf(Activity.Checking.class, atSealCheck("shaved").activity());
    }

    @Test
    void aSealThatHoldsLeadsPastTheFurtherChecks() {
        Story story = atReadings();
        assertEquals(
                new Activity.Filling(new Slot.Field(place(FIRST_READING), "drop-read")),
                story.activity());
        assertEquals(List.of(0, 6, 7, 8, 9), steps(story));
        assertEquals(List.of(), story.state().captured().failedChecks());
    }

    @Test
    void aNoThatGoesOnIsCountedAndLeadsToTheStepsThatNeedIt() {
        Story story = atSealCheck("shaved").answer(false);
        assertEquals(new Activity.Checking(place(0), 1), story.activity());
        assertEquals(
                List.of("The seal holds when you breathe out"),
                story.state().captured().failedChecks().stream()
                        .map(Captured.FailedCheck::text)
                        .toList());
        story.goOn();
        assertEquals(new Activity.Reading(place(1)), story.activity());
        story.goOn();
        assertEquals(new Activity.Checking(place(2), 0), story.activity());
    }

    /** The use of the group depends on the answer before it, so it is done to its end. */
    @Test
    void aGroupThatDependsOnAnAnswerIsDoneWholeOrNotAtAll() {
        Story story = atSealCheck("shaved").answer(false).goOn().goOn();
        story.goOn();
        assertEquals(new Activity.Checking(place(2), 1), story.activity());
        story.goOn();
        assertEquals(
                new Activity.Filling(new Slot.Field(place(FIRST_READING), "drop-read")),
                story.activity());
        assertEquals(List.of(0, 1, 2, 6, 7, 8, 9), steps(story));
    }

    @Test
    void eachCopyLooksAtTheAnswerGivenLastBeforeIt() {
        Story story = atSealCheck("shaved").answer(false).goOn().goOn();
        story.answer(false).goOn().goOn();
        assertEquals(new Activity.Checking(place(4), 0), story.activity());
        story.answer(false).goOn().goOn();
        assertEquals(
                new Activity.Filling(new Slot.Field(place(FIRST_READING), "drop-read")),
                story.activity());
        assertEquals(3, story.state().captured().failedChecks().size());
    }

    @Test
    void aListStartedAnewAsksItsChecksAnew() {
        Story story = atSealCheck("shaved").answer(false);
        assertEquals(Checked.NOT_SO, story.state().course().checked(place(0), 0).orElseThrow());
        assertTrue(story.state().course().checked(place(0), 1).isEmpty());
    }

    @Test
    void aMistakenNoIsTakenBackAndCountedNoMore() {
        Story story = atSealCheck("shaved").answer(false);
        assertTrue(story.state().isUndoable());
        story.send(new Input.UndoAsked());
        assertEquals(new Activity.Checking(place(0), 0), story.activity());
        assertEquals(List.of(), story.state().captured().failedChecks());
        assertEquals(
                List.of("taken back: a no at \"The seal holds when you breathe out\""),
                story.state().captured().notes().stream().map(Captured.Note::text).toList());
        assertFalse(story.state().isUndoable());
        story.goOn().goOn();
        assertEquals(List.of(0, 6, 7, 8, 9), steps(story));
        assertEquals(story.state(), Evolve.fold(story.journal()));
    }

    /** An Enter too many hides the steps a no would have led to. */
    @Test
    void aMistakenYesIsTakenBackToo() {
        Story story = atSealCheck("shaved").goOn().send(new Input.UndoAsked());
        assertEquals(new Activity.Checking(place(0), 0), story.activity());
        story.answer(false).goOn();
        assertEquals(new Activity.Reading(place(1)), story.activity());
    }

    @Test
    void anAnswerIsTakenBackFromTheStepsAfterIt() {
        Story story = atSealCheck("shaved").answer(false).goOn().goOn();
        assertEquals(new Activity.Checking(place(2), 0), story.activity());
        story.send(new Input.UndoAsked());
        assertEquals(new Activity.Checking(place(0), 0), story.activity());
        story.goOn();
        assertEquals(new Activity.Checking(place(0), 1), story.activity());
        story.goOn();
        assertEquals(
                new Activity.Filling(new Slot.Field(place(FIRST_READING), "drop-read")),
                story.activity());
    }

    @Test
    void undoTakesBackTheLastOfAnswersAndEntriesAndOnlyThat() {
        Story story = atReadings().type("50").send(new Input.UndoAsked());
        assertEquals(List.of(new Event.EntryVoided(3, "undone")), story.last());
        story.send(new Input.UndoAsked());
        assertEquals(List.of(), story.last());
        assertTrue(story.refusal().startsWith("there is nothing to undo"), story.refusal());
    }

    @Test
    void aGapLeftOutAfterAnAnswerIsTheOneTakenBack() {
        Story story = atReadings().send(new Input.LeaveOutAsked("the hose came off"));
        story.send(new Input.UndoAsked());
        Slot first = new Slot.Field(place(FIRST_READING), "drop-read");
        assertEquals(List.of(new Event.LeaveOutWithdrawn(first)), story.last());
        story.send(new Input.UndoAsked());
        assertEquals(List.of(new Event.ItemReopened(place(0), 0)), story.last());
    }

    @Test
    void theAnswerOfAnEarlierDonningIsNotTakenBack() {
        Story story = atReadings().type("50").type("51").type("52").type("60").goOn().goOn();
        assertEquals(2, story.state().course().open().orElseThrow().number());
        assertFalse(story.state().isUndoable());
    }

    @Test
    void onlyAnAnswerThatStandsIsTakenBack() {
        Story story = atSealCheck("shaved");
        Recorded reopened =
                new Recorded(
                        story.journal().size() + 1,
                        story.journal().get(0).wall(),
                        0,
                        new Event.ItemReopened(place(0), 0));
        List<Recorded> damaged = new ArrayList<>(story.journal());
        damaged.add(reopened);
        assertThrows(DoesNotApply.class, () -> Evolve.fold(damaged));
    }

    @Test
    void aNumberDecidesInWhateverUnitTheLimitIsIn() {
        Story below = atReadings().type("50").type("51").type("52").type("100");
        assertEquals(new Activity.DonningDone(1), below.activity());
        Story above = atReadings().type("50").type("51").type("52").type("101");
        assertEquals(new Activity.Filling(new Slot.Field(place(MUCH), "why")), above.activity());
    }

    @Test
    void anAnswerLeftOutLeadsPastTheStep() {
        Story story = atReadings().type("50").type("51").type("52");
        story.send(new Input.LeaveOutAsked("the gauge fell"));
        assertEquals(new Activity.DonningDone(1), story.activity());
        assertFalse(steps(story).contains(MUCH));
    }

    @Test
    void anAnswerTakenBackDecidesAnew() {
        Story story = atReadings().type("50").type("51").type("52").type("101");
        assertTrue(steps(story).contains(MUCH));
        story.send(new Input.UndoAsked());
        assertEquals(
                new Activity.Filling(new Slot.Field(place(AT_END), "end-drop")), story.activity());
        assertFalse(steps(story).contains(MUCH));
        story.type("99");
        assertEquals(new Activity.DonningDone(1), story.activity());
    }

    @Test
    void anAnswerStruckOutLaterTakesTheStepWithItAndANewOneBringsItBack() {
        Story story = atReadings().type("50").type("51").type("52").type("101").type("wet");
        assertEquals(new Activity.DonningDone(1), story.activity());
        int answer = story.state().captured().entries().size() - 1;
        story.send(new Input.VoidAsked(answer, "misread"));
        assertFalse(steps(story).contains(MUCH));
        story.type("180");
        assertTrue(steps(story).contains(MUCH));
        assertEquals(new Activity.DonningDone(1), story.activity());
    }

    /** Steps of the donning may depend on it, so it is not left for the next one. */
    @Test
    void aFactStruckOutIsAskedForBeforeTheDonningEnds() {
        Story story = atReadings().type("50").type("51").type("52").type("60");
        assertEquals(new Activity.DonningDone(1), story.activity());
        story.send(new Input.VoidAsked(1, "misread"));
        Slot flow = new Slot.Field(new Place(Stage.BEFORE, 0, 0), "flow");
        assertEquals(new Activity.Filling(flow), story.activity());
        story.pass(1).type("16");
        assertEquals(new Activity.DonningDone(1), story.activity());
        story.send(new Input.UndoAsked());
        assertEquals(new Activity.Filling(flow), story.activity(), "what was typed last");
        story.type("61");
        assertEquals(new Activity.DonningDone(1), story.activity());
        assertEquals(story.state(), Evolve.fold(story.journal()));
    }

    @Test
    void whatIsForOneConditionMayDependOnAnAnswerToo() {
        Story story = atReadings().type("50").type("51").type("52").type("60").goOn();
        String second = story.goOn().state().course().donnings().get(1).condition();
        story.goOn().goOn().type("50").type("51").type("52").type("60");
        if (second.equals("disc")) {
            story.type("2");
            assertEquals(new Activity.Reading(new Place(Stage.DONNING, 2, 12)), story.activity());
        } else {
            assertEquals(new Activity.DonningDone(2), story.activity());
        }
    }

    @Test
    void theJournalLeadsToTheSameState() {
        Story story = atSealCheck("stubble").goOn().goOn().answer(false).goOn().goOn();
        story.answer(true).goOn().type("50").type("51").type("52").type("101");
        story.send(new Input.UndoAsked());
        assertEquals(story.state(), Evolve.fold(story.journal()));
    }
}
