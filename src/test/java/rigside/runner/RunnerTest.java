package rigside.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigside.rig.Asked;
import rigside.rig.Cue;
import rigside.rig.Rig;
import rigside.session.Activity;
import rigside.session.Event;
import rigside.session.Input;
import rigside.session.Story;

class RunnerTest {
    private static final ZonedDateTime MORNING =
            ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);
    private static final long SECOND = 1_000_000_000L;

    private final List<Event> kept = new ArrayList<>();
    private boolean diskFull;
    private long now;
    private double speed = 1;

    @Test
    void nothingIsConfirmedBeforeItIsKept() throws IOException {
        Runner runner = opened(Rig.typed());
        diskFull = true;
        Result result = runner.accept(new Input.GoOnPressed(), now);
        assertTrue(assertInstanceOf(Result.NotKept.class, result).why().contains("no space left"));
        assertInstanceOf(Activity.Cautions.class, runner.state().activity());
        assertTrue(runner.holdsUnkept());
    }

    @Test
    void whatCouldNotBeKeptIsTriedAgainAndNothingOvertakesIt() throws IOException {
        Runner runner = opened(Rig.typed());
        diskFull = true;
        runner.accept(new Input.GoOnPressed(), now);
        assertInstanceOf(Result.NotKept.class, runner.accept(new Input.NoteTyped("later"), now));
        diskFull = false;
        assertInstanceOf(Result.Done.class, runner.accept(new Input.GoOnPressed(), now));
        assertEquals(Event.CautionsAcknowledged.class, kept.get(1).getClass());
        assertEquals(2, kept.size());
    }

    @Test
    void aSecondOfTheLeadInIsCuedOnceAndThenTheWordToPull() throws IOException {
        Runner runner = atTrials(Rig.typed());
        runner.accept(new Input.TriggerPressed(), now);
        List<Cue> cues = new ArrayList<>();
        for (int tick = 0; tick < 80; tick++) {
            now += SECOND / 20;
            cues.addAll(runner.timed(now));
            cues.addAll(assertInstanceOf(Result.Done.class, runner.tick(now)).cues());
        }
        assertEquals(List.of(Cue.LEAD_IN, Cue.LEAD_IN, Cue.LEAD_IN, Cue.GO), cues);
    }

    @Test
    void aRigThatSeesTheEndOfAPullGivesItsExactTime() throws IOException {
        Runner runner = atTrials(pullsFor(7.25));
        runner.accept(new Input.TriggerPressed(), now);
        now += 3 * SECOND;
        runner.accept(new Input.TriggerPressed(), now);
        now += 9 * SECOND;
        runner.tick(now);
        assertEquals(
                7.25,
                assertInstanceOf(Activity.HoldAsked.class, runner.state().activity()).seconds(),
                1e-9);
    }

    /** Half a second of the real clock is longer than the whole pull takes in session time. */
    @ParameterizedTest(name = "pressed again after {0} s of the real clock")
    @ValueSource(doubles = {0.01, 0.1, 0.2, 0.5, 0.7})
    void aDoublePressDoesNotEndAPullInFastTime(double seconds) throws IOException {
        speed = 30;
        Runner runner = atTrials(pullsFor(29.5));
        runner.accept(new Input.TriggerPressed(), now);
        now += 8 * SECOND;
        runner.accept(new Input.TriggerPressed(), now);
        assertInstanceOf(Activity.Pulling.class, runner.state().activity());
        now += Math.round(30 * seconds * SECOND);
        runner.accept(new Input.TriggerPressed(), now);
        assertInstanceOf(Activity.Pulling.class, runner.state().activity());
        now += 30 * SECOND;
        runner.tick(now);
        assertEquals(
                29.5,
                assertInstanceOf(Activity.HoldAsked.class, runner.state().activity()).seconds(),
                1e-9);
    }

    /** However long it takes until the opening is written. */
    @Test
    void theOpeningHasTheMomentAtWhichSessionTimeBegan() throws IOException {
        List<ZonedDateTime> walls = new ArrayList<>();
        Event.SessionOpened opening =
                new Event.SessionOpened(
                        "test",
                        "small.yaml",
                        Story.text("/session/small.yaml"),
                        7,
                        "typed",
                        "",
                        false,
                        1);
        Runner.open(
                (events, wall, at) -> walls.add(wall),
                Rig.typed(),
                () -> MORNING.plusSeconds(9),
                opening,
                MORNING,
                Optional.empty());
        assertEquals(List.of(MORNING), walls);
    }

    @Test
    void fastTimePassesInProportion() {
        assertEquals(100 + 30 * 7, new SessionTime(1000, 100, 30).of(1007));
        assertEquals(107, new SessionTime(1000, 100, 1).of(1007));
    }

    private Runner opened(Rig rig) throws IOException {
        Ledger ledger =
                (events, wall, at) -> {
                    if (diskFull) {
                        throw new IOException("no space left");
                    }
                    kept.addAll(events);
                };
        return Runner.open(
                ledger,
                rig,
                () -> MORNING,
                new Event.SessionOpened(
                        "test",
                        "small.yaml",
                        Story.text("/session/small.yaml"),
                        7,
                        rig.words(),
                        "",
                        false,
                        speed));
    }

    private Runner atTrials(Rig rig) throws IOException {
        Runner runner = opened(rig);
        while (!(runner.state().activity() instanceof Activity.TrialReady)) {
            now += 2 * SECOND;
            Input key = Rehearser.key(runner.state(), now).orElse(null);
            if (key != null) {
                runner.accept(key, now);
            } else if (runner.state().activity() instanceof Activity.Filling) {
                runner.accept(new Input.Typed("40"), now);
                runner.accept(new Input.Answered(true), now);
            } else {
                runner.tick(now);
            }
        }
        return runner;
    }

    private static Rig pullsFor(double seconds) {
        return new Rig() {
            @Override
            public String words() {
                return "sees pulls end";
            }

            @Override
            public boolean simulated() {
                return false;
            }

            @Override
            public OptionalDouble answer(Asked asked) {
                return asked.kind() == Asked.Kind.INHALATION
                        ? OptionalDouble.of(seconds)
                        : OptionalDouble.empty();
            }
        };
    }
}
