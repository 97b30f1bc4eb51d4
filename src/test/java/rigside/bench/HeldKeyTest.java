package rigside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import com.googlecode.lanterna.input.KeyStroke;
import java.io.IOException;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.rig.Rig;
import rigside.runner.Result;
import rigside.runner.Runner;
import rigside.session.Activity;
import rigside.session.Event;
import rigside.session.Input;
import rigside.session.Story;

/**
 * A trigger that bounces, or is held down for three seconds, as a terminal tells it: the press,
 * then, after the delay, presses at a steady rate. Delays and rates are what keyboards are usually
 * set to (from memory).
 */
class HeldKeyTest {
    private static final KeyStroke TRIGGER = new KeyStroke(' ', false, false);
    private static final double HELD_SECONDS = 3;

    private final List<Event> kept = new ArrayList<>();
    private Pressed last = new Pressed(new KeyStroke('x', false, false), 0, Pressed.FIRST);
    private final HeldTrigger held = new HeldTrigger();
    private Runner runner;
    private double now;

    @ParameterizedTest(name = "lead-in {0} s, repeated after {1} s, {2} times a second")
    @CsvSource({
        "3, 0.25, 30",
        "3, 0.5, 30",
        "3, 0.66, 25",
        "1, 0.25, 10.9",
        "1, 0.5, 30",
        "1, 0.66, 25",
        "0.2, 0.5, 30",
        "0.2, 0.66, 25"
    })
    void aTriggerHeldDownStartsALeadInAndNoTrial(double leadIn, double delay, double rate)
            throws IOException {
        atTrial(leadIn);
        hold(delay, rate);
        assertInstanceOf(Activity.LeadIn.class, runner.state().activity());
        assertEquals(1, count(Event.LeadInStarted.class));
    }

    @ParameterizedTest(name = "repeated after {0} s, {1} times a second")
    @CsvSource({"0.25, 30", "0.5, 30", "0.66, 25", "0.25, 10.9"})
    void aTriggerHeldDownStartsATrialAndDoesNotEndIt(double delay, double rate) throws IOException {
        atTrial(3);
        press();
        now += 3.2;
        hold(delay, rate);
        assertInstanceOf(Activity.Pulling.class, runner.state().activity());
        now += 4;
        press();
        assertInstanceOf(Activity.HoldAsked.class, runner.state().activity());
        assertEquals(1, count(Event.TrialStarted.class));
    }

    @ParameterizedTest(name = "struck again after {0} s")
    @CsvSource({"0.001", "0.02", "0.1", "0.149"})
    void aSwitchThatBouncesDoesNothingTwice(double again) throws IOException {
        atTrial(0.2);
        for (Class<?> next :
                List.of(Activity.LeadIn.class, Activity.Pulling.class, Activity.HoldAsked.class)) {
            press();
            now += again;
            press();
            assertInstanceOf(next, runner.state().activity());
            now += 5;
        }
    }

    @Test
    void anotherKeyBetweenIsNoRepeat() {
        Pressed first = last.then(TRIGGER, 10);
        Pressed other = first.then(new KeyStroke('y', false, false), 20);
        assertEquals(Pressed.FIRST, first.since());
        assertEquals(Pressed.FIRST, other.since());
        assertEquals(Pressed.FIRST, other.then(TRIGGER, 30).since());
        assertEquals(5, first.then(TRIGGER, 15).since());
    }

    /** Its first repeat is a press like any other: the pull it ended is offered for voiding. */
    @ParameterizedTest(name = "repeated after {0} s, {1} times a second")
    @CsvSource({"0.8, 30", "1, 10.9", "2, 25"})
    void aPullEndedByAKeyThatRepeatsLateIsOfferedForVoiding(double delay, double rate)
            throws IOException {
        atTrial(3);
        press();
        now += 3.2;
        hold(delay, rate);
        assertInstanceOf(Activity.HoldAsked.class, runner.state().activity());
        runner.accept(new Input.Answered(true), Math.round(now * 1e9));
        Activity.VoidAsked asked =
                assertInstanceOf(Activity.VoidAsked.class, runner.state().activity());
        assertEquals(
                "the trigger repeats as if it were held down, and may have ended the pull",
                asked.why().split(";", -1)[0]);
    }

    /** The keyboard's delay comes before its repeats. */
    @ParameterizedTest(name = "repeated after {0} s, {1} times a second")
    @CsvSource({"0.25, 30", "0.5, 10.9", "1, 25"})
    void aHandThatStaysOnTheKeyItEndedAPullWithMakesNoDoubt(double delay, double rate)
            throws IOException {
        atTrial(3);
        press();
        now += 3.2;
        press();
        now += 6;
        hold(delay, rate);
        runner.accept(new Input.Answered(true), Math.round(now * 1e9));
        assertInstanceOf(Activity.Resting.class, runner.state().activity());
    }

    private void hold(double delay, double rate) {
        double begun = now;
        press();
        for (int i = 0; now < begun + HELD_SECONDS; i++) {
            now = begun + delay + i / rate;
            press();
        }
        now += 0.2;
    }

    /** As the sitting does it: what no hand pressed is not told. */
    private void press() {
        long at = Math.round(now * 1e9);
        last = last.then(TRIGGER, at);
        if (last.isRepeat(Settings.USUAL_BOUNCE_SECONDS)) {
            held.repeated(last)
                    .ifPresent(why -> runner.accept(new Input.TimeDoubted(why, true), at));
            return;
        }
        boolean pulling = runner.state().activity() instanceof Activity.Pulling;
        runner.accept(new Input.TriggerPressed(), at);
        held.taken(last, pulling && !(runner.state().activity() instanceof Activity.Pulling));
    }

    private long count(Class<? extends Event> kind) {
        return kept.stream().filter(kind::isInstance).count();
    }

    private void atTrial(double leadIn) throws IOException {
        ZonedDateTime wall = ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);
        String text =
                Story.text("/session/small.yaml")
                        .replace("lead-in: 3 s", "lead-in: " + leadIn + " s");
        Event.SessionOpened opening =
                new Event.SessionOpened("test", "small.yaml", text, 1, "typed", "", false, 1);
        runner =
                Runner.open(
                        (events, at, time) -> kept.addAll(events),
                        Rig.typed(),
                        () -> wall,
                        opening);
        while (!(runner.state().activity() instanceof Activity.TrialReady)) {
            now += 40;
            long at = Math.round(now * 1e9);
            Result result = runner.tick(at);
            for (Input input :
                    List.of(
                            new Input.GoOnPressed(),
                            new Input.Typed("21"),
                            new Input.Answered(true))) {
                result = runner.accept(input, at);
            }
            assertEquals(false, result instanceof Result.NotKept);
        }
    }
}
