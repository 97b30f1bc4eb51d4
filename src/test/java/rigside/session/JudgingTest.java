package rigside.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.measure.Breath;
import rigside.measure.Quantity;
import rigside.measure.TracedInhalation;
import rigside.measure.Unit;

/** The small comparison, its trials with a pressure trace: 250 Pa are to be held. */
class JudgingTest {
    private static final TracedInhalation HELD = pull(240, 0.9, 1);

    @Test
    void theTimeAtTheTargetCountsAndNobodyIsAskedWhetherItWasHeld() {
        Story story = pulled(8, true).send(new Input.PullTraced(HELD));
        Entry entry = lastEntry(story);
        assertEquals(
                new Value.Measured(new Quantity(1500.0 / 250, Unit.SECOND)),
                entry.value(),
                "1500 Pa s at 250 Pa; the presses were 8 s apart");
        assertEquals(Source.INSTRUMENT, entry.source());
        assertEquals(new Trace.Pull(8, HELD), entry.pull().orElseThrow());
        assertInstanceOf(Activity.Resting.class, story.activity());
        assertEquals(story.state(), Evolve.fold(story.journal()));
    }

    @Test
    void whatIsInventedIsCalledSo() {
        Story story =
                Story.opened(
                        new Event.SessionOpened(
                                "test", "small", toleranceText(""), 7, "", "", true, 1));
        pulled(story.goOn().type("W1").type("21").goOn(), 8, true).send(new Input.PullTraced(HELD));
        assertEquals(Source.SIMULATED, lastEntry(story).source());
    }

    @Test
    void untilTheTraceIsThereNothingIsCaptured() {
        Story story = pulled(8, true);
        int before = story.state().captured().entries().size();
        Activity.Tracing tracing =
                assertInstanceOf(
                        Activity.Tracing.class, story.goOn().answer(true).trigger().activity());
        assertEquals(8, tracing.seconds(), 1e-9);
        assertEquals(8_000_000_000L, tracing.since() - tracing.pressedAt());
        assertEquals(before, story.state().captured().entries().size());
    }

    @Test
    void aTraceThatShowsNoPullLeadsBackToTheQuestionAndTheClock() {
        Story story = pulled(8, true).send(new Input.PullNotTraced("the gauge was silent"));
        Activity.HoldAsked asked = assertInstanceOf(Activity.HoldAsked.class, story.activity());
        assertEquals(8, asked.seconds(), 1e-9);
        assertEquals(Optional.of("the gauge was silent"), asked.why());
        story.answer(true);
        assertEquals(Optional.of("the gauge was silent"), lastEntry(story).untraced());
        assertEquals(Source.TIMED, lastEntry(story).source());
        assertEquals(Optional.empty(), lastEntry(story).trace());
        List<Captured.Note> notes = story.state().captured().notes();
        assertEquals("the gauge was silent", notes.get(notes.size() - 1).text());
    }

    @Test
    void aTraceNobodyWaitsForChangesNothing() {
        Story story = pulled(8, false);
        assertEquals(List.of(), story.send(new Input.PullTraced(HELD)).last());
        assertEquals(List.of(), story.send(new Input.PullNotTraced("late")).last());
        assertInstanceOf(Activity.HoldAsked.class, story.activity());
    }

    @ParameterizedTest(name = "mean {0} Pa, {1} of the time inside, {2} breaths")
    @CsvSource(
            delimiter = '|',
            value = {
                "250 | 0.9  | 1 | ",
                "202 | 0.55 | 1 | ",
                "190 | 0.9  | 1 | the mean pressure was about 190 Pa, not within 20 % of 250 Pa",
                "310 | 0.9  | 1 | the mean pressure was about 310 Pa, not within 20 % of 250 Pa",
                "250 | 0.38 | 1 | the pressure was within 20 % of 250 Pa for about 40 % of the pull only",
                "250 | 0.9  | 2 | the pressure shows 2 breaths in, not one",
            })
    void aPullOutsideItsToleranceIsOfferedForVoidingAndNeverVoidedByItself(
            double mean, double within, int pulls, String why) {
        Story story = tolerant("    tolerance: 20 %\n", 8);
        story.send(new Input.PullTraced(pull(mean, within, pulls)));
        assertTrue(lastEntry(story).stands());
        assertEquals(Optional.ofNullable(why), offered(story));
        if (why != null) {
            story.answer(true);
            assertEquals(why, lastEntry(story).struck().orElseThrow().reason());
            assertTrue(lastEntry(story).pull().isPresent(), "what was struck out keeps its trace");
        }
    }

    @ParameterizedTest(name = "mean {0} Pa, {1} of the time inside")
    @CsvSource(
            delimiter = '|',
            value = {
                "194 | 0.9   | the mean pressure was 194 Pa, not within 20 % of 250 Pa",
                "250 | 0.377 | the pressure was within 20 % of 250 Pa for 38 % of the pull only",
            })
    void whereTheClockIsShownItIsSaidExactly(double mean, double within, String why) {
        String text =
                toleranceText("    tolerance: 20 %\n")
                        .replace("  most: 4\n", "  most: 4\n  conceal: {trial-clock: shown}\n");
        Story story =
                pulled(opened(text), 8, true).send(new Input.PullTraced(pull(mean, within, 1)));
        assertEquals(why, assertInstanceOf(Activity.VoidAsked.class, story.activity()).why());
    }

