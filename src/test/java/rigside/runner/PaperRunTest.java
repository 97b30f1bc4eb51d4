package rigside.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigside.analysis.Shown;
import rigside.rig.Cue;
import rigside.rig.Rig;
import rigside.session.Activity;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Evolve;
import rigside.session.Input;
import rigside.session.Recorded;
import rigside.session.Slot;
import rigside.session.State;
import rigside.session.Story;

/**
 * A whole session typed in from a form: the same looks and verdicts, and no cue but for trouble.
 */
class PaperRunTest {
    private static final ZonedDateTime WALL =
            ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);

    private final List<Recorded> kept = new ArrayList<>();
    private final List<Cue> cues = new ArrayList<>();

    private Runner opened() throws IOException {
        Ledger ledger =
                (events, wall, at) ->
                        events.forEach(
                                event -> kept.add(new Recorded(kept.size() + 1, wall, at, event)));
        Event.SessionOpened opening =
                new Event.SessionOpened(
                        "test",
                        "small.yaml",
                        Story.text("/session/small.yaml"),
                        7,
                        "typed",
                        "",
                        false,
                        1,
                        "",
                        Optional.of(new Event.Paper(Optional.empty())));
        return Runner.open(ledger, Rig.typed(), () -> WALL, opening);
    }

    /** What is typed for whatever is asked: the disc takes half as long again. */
    private static Input next(State state) {
        Activity activity = state.activity();
        if (activity instanceof Activity.Filling filling) {
            return new Input.Typed(text(state, filling.slot()));
        }
        return activity instanceof Activity.HoldAsked || activity instanceof Activity.Doubting
                ? new Input.Answered(true)
                : new Input.GoOnPressed();
    }

    private static String text(State state, Slot slot) {
        if (slot instanceof Slot.Trial trial) {
            boolean disc = state.course().open().orElseThrow().condition().equals("disc");
            int varied = state.course().donnings().size() + trial.trial();
            return String.valueOf((disc ? 9 : 6) + varied * varied % 7 / 100.0);
        }
        if (slot instanceof Slot.Ambient) {
            return "4000";
        }
        if (slot instanceof Slot.Mask) {
            return "40";
        }
        return slot instanceof Slot.Field field && field.id().equals("wearer") ? "W1" : "4";
    }

    private void type(Runner runner, java.util.function.Predicate<State> until) {
        while (!until.test(runner.state())) {
            Result result = runner.accept(next(runner.state()), 1_000_000_000L * kept.size());
            cues.addAll(assertInstanceOf(Result.Done.class, result).cues());
            assertInstanceOf(Result.Done.class, runner.tick(1_000_000_000L * kept.size()));
        }
    }

    @Test
    void looksAreTakenAfterEachCompleteRoundAndItCloses() throws IOException {
        Runner runner = opened();
        type(runner, state -> state.course().closed());
        assertTrue(runner.state().captured().looks().size() >= 2);
        assertEquals(List.of(Cue.PROBLEM), cues.stream().distinct().toList(), "room at 4 degC");
        assertEquals(runner.state(), Evolve.fold(kept));
    }

    /** The clock was the tester's own; what comes of the times stays concealed. */
    @Test
    void timesAreSeenWhenTypedAndResultsAreNot() throws IOException {
        Runner runner = opened();
        type(runner, state -> state.activity() instanceof Activity.DonningDone);
        Shown shown = runner.shown();
        Entry trial =
                runner.state().captured().entries().stream()
                        .filter(entry -> entry.slot() instanceof Slot.Trial)
                        .findFirst()
                        .orElseThrow();
        assertTrue(shown.isOut(trial));
        assertFalse(shown.result());
        assertFalse(shown.trialClock());
    }
}
