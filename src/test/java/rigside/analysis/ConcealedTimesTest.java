package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.session.Event;
import rigside.session.Place;
import rigside.session.Slot;
import rigside.session.Source;
import rigside.session.Stage;
import rigside.session.State;
import rigside.session.Story;
import rigside.session.Value;

/** What is made of times is concealed for as long as the times are. */
class ConcealedTimesTest {
    @Test
    void aResultThatIsShownTellsNoTimeOfTheOpenDonningWhileTimesAreConcealed() {
        Bench bench =
                Bench.concealing("until-donning-ends", "shown").start(1, "bare").exercises(20);
        bench.trials(12, 13).effort(5);
        assertTrue(bench.analysis().measures().get(1).values().get(0).value().isPresent());
        assertTrue(bench.shown().measures().get(0).values().get(0).value().isPresent());
        assertTrue(bench.shown().measures().get(1).values().get(0).value().isEmpty());
        bench.complete();
        assertTrue(bench.shown().measures().get(1).values().get(0).value().isPresent());
    }

    /** With one trial the mean is the time; with two, changing one of them tells the other. */
    @ParameterizedTest
    @CsvSource({"until-session-ends,shown", "until-session-ends,until-donning-ends"})
    void whatIsMadeOfTimesIsConcealedAsLongAsTimesAre(String clock, String result) {
        Bench one = timed(Bench.concealing(clock, result), 12.1, 14.6);
        Bench other = timed(Bench.concealing(clock, result), 7.3, 19.9);
        assertSameShown(one, other);
        assertSameShown(one.amended(1, 0, 9), other.amended(1, 0, 9));
        assertSameShown(one.look(), other.look());
        assertSameShown(one.voided(one.entry(2, 1)), other.voided(other.entry(2, 1)));
        assertSameShown(one.look(), other.look());
        Shown shown = one.shown();
        assertTrue(shown.result());
        assertFalse(shown.isOut(shown.measures().get(1).measure()));
        assertFalse(shown.measures().get(0).comparisons().isEmpty());
        assertFalse(shown.measures().get(2).comparisons().isEmpty());
        one.take(new Event.RepeatsEnded("enough"));
        other.take(new Event.RepeatsEnded("enough"));
        assertNotEquals(one.shown().measures(), other.shown().measures());
        assertEquals(one.analysis().measures(), one.shown().measures());
    }

    /** Three rounds with a look after each, which settle nothing. */
    private static Bench timed(Bench bench, double first, double second) {
        for (int round = 1; round <= 3; round++) {
            double scatter = 0.3 * first * (round % 2);
            bench.start(round, "bare").exercises(20).trials(first + scatter, second).effort(300);
            bench.complete().start(round, "disc").exercises(30).trials(second, first - scatter);
            bench.effort(310).complete().look();
        }
        return bench;
    }

    private static void assertSameShown(Bench one, Bench other) {
        assertNotEquals(one.measure("inhalation"), other.measure("inhalation"));
        assertEquals(one.shown(), other.shown());
    }

    /** A forecast of the open question would tell how far times are from settling it. */
    @Test
    void thatThePlanWillHardlySettleItIsNotSaidWhileTimesAreConcealed() {
        assertTrue(scattered("shown").next().contains("will hardly settle"));
        assertEquals(
                "3 rounds complete. Go on with another round",
                scattered("until-session-ends").next());
    }

    private static Shown scattered(String clock) {
        Bench bench = Bench.concealing(clock, "shown");
        return bench.round(1, 5, 9).round(2, 9, 5).round(3, 5, 8).shown();
    }

    /** Where all is made of times, nothing is out before they are. */
    @Test
    void withoutAnotherMeasureTheResultIsConcealedWithTheTimes() {
        String text = Story.text("/session/small.yaml");
        String breathing =
                text.substring(0, text.indexOf("  - id: fit\n"))
                        + text.substring(text.indexOf("  - id: inhalation\n"))
                                .replaceAll("(?s)  - step: exercises.*?(?=  - step: trials)", "");
        State state = opened(breathing);
        Shown shown = Shown.of(state, Analysis.of(state));
        assertFalse(shown.result());
        assertEquals(
                "times of trials and the running result are concealed until the session ends",
                shown.concealed());
    }

    private static State opened(String text) {
        String plan = "  most: 4\n  conceal: {trial-clock: until-session-ends, result: shown}\n";
        String concealing = text.replace("  most: 4\n", plan);
        return Story.opened(
                        new Event.SessionOpened(
                                "test", "test.yaml", concealing, 7, "typed", "", false, 1))
                .state();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    until-donning-ends | until-donning-ends | times of trials and the running result are concealed until the donning ends
                    until-donning-ends | until-session-ends | times of trials are concealed until the donning ends, results until the session ends
                    until-session-ends | until-donning-ends | times of trials and the results made of them are concealed until the session ends, other results until the donning ends
                    until-session-ends | shown              | times of trials and the results made of them are concealed until the session ends
                    shown              | until-donning-ends | the running result is concealed until the donning ends
                    shown              | shown              | ''
                    """)
    void whatIsConcealedIsSaidWithWhatIsMadeOfIt(String clock, String result, String said) {
        Bench bench = Bench.concealing(clock, result).start(1, "bare");
        assertEquals(said, bench.shown().concealed());
    }

    /** Eight times by the clock are enough to say what the hand explains of their spread. */
    @Test
    void theSpreadOfTimesWaitsForTheClock() {
        assertEquals(1, spreads(Bench.concealing("shown", "shown")));
        assertEquals(0, spreads(Bench.concealing("until-session-ends", "shown")));
    }

    private static long spreads(Bench bench) {
        for (int round = 1; round <= 4; round++) {
            bench.start(round, "bare").exercises(20);
            for (int trial = 0; trial < 2; trial++) {
                bench.take(
                        new Event.EntryCaptured(
                                bench.state().captured().entries().size() + 1,
                                new Slot.Trial(new Place(Stage.DONNING, round, 2), trial),
                                new Value.Measured(new Quantity(12 + trial, Unit.SECOND)),
                                Source.TIMED));
            }
            bench.effort(5).complete();
        }
        return bench.shown().measures().get(1).remarks().stream()
                .filter(each -> each.startsWith("Times by the clock spread by"))
                .count();
    }

    @Test
    void flagsOfWhatIsMadeOfTimesWaitForThem() {
        for (String clock : List.of("shown", "until-session-ends")) {
            Bench bench = Bench.concealing(clock, "shown");
            for (int round = 1; round <= 4; round++) {
                double slip = 0.02 * (round % 3);
                bench.start(round, "bare").exercises(20).trials(5, 4.7 + slip).effort(300);
                bench.complete().start(round, "disc").exercises(20).trials(5.1, 4.8 - slip / 2);
                bench.effort(300).complete();
            }
            List<Flag> all = bench.measure("inhalation").flags();
            assertTrue(all.stream().anyMatch(each -> each.kind() == Flag.Kind.TRIAL_TREND));
            assertEquals(
                    clock.equals("shown") ? all : List.of(),
                    bench.shown().measures().get(1).flags());
        }
    }
}
