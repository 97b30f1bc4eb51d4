package rigside.bench;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import rigside.rig.Cue;
import rigside.runner.Result;
import rigside.runner.Runner;
import rigside.runner.SessionTime;
import rigside.screen.View;
import rigside.session.Activity;
import rigside.session.Input;
import rigside.session.State;

/**
 * A session at the terminal, from its picture's first appearance until it is left or closed: waits
 * for a key or for time to pass, tells the runner, draws what changed.
 */
final class Sitting {
    /** 20 pictures a second while something is timed. */
    private static final long TICK_NANOS = 50_000_000L;

    /** Nothing is timed: only a change of the window's size can want a new picture. */
    private static final long IDLE_NANOS = 250_000_000L;

    private final Console console;
    private final Runner runner;
    private final SessionTime time;
    private final Settings settings;
    private final Signals signals;
    private Ui ui;
    private long latest;
    private final ClockWatch clocks = new ClockWatch(System.nanoTime(), System.currentTimeMillis());
    private final HeldTrigger held = new HeldTrigger();
    private boolean warned;
    private final Painting painting;

    private Sitting(
            Console console,
            Runner runner,
            SessionTime time,
            Settings settings,
            Signals signals,
            Ui ui) {
        this.console = console;
        this.painting = new Painting(console);
        this.runner = runner;
        this.time = time;
        this.settings = settings;
        this.signals = signals;
        this.ui = ui;
    }

    /**
     * Runs a session until the tester leaves it.
     *
     * @param message what the tester has to know first, if anything
     */
    static void run(
            Console console,
            Runner runner,
            SessionTime time,
            Settings settings,
            Optional<String> message) {
        Ui quiet = Ui.START.at(settings.sound().volume());
        Ui ui = message.map(quiet::saying).orElse(quiet);
        try (Signals signals = Signals.of(settings.speak(), console::bell)) {
            new Sitting(console, runner, time, settings, signals, ui).run();
        }
    }

    /** Shows the entries of a closed session until the tester leaves it. */
    static void correct(Console console, Runner runner, SessionTime time, Settings settings) {
        Ui ui =
                Ui.START
                        .at(settings.sound().volume())
                        .at(View.Page.ENTRIES)
                        .saying("choose the entry that is to be amended or struck out");
        try (Signals signals = Signals.of(settings.speak(), console::bell)) {
            new Sitting(console, runner, time, settings, signals, ui).run();
        }
    }

    /**
     * Keys that wait are taken before time passes, so that the moment of a press is not overtaken
     * by a tick.
     */
    private void run() {
        boolean left = false;
        boolean changed = true;
        draw();
        while (!left) {
            Optional<Pressed> pressed = console.next(changed ? 0 : untilNext());
            if (pressed.isPresent()) {
                left = press(pressed.get());
                changed = true;
            } else {
                changed |= tick();
                if (changed || isMoving() || console.isStale()) {
                    draw();
                }
                changed = false;
            }
        }
    }

    /** Not beyond the moment when something is due: a cue drawn out to the next tick is late. */
    private long untilNext() {
        long usual = isTimed(runner.state()) ? TICK_NANOS : IDLE_NANOS;
        OptionalLong next = runner.next();
        if (next.isEmpty()) {
            return usual;
        }
        double left = (next.getAsLong() - time.of(System.nanoTime())) / time.speed();
        return Math.max(0, Math.min(usual, (long) left));
    }

    /** Whether the picture changes by itself: before a trial the gauge follows the breath. */
    private boolean isMoving() {
        State state = runner.state();
        return isTimed(state)
                || (state.activity() instanceof Activity.TrialReady
                        && Painting.gauge(runner).isPresent());
    }

    /** Whether the session goes on by itself. */
    private static boolean isTimed(State state) {
        Activity activity = state.activity();
        return activity instanceof Activity.LeadIn
                || activity instanceof Activity.Pulling
                || activity instanceof Activity.Tracing
                || activity instanceof Activity.Resting
                || (activity instanceof Activity.Gating gating && gating.startedAt().isPresent())
                || (activity instanceof Activity.Waiting waiting && waiting.startedAt().isPresent())
                || (activity instanceof Activity.Exercising exercising
                        && exercising.startedAt().isPresent());
    }

    /**
     * Session time never runs backwards, although a key is stamped before the tick that meets it.
     */
    private long at(long nanos) {
        latest = Math.max(latest, time.of(nanos));
        return latest;
    }

