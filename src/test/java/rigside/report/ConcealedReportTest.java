package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import rigside.session.Activity;
import rigside.session.Evolve;
import rigside.session.FedTwins;
import rigside.session.Recorded;
import rigside.session.State;
import rigside.session.Twins;

/** Of two open sessions that differ in what is concealed alone the report is the same. */
class ConcealedReportTest {
    /** Every so many moments is looked at. */
    private static final int STEP = 7;

    private static boolean isOpen(State state) {
        return state.opening().isPresent()
                && !(state.activity() instanceof Activity.Closing)
                && !(state.activity() instanceof Activity.Closed);
    }

    @Test
    void itTellsNoTimesOfTrialsWhileADonningIsOpen() {
        compare(Twins.inTimes(), state -> state.course().open().isPresent());
    }

    @Test
    void itTellsNothingUntilTheSessionEnds() {
        compare(Twins.inEverything(), ConcealedReportTest::isOpen);
    }

    @Test
    void itTellsNotTheOrderOfWhatIsToCome() {
        compare(
                Twins.inOrder(),
                state ->
                        state.course().donnings().size() == 4 && state.course().open().isPresent());
    }

    @Test
    void itTellsNothingThatInstrumentsGaveUntilItIsOut() {
        compare(FedTwins.untilDonningEnds(), state -> state.course().open().isPresent());
        compare(FedTwins.inClockAlone(), ConcealedReportTest::isOpen);
        compare(FedTwins.inEverything(), ConcealedReportTest::isOpen);
    }

    @Test
    void whatAChangeDoesToVerdictsOnTimesIsNotToldBeforeTheTimesAre() {
        List<Recorded> events = FedTwins.inClockAlone().first();
        List<Integer> open = FedTwins.inClockAlone().moments(ConcealedReportTest::isOpen);
        String said = report(events.subList(0, open.get(open.size() - 1)));
        assertTrue(
                said.contains("| misread | after 2 complete rounds | Inhalation time: concealed"),
                said);
        assertTrue(
                report(events)
                        .contains(
                                "| misread | after 2 complete rounds | Inhalation time: not settled either way"),
                report(events));
    }

    @Test
    void whereTimesAreShownItTellsThemAndNothingElse() {
        same(FedTwins.inResults(), ConcealedReportTest::isOpen, List.of());
    }

    /** Or the tests above would find nothing to be told anywhere. */
    @Test
    void onceItIsOutTheyDiffer() {
        Twins twins = Twins.inEverything();
        assertNotEquals(report(twins.first()), report(twins.second()));
    }

    private static void compare(Twins twins, Predicate<State> concealed) {
        same(twins, concealed, twins.timesInDigits());
    }

    private static void same(Twins twins, Predicate<State> concealed, List<String> secret) {
        List<Integer> moments =
                twins.moments(state -> state.opening().isPresent() && concealed.test(state));
        assertTrue(moments.size() > 10, () -> "only " + moments.size() + " moments");
        for (int at = moments.size() - 1; at >= 0; at -= STEP) {
            int count = moments.get(at);
            String said = report(twins.first().subList(0, count));
            assertEquals(said, report(twins.second().subList(0, count)));
            for (String digits : secret) {
                assertFalse(Twins.tells(said, digits), digits + " in\n" + said);
            }
        }
    }

    private static String report(List<Recorded> events) {
        State state = Evolve.fold(events);
        return SessionReport.of(Material.of(state, events)).markdown();
    }
}
