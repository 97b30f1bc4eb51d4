package rigside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.archive.Archive;
import rigside.archive.Progress;
import rigside.journal.Cut;
import rigside.screen.Drawn;
import rigside.screen.HomeView;
import rigside.screen.View;
import rigside.session.Activity;
import rigside.session.FedTwins;
import rigside.session.State;
import rigside.session.Twins;

/**
 * The review of an open session, and its line on the home screen: of two sessions that differ in
 * what is concealed alone they are the same.
 */
class ConcealedReviewTest {
    @TempDir Path home;

    @Test
    void noReviewTellsTimesOfTrialsWhileADonningIsOpen() throws Exception {
        compare(Twins.inTimes(), state -> state.course().open().isPresent());
    }

    private static boolean isOpen(State state) {
        return !(state.activity() instanceof Activity.Closing)
                && !(state.activity() instanceof Activity.Closed);
    }

    @Test
    void noReviewTellsAnythingUntilTheSessionEnds() throws Exception {
        compare(Twins.inEverything(), ConcealedReviewTest::isOpen);
    }

    @Test
    void withInstrumentsNoReviewTellsPullsBreathsOrEarlierReadings() throws Exception {
        compare(FedTwins.untilDonningEnds(), state -> state.course().open().isPresent());
    }

    @Test
    void whereResultsAreShownNoReviewTellsTimesOfPullsBeforeTheirTime() throws Exception {
        compare(FedTwins.inClockAlone(), ConcealedReviewTest::isOpen);
    }

    @Test
    void whereTimesAreShownNoReviewTellsWhatInstrumentsGaveBeforeItsTime() throws Exception {
        compare(FedTwins.inResults(), ConcealedReviewTest::isOpen);
    }

    @Test
    void withInstrumentsNoReviewTellsAnythingUntilTheSessionEnds() throws Exception {
        compare(FedTwins.inEverything(), ConcealedReviewTest::isOpen);
    }

    @Test
    void noReviewTellsTheOrderOfWhatIsToCome() throws Exception {
        compare(
                Twins.inOrder(),
                state ->
                        state.course().donnings().size() == 4 && state.course().open().isPresent());
    }

    @Test
    void onceItIsOutTheyDiffer() throws Exception {
        Twins twins = Twins.inEverything();
        int all = twins.first().size();
        assertNotEquals(
                frame(Cut.of(home.resolve("one"), twins.first()).after(all)),
                frame(Cut.of(home.resolve("two"), twins.second()).after(all)));
    }

    private void compare(Twins twins, Predicate<State> concealed) throws Exception {
        List<Integer> moments =
                twins.moments(
                        state -> state.course().donnings().size() >= 4 && concealed.test(state));
        assertTrue(moments.size() > 10, () -> "only " + moments.size() + " moments");
        Cut first = Cut.of(home.resolve("first"), twins.first());
        Cut second = Cut.of(home.resolve("second"), twins.second());
        for (int count : moments) {
            Path one = first.after(count);
            Path two = second.after(count);
            assertEquals(frame(one), frame(two));
            assertEquals(
                    Items.of(new Archive(one.getParent(), "1").list(Progress.NONE).get(0)),
                    Items.of(new Archive(two.getParent(), "1").list(Progress.NONE).get(0)));
        }
    }

    /** Tall enough for everything at once; without the minute of the last entry: clocks tell it. */
    private static String frame(Path folder) {
        HomeView view =
                new HomeView(
                        HomeView.Page.REVIEW,
                        List.of(),
                        List.of(),
                        0,
                        new HomeView.Rig("typed by you", false, 1),
                        Reviews.of(folder),
                        Optional.empty(),
                        new View.Style(View.Colours.NONE, false));
        return Drawn.of(view, 120, 200).replaceAll("last entry 5 Jan 2026 08:\\d\\d", "");
    }
}
