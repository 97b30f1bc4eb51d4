package rigside.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

/** What has to hold before a test starts, with values typed. */
class GateTest {
    private static final Place GATES = new Place(Stage.BEFORE, 0, 1);
    private static final Slot ROOM = new Slot.Gate(GATES, 1);

    @Test
    void aGateIsReadAsLongAsTheProtocolSaysThenItsValueIsWanted() {
        Story story = Gated.atGates();
        assertEquals(new Activity.Gating(GATES, 0, OptionalLong.empty()), story.activity());
        story.goOn().pass(59.9);
        assertInstanceOf(Activity.Gating.class, story.activity());
        story.pass(0.1);
        assertEquals(new Activity.Filling(new Slot.Gate(GATES, 0)), story.activity());
    }

    @Test
    void gatesThatAreMetLeadOn() {
        Story story = Gated.roomRead().type("1000");
        assertInstanceOf(Activity.Reading.class, story.activity());
    }

    @Test
    void theTriggerStartsReadingToo() {
        Story story = Gated.atGates().trigger();
        assertEquals(List.of(new Event.GateStarted(GATES, 0)), story.last());
    }

    @Test
    void aGateNotMetStandsInTheWayWhateverIsPressed() {
        Story story = Gated.roomRead().type("430");
        assertEquals(new Activity.GateMissed(GATES, 1, 4), story.activity());
        story.trigger().answer(true).answer(false).pass(600);
        assertEquals(new Activity.GateMissed(GATES, 1, 4), story.activity());
    }

    @Test
    void readAgainTheFirstReadingIsKeptStruckOut() {
        Story story = Gated.roomRead().type("430").goOn();
        assertEquals(new Activity.Gating(GATES, 1, OptionalLong.empty()), story.activity());
        assertEquals(
                "the gate needs at least 1000 /cm3; read again",
                story.state().captured().entry(4).orElseThrow().struck().orElseThrow().reason());
        story.goOn().pass(10).type("1500");
        assertInstanceOf(Activity.Reading.class, story.activity());
    }

    @Test
    void goingOnAllTheSameNeedsAReasonAndKeepsIt() {
        Story story = Gated.roomRead().type("430").send(new Input.LeaveOutAsked(" "));
        assertEquals("say why in a few words; the reason is kept", story.refusal());
        story.send(new Input.LeaveOutAsked("the room gives no more today"));
        assertEquals(
                List.of(new Event.SlotLeftOut(ROOM, "the room gives no more today")), story.last());
        assertInstanceOf(Activity.Reading.class, story.activity());
        assertTrue(story.state().captured().entry(4).orElseThrow().stands());
    }

    @Test
    void goingOnAllTheSameIsUndone() {
        Story story = Gated.roomRead().type("430").send(new Input.LeaveOutAsked("no more today"));
        story.send(new Input.UndoAsked());
        assertEquals(new Activity.GateMissed(GATES, 1, 4), story.activity());
    }

    @Test
    void aGateCanBePassedOverUnreadWithAReason() {
        Story story = Gated.atGates().send(new Input.LeaveOutAsked("no zero filter here"));
        assertEquals(new Activity.Gating(GATES, 1, OptionalLong.empty()), story.activity());
    }

    @Test
    void aValueTakenBackIsReadAfreshNotFilledIn() {
        Story story = Gated.roomRead().type("1500").send(new Input.UndoAsked());
        assertEquals(new Activity.Gating(GATES, 1, OptionalLong.empty()), story.activity());
        story.goOn().pass(10).type("1400").send(new Input.VoidAsked(3, "the filter leaked"));
        assertEquals(new Activity.Gating(GATES, 0, OptionalLong.empty()), story.activity());
        story.goOn().pass(60).type("0.01");
        assertInstanceOf(Activity.Reading.class, story.activity());
    }

    @Test
    void aReadingBrokenOffIsOfferedAfresh() {
        Story story = Gated.atGates().goOn().pass(30).send(new Input.HaltPressed());
        assertEquals(new Event.GateInterrupted(GATES, 0), story.last().get(0));
        story.goOn();
        assertEquals(new Activity.Gating(GATES, 0, OptionalLong.empty()), story.activity());
    }

    @Test
    void aGateThatGaveNoValueIsReadAgainWithoutAReason() {
        Story story = Gated.roomRead().send(new Input.RetakeAsked(""));
        assertEquals(List.of(new Event.GateReopened(GATES, 1)), story.last());
        assertEquals(new Activity.Gating(GATES, 1, OptionalLong.empty()), story.activity());
        story.goOn().pass(10).type("1500");
        assertInstanceOf(Activity.Reading.class, story.activity());
        assertEquals(story.state(), Evolve.fold(story.journal()));
    }

    @Test
    void aConcentrationBelowZeroIsRefused() {
        Story story = Gated.zeroRead().type("-1");
        assertEquals("'-1' is below 0; a concentration is 0 or more", story.refusal());
    }

    @Test
    void theJournalLeadsToTheSameState() {
        Story story = Gated.roomRead().type("430").goOn().goOn().pass(10).type("1500");
        assertEquals(story.state(), Evolve.fold(story.journal()));
    }
}
