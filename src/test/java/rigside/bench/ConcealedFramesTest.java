package rigside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.googlecode.lanterna.TerminalSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import rigside.analysis.Analysis;
import rigside.analysis.Live;
import rigside.analysis.Shown;
import rigside.screen.Drawing;
import rigside.screen.Drawn;
import rigside.screen.SessionScreen;
import rigside.screen.View;
import rigside.session.Activity;
import rigside.session.Event;
import rigside.session.FedTwins;
import rigside.session.Recorded;
import rigside.session.Slot;
import rigside.session.State;
import rigside.session.Twins;
import rigside.session.Value;

/**
 * Every frame of a driven session, with what the bench says to it: two sessions that differ in what
 * is concealed alone have to look the same after every event and while time goes on, on every page.
 */
class ConcealedFramesTest {
    private static final List<TerminalSize> SIZES =
            List.of(new TerminalSize(80, 24), new TerminalSize(200, 60));

    /** What is asked on the list of entries; everything else is at the step. */
    private static final Set<View.Prompt> ON_ENTRIES =
            Set.of(View.Prompt.VOID_REASON, View.Prompt.STRIKE_REASON);

    /** Seconds after the event. */
    private static final double[] LATER = {0, 0.7, 6.9};

    private static boolean isWorn(State state) {
        return state.course().open().isPresent();
    }

    private static boolean isOpen(State state) {
        return state.opening().isPresent()
                && !(state.activity() instanceof Activity.Closing)
                && !(state.activity() instanceof Activity.Closed);
    }

    /** The order of the third round is told when it begins. */
    private static boolean isBeforeThirdRound(State state) {
        return isOpen(state)
                && (state.course().donnings().size() < 4
                        || (isWorn(state) && state.course().donnings().size() == 4));
    }

    @Test
    void whileADonningIsOpenNoFrameTellsTimesOfTrials() {
        Twins twins = Twins.inTimes();
        compare(twins, ConcealedFramesTest::isWorn, 60, Set.copyOf(twins.timesInDigits()));
    }

    @Test
    void untilTheSessionEndsNoFrameTellsAnything() {
        Twins twins = Twins.inEverything();
        compare(twins, ConcealedFramesTest::isOpen, 100, Set.copyOf(twins.timesInDigits()));
    }

    @Test
    void theOrderIsRevealedOneDonningAtATime() {
        compare(Twins.inOrder(), ConcealedFramesTest::isBeforeThirdRound, 60, Set.of());
    }

    @Test
    void withInstrumentsNoFrameTellsPullsBreathsOrEarlierReadings() {
        Twins twins = FedTwins.untilDonningEnds();
        compare(
                twins,
                state -> isWorn(state) && state.course().donnings().size() > 3,
                30,
                Set.copyOf(twins.timesInDigits()));
    }

    @Test
    void whereResultsAreShownNoFrameTellsTimesOfPullsBeforeTheirTime() {
        Twins twins = FedTwins.inClockAlone();
        compare(twins, ConcealedFramesTest::isOpen, 100, Set.copyOf(twins.timesInDigits()));
    }

    @Test
    void whereTimesAreShownNoFrameTellsWhatInstrumentsGaveBeforeItsTime() {
        compare(FedTwins.inResults(), ConcealedFramesTest::isOpen, 100, Set.of());
    }

    @Test
    void withInstrumentsNoFrameTellsAnythingUntilTheSessionEnds() {
        Twins twins = FedTwins.inEverything();
        compare(twins, ConcealedFramesTest::isOpen, 100, Set.copyOf(twins.timesInDigits()));
    }

    /** Or the tests above would find nothing to be seen anywhere. */
    @Test
    void onceItIsOutTheyDiffer() {
        for (Twins twins :
                List.of(
                        Twins.inTimes(),
                        Twins.inEverything(),
                        Twins.inOrder(),
                        FedTwins.untilDonningEnds(),
                        FedTwins.inClockAlone(),
                        FedTwins.inResults(),
                        FedTwins.inEverything())) {
            int all = twins.first().size();
            assertNotEquals(
                    drawings(new Moment(twins.first(), all), View.Page.ENTRIES),
                    drawings(new Moment(twins.second(), all), View.Page.ENTRIES));
        }
    }

