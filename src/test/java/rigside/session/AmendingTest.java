package rigside.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.measure.Quantity;
import rigside.measure.Unit;

class AmendingTest {
    private static final int WEARER = 1;
    private static final int TEMPERATURE = 2;
    private static final int AMBIENT = 3;
    private static final int MASK = 4;
    private static final int TRIAL = 7;

    /**
     * Entries 1 and 2 are facts, 3 to 6 concentrations, 7 and 8 times taken here, of one donning;
     * in the next one the first ambient concentration is typed.
     */
    private static Story oneDonning() {
        return Story.atFirstDonning().donning("40", 6).purged().goOn().pass(20).type("4000");
    }

    private static Optional<Entry> entry(Story story, int number) {
        return story.state().captured().entry(number);
    }

    private static Story shown() {
        String text =
                Story.text("/session/small.yaml")
                        .replace(
                                "  most: 4",
                                "  most: 4\n  conceal: {trial-clock: shown, result: shown}");
        return Story.opened(new Event.SessionOpened("test", "t", text, 7, "typed", "", false, 1))
                .goOn()
                .type("W1")
                .type("21")
                .goOn();
    }

    private static Story amend(Story story, int entry, String text) {
        return story.send(new Input.AmendAsked(entry, text, "misread", false));
    }

    @Test
    void anAmendedEntryKeepsNumberGapAndTimeAndTheValueBeforeStaysOnRecord() {
        Story story = shown().donning("40", 6);
        Entry before = entry(story, TRIAL).orElseThrow();
        assertEquals(Source.TIMED, before.source());
        amend(story, TRIAL, "7,25");
        Entry after = entry(story, TRIAL).orElseThrow();
        assertEquals(new Value.Measured(new Quantity(7.25, Unit.SECOND)), after.value());
        assertEquals(Source.TYPED, after.source());
        assertEquals(before.slot(), after.slot());
        assertEquals(before.at(), after.at());
        assertEquals(
                List.of(
                        new Entry.Earlier(
                                before.value(),
                                Source.TIMED,
                                Optional.empty(),
                                0,
                                "misread",
                                0,
                                story.now())),
                after.earlier());
        assertEquals(story.state(), Evolve.fold(story.journal()));
    }

