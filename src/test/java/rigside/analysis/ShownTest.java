package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.session.Activity;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Gated;
import rigside.session.Input;
import rigside.session.Place;
import rigside.session.Slot;
import rigside.session.Source;
import rigside.session.Stage;
import rigside.session.Story;
import rigside.session.Value;

class ShownTest {

    @Test
    void untilADonningEndsOnlyItsOwnReadingsAreOut() {
        Bench bench = Bench.plain().round(1, 12.1, 14.6).round(2, 11.4, 13.5).round(3, 12.8, 15.2);
        bench.start(4, "bare").exercises(20).trial(0, 12);
        Shown shown = bench.shown();
        assertFalse(shown.trialClock());
        assertFalse(shown.result());
        assertNothingOut(shown);
        assertEquals(
                List.of("Normal breathing", "Head up and down"),
                shown.measures().get(0).value(7).orElseThrow().parts().stream()
                        .map(Part::title)
                        .toList());
        assertTrue(shown.measures().get(0).value(1).orElseThrow().parts().isEmpty());
        assertTrue(shown.measures().get(1).value(7).orElseThrow().parts().isEmpty());
        assertEquals(
                "times of trials and the running result are concealed until the donning ends",
                shown.concealed());
    }

    @Test
    void betweenDonningsTheResultIsOut() {
        Bench bench = Bench.plain().round(1, 12.1, 14.6).round(2, 11.4, 13.5).round(3, 12.8, 15.2);
        Shown shown = bench.shown();
        assertTrue(shown.trialClock());
        assertTrue(shown.result());
        assertEquals("", shown.concealed());
        assertEquals(bench.analysis().measures(), shown.measures());
    }

    @Test
    void repeatsEndedTooEarlyAreSaidToGiveNoVerdict() {
        Bench bench = Bench.plain().round(1, 12.1, 14.6);
        bench.take(new Event.RepeatsEnded("tired"));
        assertEquals(
                "Ended early by the tester: tired. No verdict: 1 of at least 3 rounds",
                bench.shown().next());
        assertEquals("No verdict: 1 of at least 3 rounds.", bench.comparison("inhalation").next());
    }

    @Test
    void repeatsEndedUnsettledAdviseNoFurtherRound() {
        Bench bench = Bench.plain().round(1, 12.1, 14.6).round(2, 15.4, 13.5).round(3, 12.8, 13.2);
        bench.take(new Event.RepeatsEnded("tired"));
        assertEquals("3 rounds complete. Ended early by the tester: tired", bench.shown().next());
        String next = bench.comparison("inhalation").next();
        assertTrue(next.startsWith("The repeats were ended before it was settled."), next);
    }

    @Test
    void aDamagedSessionIsNotSaidToGoOn() {
        Bench bench = Bench.plain().round(1, 12.1, 14.6).round(2, 15.4, 13.5).round(3, 12.8, 13.2);
        Analysis analysis = Analysis.of(bench.state(), true);
        assertEquals(
                "3 rounds complete. This session cannot be gone on with: its journal is damaged",
                Shown.of(bench.state(), analysis).next());
        Comparison inhalation = analysis.measure("inhalation").orElseThrow().comparisons().get(0);
        assertTrue(
                inhalation.next().startsWith("Not settled, and this session cannot be gone on"),
                inhalation.next());
        assertEquals(OptionalDouble.empty(), inhalation.forecast().settlesWithinPlan());
    }

    @Test
    void ofADamagedSessionThatHadEndedTheEndIsTold() {
        Bench bench = Bench.plain().round(1, 12.1, 14.6).round(2, 15.4, 13.5).round(3, 12.8, 13.2);
        bench.take(new Event.RepeatsEnded("tired"));
        assertEquals(bench.shown(), Shown.of(bench.state(), Analysis.of(bench.state(), true)));
    }

    /** Else "enough repeats" at the head of a report seems to speak against it. */
    @Test
    void aMeasureThatDoesNotDecideSaysSoWhereItIsLeftUnsettled() {
        Bench bench = Bench.plain();
        for (int round = 1; round <= 3; round++) {
            bench.start(round, "bare").effort(200 + 40 * round).complete();
            bench.start(round, "disc").effort(300 - 30 * round).complete();
        }
        bench.take(new Event.RepeatsEnded("tired"));
        String next = bench.comparison("effort").next();
        assertTrue(next.startsWith("It was not to decide when to stop, and the repeats"), next);
    }

    @Test
    void whatTheTesterTypedIsNoSecretButATimeIs() {
        Bench bench = Bench.plain();
        bench.start(1, "bare").exercises(20).take(trial(bench, Source.TIMED));
        assertEquals(List.of(true, true, true, true, false), out(bench));
    }

    @Test
    void aTimeReadOffAFormOfPaperIsNoSecretEither() {
        Bench bench = Bench.plain();
        bench.start(1, "bare").exercises(20).take(trial(bench, Source.TYPED));
        assertEquals(List.of(true, true, true, true, true), out(bench));
    }

    private static Event trial(Bench bench, Source source) {
        return new Event.EntryCaptured(
                bench.state().captured().entries().size() + 1,
                new Slot.Trial(new Place(Stage.DONNING, 1, 2), 0),
                new Value.Measured(new Quantity(12, Unit.SECOND)),
                source);
    }