    private View view(long nanos) {
        long now = Math.max(latest, time.of(nanos));
        return painting.sized(Painting.view(runner, ui, now, settings.style()));
    }

    private void draw() {
        View view = view(System.nanoTime());
        painting.draw(view);
    }

    /** Whether the session is left. */
    private boolean press(Pressed pressed) {
        watchClocks();
        View view = view(pressed.nanos());
        if (pressed.isRepeat(settings.bounceSeconds()) && !Reaction.repeats(view, pressed.key())) {
            held.repeated(pressed)
                    .ifPresent(why -> tell(new Input.TimeDoubted(why, true), at(pressed.nanos())));
            return false;
        }
        Reaction reaction = Reaction.to(ui, view, pressed.key());
        if (!reaction.ui().volume().equals(ui.volume())) {
            settings.sound().remember(reaction.ui().volume());
        }
        ui = reaction.ui();
        if (reaction.leaves()) {
            return leaves(pressed);
        }
        warned = false;
        boolean pulling = runner.state().activity() instanceof Activity.Pulling;
        reaction.input().ifPresent(input -> tell(input, at(pressed.nanos())));
        held.taken(pressed, pulling && !(runner.state().activity() instanceof Activity.Pulling));
        int limit = view(pressed.nanos()).seen().limit();
        ui = ui.selecting(Math.min(ui.selected(), limit));
        return false;
    }

    /**
     * What is not on disk yet is given up only when asked twice, or when there is nobody to ask.
     */
    private boolean leaves(Pressed pressed) {
        Result result = runner.accept(new Input.LeaveAsked(), at(pressed.nanos()));
        boolean gone = pressed.isEnd();
        if (result instanceof Result.Done || warned || gone) {
            return true;
        }
        warned = true;
        ui =
                ui.saying(
                        "the last entry is not on disk; Enter tries again,"
                                + " leaving once more gives it up");
        return false;
    }

    private void tell(Input input, long at) {
        Result result = runner.accept(input, at);
        if (result instanceof Result.Refused && input instanceof Input.TriggerPressed) {
            ring(List.of(Cue.PROBLEM));
        }
        if (result instanceof Result.Done done) {
            ui =
                    (ui.page() == View.Page.UNKEPT ? ui.at(View.Page.STEP) : ui)
                            .taken(runner.state(), done.events());
            ring(done.cues());
        } else {
            complain(result);
        }
    }

    /** Before anything is made of the time: a pull must not end as if nothing had happened. */
    private void watchClocks() {
        long now = System.nanoTime();
        clocks.read(now, System.currentTimeMillis())
                .ifPresent(why -> tell(new Input.TimeDoubted(why), at(now)));
    }

    /** Whether time led to anything. */
    private boolean tick() {
        watchClocks();
        long now = at(System.nanoTime());
        Optional<Heard> heard = sound(runner.timed(now));
        Result result = runner.tick(now);
        heard.ifPresent(this::keep);
        if (result instanceof Result.Done done) {
            ui = ui.noticed(runner.state(), done.events());
            ring(done.cues());
            Optional<String> trouble = signals.trouble();
            trouble.ifPresent(words -> ui = ui.saying(words));
            return !done.events().isEmpty() || trouble.isPresent();
        }
        complain(result);
        return true;
    }

    private void complain(Result result) {
        if (result instanceof Result.Refused refused) {
            ui = (ui.prompt().isPresent() ? ui.dropped() : ui).saying(refused.why());
        } else if (result instanceof Result.NotKept notKept) {
            if (ui.page() != View.Page.UNKEPT) {
                ring(List.of(Cue.PROBLEM));
            }
            ui = ui.at(View.Page.UNKEPT).saying(notKept.why());
        }
    }

    private void ring(List<Cue> cues) {
        Optional<Heard> heard = sound(cues);
        heard.ifPresent(this::keep);
    }

    /** A cue given, and when in session time. */
    private record Heard(Signals.Given given, long at) {}

    private Optional<Heard> sound(List<Cue> cues) {
        long at = time.of(System.nanoTime());
        return signals.give(cues, ui.volume()).map(given -> new Heard(given, at));
    }

    private void keep(Heard heard) {
        signals.say(heard.given(), runner.state());
        runner.cued(List.of(heard.given().cue()), heard.given().how(), heard.at());
    }
}