    @ParameterizedTest(name = "entry {0} to ''{1}'': {2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "99 | 5 | there is no entry 99",
                "0 | 5 | there is no entry 0",
                "1 | W1 | entry 1 is 'W1' already",
                "1 | `` | nothing is typed yet; type an answer, then press Enter",
                "1 | longer than twelve | that is longer than 12 characters; shorten it",
                "2 | 21 | entry 2 is 21 degC already",
                "2 | 21,0 degC | entry 2 is 21 degC already",
                "2 | 294.15 K | entry 2 is 21 degC already",
                "2 | warm | 'warm' is not a number; type it like 12.4 or 12,4",
                "2 | 20 Pa | 'Pa' is not a unit of a temperature; leave the unit out or use one of:"
                        + " degC, K",
                "2 | 40 | 40 degC is above the largest plausible 35 degC; it is taken only if it"
                        + " is meant",
                "2 | 5 | 5 degC is below the smallest plausible 10 degC; it is taken only if it is"
                        + " meant",
                "3 | 0 | an ambient concentration of '0' gives no fit factor; type a number above"
                        + " 0, or leave it out with a reason",
                "4 | -1 | '-1' is below 0; a concentration is 0 or more",
                "4 | 3000 | 3000 /cm3 in the mask is more than half the ambient 4000 /cm3; it is"
                        + " taken only if it is meant",
                "6 | 100 | 100 /cm3 is far from the last ambient 4000 /cm3; it is taken only if it"
                        + " is meant",
                "7 | 0 | '0' is no time of an inhalation; type its seconds",
                "7 | 1.5 | 1.5 s is shorter than the shortest plausible 2 s; it is taken only if"
                        + " it is meant",
                "7 | 0.5 min | 30 s is longer than the longest plausible 20 s; it is taken only"
                        + " if it is meant",
                "7 | 6 | entry 7 is 6 s already",
            })
    void whatCouldNotHaveBeenTypedIsRefusedAsItWasThen(int entry, String text, String why) {
        Story story = shown().donning("40", 6);
        Story refused = amend(story, entry, text);
        assertEquals(why, refused.refusal());
        assertEquals(List.of(), refused.last());
    }

    @Test
    void whatIsNotPlausibleIsTakenFromSomebodyWhoIsSure() {
        Story story = oneDonning();
        story.send(new Input.AmendAsked(TEMPERATURE, "40", "the other thermometer", true));
        assertEquals("40 degC", entry(story, TEMPERATURE).orElseThrow().value().toString());
    }

    @Test
    void anEntryStruckOutIsNotAmended() {
        Story story = oneDonning().send(new Input.VoidAsked(MASK, "leaked"));
        assertEquals(
                "entry 4 is struck out; only what counts is amended",
                amend(story, MASK, "50").refusal());
    }

    @Test
    void withoutAReasonNothingIsAmended() {
        Story story = oneDonning().send(new Input.AmendAsked(WEARER, "W2", " ", false));
        assertTrue(story.refusal().startsWith("say why"), story.refusal());
        assertFalse(entry(story, WEARER).orElseThrow().isAmended());
    }

    @Test
    void anEntryThatIsAskedAboutIsAnsweredFirst() {
        Story story = Story.atFirstDonning().purged().exercised("40").inhaled(1);
        Activity.VoidAsked asked = assertInstanceOf(Activity.VoidAsked.class, story.activity());
        assertEquals(
                "say first whether this entry is struck out",
                amend(story, asked.entry(), "6").refusal());
    }

    /** Else what is concealed could be found by trying values. */
    @Test
    void theSameValueIsTakenWhereTheOldOneIsConcealed() {
        Story story = oneDonning();
        amend(story, TRIAL, "6");
        assertEquals("", story.refusal());
        assertEquals(Source.TYPED, entry(story, TRIAL).orElseThrow().source());
    }

    @Test
    void undoRightAfterItTakesAnAmendmentBackAndKeepsANoteOfIt() {
        Story story = oneDonning();
        State before = story.state();
        amend(story, AMBIENT, "4100");
        assertTrue(story.state().isUndoable());
        story.send(new Input.UndoAsked());
        assertEquals(List.of(new Event.AmendmentWithdrawn(AMBIENT)), story.last());
        assertEquals(before.captured().entries(), story.state().captured().entries());
        assertEquals(
                "taken back: entry 3 was amended to 4100 /cm3 (misread)",
                story.state().captured().notes().get(0).text());
        story.send(new Input.UndoAsked());
        assertEquals(List.of(), story.last(), "and no more than that");
    }

    @Test
    void undoAfterSomethingElseLeavesAnAmendmentAlone() {
        Story story = oneDonning();
        int next = story.state().captured().entries().size() + 1;
        amend(story, AMBIENT, "4100").type("38").send(new Input.UndoAsked());
        assertEquals(List.of(new Event.EntryVoided(next, "undone")), story.last());
        assertTrue(entry(story, AMBIENT).orElseThrow().isAmended());
    }

    @Test
    void undoInTheNextDonningLeavesAnAmendmentAlone() {
        Story story = Story.atFirstDonning().donning("40", 6);
        amend(story, AMBIENT, "4100").goOn();
        assertInstanceOf(Activity.Checking.class, story.activity());
        assertFalse(story.state().isUndoable());
    }

    /** The first look's value is the one that an amendment after it replaced. */
    @Test
    void anEntryKnowsItsValueAtEachLook() {
        Story story = shown().donning("40", 6);
        Value first = entry(story, MASK).orElseThrow().value();
        amend(story, MASK, "41");
        Value second = entry(story, MASK).orElseThrow().value();
        story.donning("40", 6).send(new Input.LookArrived(look(1)));
        amend(story, MASK, "42");
        assertTrue(story.state().lookDue());
        story.send(new Input.LookArrived(look(1)));
        assertFalse(story.state().lookDue());
        Entry last = entry(story, MASK).orElseThrow();
        assertEquals(2, last.earlier().size());
        assertEquals(first, last.earlier().get(0).value());
        assertEquals(second, last.asLooked(0).value());
        assertEquals(last, last.asLooked(1));
    }

    /** Wearer, room and comfort enter no value and decide about no step. */
    @Test
    void whatNoValueRestsOnIsAmendedWithoutALook() {
        Story story = shown().donning("40", 6).donning("40", 6);
        story.send(new Input.LookArrived(look(1)));
        int comfort =
                story.state().captured().entries().stream()
                        .filter(each -> each.slot() instanceof Slot.Field)
                        .filter(each -> each.slot().place().stage() == Stage.DONNING)
                        .findFirst()
                        .orElseThrow()
                        .number();
        amend(amend(amend(story, WEARER, "W2"), TEMPERATURE, "22"), comfort, "1");
        assertTrue(entry(story, comfort).orElseThrow().isAmended());
        assertFalse(story.state().lookDue());
        assertTrue(amend(story, TRIAL, "6.5").state().lookDue());
    }

    private static Look look(int round) {
        return new Look(round, false, false, List.of());
    }

    @Test
    void aClosedSessionIsAmendedAndStruckAndLookedAtAndNothingElse() {
        Story story = shown().donning("40", 6).donning("40", 6);
        story.send(new Input.LookArrived(look(1))).send(new Input.EndAsked("enough"));
        story.type("").goOn();
        assertInstanceOf(Activity.Closed.class, story.activity());
        assertTrue(
                story.send(new Input.LookArrived(look(1))).refusal().startsWith("the session is"));
        amend(story, MASK, "44");
        assertEquals(List.of(new Event.EntryAmended(MASK, value(44), "misread")), story.last());
        assertTrue(story.state().lookDue());
        story.send(new Input.LookArrived(look(1)));
        assertFalse(story.state().lookDue());
        story.send(new Input.VoidAsked(MASK, "leaked"));
        assertEquals("", story.refusal());
        assertInstanceOf(Activity.Closed.class, story.activity());
        assertFalse(story.state().isUndoable());
        assertEquals(story.state(), Evolve.fold(story.journal()));
        State closed = story.state();
        for (Event event :
                List.of(
                        new Event.NoteWritten("late"),
                        new Event.DonningStarted(3, 2, 1, "disc"),
                        new Event.AmendmentWithdrawn(MASK),
                        new Event.SessionReopened("test"),
                        new Event.SessionClosed())) {
            assertThrows(DoesNotApply.class, () -> Evolve.step(closed, event, story.now()));
        }
    }

    private static Value value(double perCubicCentimetre) {
        return new Value.Measured(new Quantity(perCubicCentimetre, Unit.PER_CUBIC_CENTIMETRE));
    }

    @Test
    void anEventThatAmendsWhatIsNotThereOrIsOfAnotherKindDoesNotApply() {
        State state = oneDonning().state();
        for (Event event :
                List.of(
                        new Event.EntryAmended(99, value(1), "why"),
                        new Event.EntryAmended(WEARER, value(1), "why"),
                        new Event.EntryAmended(MASK, new Value.Said("1"), "why"),
                        new Event.AmendmentWithdrawn(MASK))) {
            assertThrows(DoesNotApply.class, () -> Evolve.step(state, event, 1L << 60));
        }
    }

    /** Everything is amended, struck out and undone at random between steps of two donnings. */
    @Test
    void whateverIsAmendedTheJournalLeadsToTheSameState() {
        Random random = new Random(20_261_128);
        int amended = 0;
        for (int session = 0; session < 40; session++) {
            Story story = shown();
            for (int donning = 0; donning < 3; donning++) {
                story.donning("40", 6);
                for (int times = 0; times < 6; times++) {
                    story.send(any(random, story.state().captured().entries().size()));
                    amended += story.last().stream().anyMatch(AmendingTest::amends) ? 1 : 0;
                    if (story.state().lookDue()) {
                        int rounds = Schedule.completeRounds(story.state()).size();
                        story.send(new Input.LookArrived(look(rounds)));
                    }
                }
            }
            assertEquals(story.state(), Evolve.fold(story.journal()));
        }
        assertTrue(amended > 200, "only " + amended);
    }

    private static boolean amends(Event event) {
        return event instanceof Event.EntryAmended;
    }

    private static Input any(Random random, int entries) {
        int entry = 1 + random.nextInt(entries + 1);
        return switch (random.nextInt(5)) {
            case 0 -> new Input.UndoAsked();
            case 1 -> new Input.VoidAsked(entry, "why");
            default -> new Input.AmendAsked(entry, String.valueOf(random.nextInt(50)), "why", true);
        };
    }
}