    private static List<Boolean> out(Bench bench) {
        return bench.state().captured().entries().stream().map(bench.shown()::isOut).toList();
    }

    @Test
    void untilTheSessionEndsNotEvenAVerdictIsOutButWhetherItGoesOn() {
        Bench bench = Bench.concealing("until-session-ends", "until-session-ends");
        bench.round(1, 12.1, 14.6).round(2, 11.4, 13.5).round(3, 12.8, 15.2);
        Shown goesOn = bench.shown();
        assertNothingOut(goesOn);
        assertFalse(goesOn.enough());
        assertEquals("3 rounds complete. Go on with another round", goesOn.next());
        bench.round(4, 12.0, 14.7);
        Shown enough = bench.shown();
        assertNothingOut(enough);
        assertTrue(enough.enough());
        assertEquals(
                "4 rounds complete. Enough repeats: no further round is needed", enough.next());
    }

    @Test
    void thatThePlanWillHardlySettleItIsSaidOnceResultsAreOut() {
        assertEquals(
                "3 rounds complete. Another round, or all that are left, will hardly settle what is"
                        + " open; stopping here is a choice",
                scattered(Bench.concealing("shown", "shown")).next());
        assertEquals(
                "3 rounds complete. Go on with another round",
                scattered(Bench.concealing("shown", "until-session-ends")).next());
    }

    private static Shown scattered(Bench bench) {
        return bench.round(1, 5, 9).round(2, 9, 5).round(3, 5, 8).shown();
    }

    @Test
    void whenTheSessionWaitsToBeClosedEverythingIsOut() {
        Bench bench = Bench.concealing("until-session-ends", "until-session-ends");
        bench.round(1, 12.1, 14.6).round(2, 11.4, 13.5).round(3, 12.8, 15.2);
        bench.take(new Event.RepeatsEnded("enough"));
        Shown shown = bench.shown();
        assertTrue(shown.result());
        assertTrue(shown.trialClock());
        assertEquals(bench.analysis().measures(), shown.measures());
        assertTrue(bench.take(new Event.SessionClosed()).shown().result());
    }

    @Test
    void timesMayBeOutWhileResultsAreNot() {
        Bench bench = Bench.concealing("shown", "until-session-ends");
        Shown shown = bench.start(1, "bare").exercises(20).trial(0, 12).shown();
        assertTrue(shown.trialClock());
        assertFalse(shown.result());
        assertNothingOut(shown);
        assertEquals(2, parts(shown).size(), "the two trials, and no exercise");
        assertEquals("the running result is concealed until the session ends", shown.concealed());
    }

    @Test
    void resultsMayBeOutWhileTimesAreNot() {
        Bench bench =
                Bench.concealing("until-session-ends", "shown").start(1, "bare").exercises(20);
        bench.trial(0, 12);
        Shown shown = bench.shown();
        assertTrue(shown.result());
        assertEquals(
                "times of trials and the results made of them are concealed until the session ends",
                shown.concealed());
        MeasureResult times = shown.measures().get(1);
        assertTrue(times.values().get(0).parts().isEmpty());
        assertFalse(shown.measures().get(0).values().get(0).parts().isEmpty());
    }

    @Test
    void outcomesAreNeverConcealed() {
        Bench bench = Bench.concealing("until-session-ends", "until-session-ends").start(1, "disc");
        bench.take(new Event.DonningAbandoned(1, "air at the chin"));
        assertEquals(
                List.of("donning 1: air at the chin"),
                bench.shown().measures().get(0).conditions().get(1).abandoned());
    }

    private static List<Part> parts(Shown shown) {
        return shown.measures().stream()
                .flatMap(each -> each.values().stream())
                .flatMap(each -> each.parts().stream())
                .toList();
    }

    private static void assertNothingOut(Shown shown) {
        for (MeasureResult each : shown.measures()) {
            assertTrue(each.comparisons().isEmpty());
            assertTrue(each.remarks().isEmpty());
            assertTrue(each.flags().isEmpty());
            assertTrue(each.method().isEmpty());
            assertTrue(each.values().stream().allMatch(value -> value.value().isEmpty()));
            assertTrue(each.values().stream().allMatch(value -> value.halved().isEmpty()));
            assertTrue(each.values().stream().allMatch(value -> value.level() == Level.NONE));
            assertTrue(each.conditions().stream().allMatch(c -> c.values().isEmpty()));
            assertTrue(each.conditions().stream().allMatch(c -> c.mean().isEmpty()));
        }
    }

    @Test
    void whatAGateReadIsOutWhateverIsConcealed() {
        Story story = Gated.zeroRead();
        Slot slot = ((Activity.Filling) story.activity()).slot();
        story.send(
                new Input.ReadingArrived(
                        slot, new Quantity(0, Unit.PER_CUBIC_CENTIMETRE), Source.INSTRUMENT));
        Entry read = story.state().captured().entries().get(2);
        Shown concealed = new Shown(false, false, "", 0, false, false, List.of(), "");
        assertEquals(true, concealed.isOut(read));
    }
}