    /**
     * @param least fewer moments would mean that little was looked at
     * @param digits that must be in no frame
     */
    private static void compare(
            Twins twins, Predicate<State> concealed, int least, Set<String> digits) {
        List<Integer> moments = twins.moments(concealed);
        assertTrue(moments.size() > least, () -> "only " + moments.size() + " moments");
        for (int count : moments) {
            Moment first = new Moment(twins.first(), count);
            Moment second = new Moment(twins.second(), count);
            for (View.Page page : View.Page.values()) {
                List<Drawing> drawings = drawings(first, page);
                if (!drawings.equals(drawings(second, page))) {
                    assertEquals(texts(first, page), texts(second, page), () -> page.toString());
                    fail("they differ in what is no text, after event " + count + ", " + page);
                }
                if (!digits.isEmpty()) {
                    texts(first, page).forEach(frame -> tellsNone(frame, digits));
                }
            }
        }
    }

    private static void tellsNone(String frame, Set<String> digits) {
        for (String each : digits) {
            assertFalse(Twins.tells(frame, each), () -> each + " in\n" + frame);
        }
    }

    /** What is looked at after some events. */
    private static final class Moment {
        private final State state;
        private final Shown shown;
        private final Recorded last;
        private final List<Event> events;
        private final List<Event> later;

        Moment(List<Recorded> journal, int count) {
            state = Twins.after(journal, count);
            shown = Shown.of(state, Analysis.of(state));
            last = journal.get(count - 1);
            events =
                    journal.subList(0, count).stream()
                            .filter(each -> each.at() == last.at())
                            .map(Recorded::event)
                            .toList();
            later = journal.subList(count, journal.size()).stream().map(Recorded::event).toList();
        }

        /**
         * As the sitting makes them: with what is said to the last events, with each question, and
         * while time goes on.
         */
        List<View> views(View.Page page) {
            List<Ui> uis = new ArrayList<>();
            for (List<Event> said : List.of(events, List.of(last.event()))) {
                uis.add(Ui.START.taken(state, said).at(page));
                uis.add(Ui.START.noticed(state, said).at(page));
            }
            List<View> views = new ArrayList<>();
            for (double seconds : page == View.Page.STEP ? LATER : new double[] {0}) {
                uis.forEach(ui -> views.add(view(ui, seconds)));
            }
            for (View.Prompt prompt : View.Prompt.values()) {
                if (page == (ON_ENTRIES.contains(prompt) ? View.Page.ENTRIES : View.Page.STEP)) {
                    views.add(view(Ui.START.at(page).asking(prompt, 1), 0));
                }
            }
            return views.stream().distinct().toList();
        }

        private View view(Ui ui, double seconds) {
            long now = last.at() + Math.round(seconds * 1e9);
            return ui.view(state, shown, now, new View.Style(View.Colours.NONE, false))
                    .with(gauge())
                    .with(live());
        }

        /** What the gauge reads is the tester's to see, and no secret. */
        private Optional<View.Gauge> gauge() {
            boolean fed = state.protocol().measure("peak").isPresent();
            return fed ? Optional.of(new View.Gauge(OptionalDouble.of(236))) : Optional.empty();
        }

        /** In the middle of every window, whose readings are those captured afterwards. */
        private Live live() {
            return state.activity() instanceof Activity.Exercising exercising
                            && exercising.startedAt().isPresent()
                            && gauge().isPresent()
                    ? Live.exercises(
                            state, shown, exercising.place(), exercising.exercise(), this::sampled)
                    : Live.NONE;
        }

        private Optional<Live.Sampled> sampled(Slot slot) {
            return later.stream()
                    .filter(Event.EntryCaptured.class::isInstance)
                    .map(Event.EntryCaptured.class::cast)
                    .filter(event -> event.slot().equals(slot))
                    .findFirst()
                    .map(event -> ((Value.Measured) event.value()).quantity().si())
                    .map(concentration -> new Live.Sampled(concentration, 4, true));
        }
    }

    private static List<Drawing> drawings(Moment moment, View.Page page) {
        List<Drawing> drawings = new ArrayList<>();
        for (View view : moment.views(page)) {
            for (TerminalSize size : SIZES) {
                View.Seen seen = SessionScreen.seen(view, size);
                for (int line = 0; line <= seen.limit(); line += seen.page()) {
                    drawings.add(SessionScreen.of(at(view, line), size));
                }
            }
        }
        return drawings;
    }

    /** At one size that holds nearly all at once. */
    private static List<String> texts(Moment moment, View.Page page) {
        return moment.views(page).stream().map(view -> Drawn.of(view, 120, 60)).toList();
    }

    private static View at(View view, int line) {
        return new View(
                view.state(),
                view.shown(),
                view.now(),
                view.page(),
                line,
                view.prompt(),
                view.typed(),
                view.message(),
                view.style(),
                view.seen(),
                view.gauge(),
                view.live(),
                view.rehearsed());
    }
}