    @ParameterizedTest(name = "presses 0 and {0} s, pull from {1} to {2} s")
    @CsvSource(
            delimiter = '|',
            value = {
                "8    |  0.9 |  8.9 | ",
                "8    | -0.9 |  7.1 | ",
                "12   |  2.3 | 14.3 | ",
                "15.6 | 12.2 | 15.3 | the pull began long after the first press",
                "9    | -2   |  7   | the pull began long before the first press; "
                        + "the pull ended long before the second",
                "5    |  0.1 | 6.5  | the pull ended long after the second",
            })
    void aPullFarFromItsPressesIsOfferedForVoiding(
            double pressed, double start, double end, String why) {
        Story story = pulled(pressed, true).send(new Input.PullTraced(from(start, end)));
        assertEquals(Optional.ofNullable(why), offered(story));
    }

    @Test
    void howFarAPullIsFromItsPressesIsSaidInSecondsOnlyWhereTheClockIsShown() {
        String text =
                Story.text("/session/small.yaml")
                        .replace("  most: 4\n", "  most: 4\n  conceal: {trial-clock: shown}\n");
        Story story =
                pulled(opened(text), 15.6, true).send(new Input.PullTraced(from(12.23, 15.3)));
        assertEquals(Optional.of("the pull began 12 s after the first press"), offered(story));
    }

    @Test
    void theProtocolSaysForHowLongAPullHasToBeHeld() {
        Story story = tolerant("    tolerance: 20 %\n    held-for: 95 %\n", 8);
        story.send(new Input.PullTraced(HELD));
        assertInstanceOf(Activity.VoidAsked.class, story.activity());
    }

    @Test
    void withoutAToleranceNoPressureIsOutsideIt() {
        Story story = pulled(8, true).send(new Input.PullTraced(pull(100, 0, 1)));
        assertInstanceOf(Activity.Resting.class, story.activity());
    }

    @Test
    void plausibleIsTheTimeThatCountsAndAClockThatJumpedIsDoubtedAllTheSame() {
        Story story = tolerant("    tolerance: 20 %\n", 1.2, new Input.TimeDoubted("it jumped"));
        story.send(new Input.PullTraced(from(0, 1)));
        assertEquals(
                "it jumped; shorter than the shortest plausible 2 s",
                assertInstanceOf(Activity.VoidAsked.class, story.activity()).why());
    }

    @Test
    void aStopWhileTheTraceIsReadKeepsIt() {
        Story story = pulled(8, true).send(new Input.HaltPressed()).goOn();
        story.send(new Input.PullTraced(HELD));
        assertEquals(Source.INSTRUMENT, lastEntry(story).source());
    }

    @Test
    void breathsGiveTheMedianOfTheirPeaksInTheUnitOfTheStep() {
        String text =
                Story.text("/session/small.yaml")
                        .replace(
                                "plan:\n",
                                "  - id: peak\n    title: Peak\n    kind: pressure-trace\nplan:\n")
                        .replace("feeds: fit\n", "feeds: [fit, peak]\n    pressure-unit: mmH2O\n")
                        .replace(
                                "mask: 8 to 20 s\n",
                                "mask: 8 to 20 s\n        pressure: 9 to 19 s\n");
        Story story = opened(text).purged().goOn().pass(20).type("4000").type("40");
        Slot.Pressure slot =
                (Slot.Pressure) assertInstanceOf(Activity.Filling.class, story.activity()).slot();
        Trace.Breaths breaths = new Trace.Breaths(4, 0, new Breath(0, 4, 2, 98.0665, 50, 9, 8));
        story.send(new Input.BreathsFound(slot, breaths));
        Quantity peak = ((Value.Measured) lastEntry(story).value()).quantity();
        assertEquals(Unit.MILLIMETRE_OF_WATER, peak.unit());
        assertEquals(10, peak.value(), 1e-9, "1 mmH2O is 9.80665 Pa");
        assertEquals(breaths, lastEntry(story).breaths().orElseThrow());
        assertEquals(List.of(), story.send(new Input.BreathsFound(slot, breaths)).last());
    }

    private static TracedInhalation from(double start, double end) {
        return new TracedInhalation(start, end, 250 * (end - start), 250, 5, 1, 0, true, 1);
    }

    private static Optional<String> offered(Story story) {
        return story.activity() instanceof Activity.VoidAsked offer
                ? Optional.of(offer.why())
                : Optional.empty();
    }

    private static Story pulled(double seconds, boolean traced) {
        return pulled(Story.atFirstDonning(), seconds, traced);
    }

    private static Story pulled(Story story, double seconds, boolean traced) {
        return story.purged()
                .exercised("40")
                .trigger()
                .pass(3)
                .trigger()
                .pass(seconds)
                .send(new Input.TriggerPressed(traced));
    }

    private static Story tolerant(String lines, double seconds, Input... meanwhile) {
        Story story =
                opened(toleranceText(lines)).purged().exercised("40").trigger().pass(3).trigger();
        for (Input each : meanwhile) {
            story.send(each);
        }
        return story.pass(seconds).send(new Input.TriggerPressed(true));
    }

    private static Story opened(String text) {
        return Story.opened(
                        new Event.SessionOpened("test", "small", text, 7, "typed", "", false, 1))
                .goOn()
                .type("W1")
                .type("21")
                .goOn();
    }

    private static String toleranceText(String lines) {
        return Story.text("/session/small.yaml")
                .replace("    target: 250 Pa\n", "    target: 250 Pa\n" + lines);
    }

    private static TracedInhalation pull(double mean, double within, int pulls) {
        return new TracedInhalation(-0.1, 7.9, 1500, mean, 20, within, 0, true, pulls);
    }

    private static Entry lastEntry(Story story) {
        List<Entry> entries = story.state().captured().entries();
        return entries.get(entries.size() - 1);
    }
}
