package rigside.bench;

import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import rigside.rig.Cue;
import rigside.runner.Rehearsal;
import rigside.runner.Result;
import rigside.screen.Stroke;
import rigside.screen.View;
import rigside.session.Input;

/**
 * A rehearsal in the screens of a session: it presses its own keys, and the only one that does
 * anything stops it. The session is the same, to the event, as without screens.
 */
public final class Playing {
    /** At this many times the bench's speed a donning takes about a minute, and can be followed. */
    public static final double USUAL_SPEED = 20;

    /** Keys come so many times slower than what is timed, or nobody could see what they answer. */
    private static final double SLOWER_KEYS = 5;

    private static final long TICK_NANOS = 50_000_000L;

    private final Pace pace;
    private final Rehearsal rehearsal;
    private final double speed;
    private final View.Style style;
    private final Signals signals;
    private final Painting painting;
    private Ui ui;
    private long now;

    /** The clock that is played by, and the keys. */
    interface Pace {
        /** A steady clock, in nanoseconds. */
        long nanos();

        /** The next key, if one arrives within {@code waitNanos}. */
        Optional<Pressed> next(long waitNanos);

        /** The real ones. */
        static Pace of(Console console) {
            return new Pace() {
                @Override
                public long nanos() {
                    return System.nanoTime();
                }

                @Override
                public Optional<Pressed> next(long waitNanos) {
                    return console.next(waitNanos);
                }
            };
        }
    }

    private Playing(
            Console console,
            Pace pace,
            Rehearsal rehearsal,
            double speed,
            Settings settings,
            Signals signals) {
        this.pace = pace;
        this.rehearsal = rehearsal;
        this.speed = speed;
        this.style = settings.style();
        this.signals = signals;
        this.painting = new Painting(console);
        this.ui = Ui.START.at(settings.sound().volume());
    }

    /**
     * Plays a rehearsal until it is over or stopped.
     *
     * @param speed how many times faster than at the bench what is timed passes; above 0
     * @return whether it came to its close
     * @throws IOException if an event cannot be kept
     */
    public static boolean run(Console console, Rehearsal rehearsal, double speed, Settings settings)
            throws IOException {
        return run(console, Pace.of(console), rehearsal, speed, settings);
    }

    static boolean run(
            Console console, Pace pace, Rehearsal rehearsal, double speed, Settings settings)
            throws IOException {
        try (Signals signals = Signals.of(settings.speak(), console::bell)) {
            return new Playing(console, pace, rehearsal, speed, settings, signals).run();
        }
    }

    private boolean run() throws IOException {
        long last = pace.nanos();
        draw();
        while (!rehearsal.isOver()) {
            Optional<Pressed> pressed = pace.next(untilNext());
            if (pressed.isPresent() && stops(pressed.get())) {
                rehearsal.runner().accept(new Input.LeaveAsked(), now);
                return false;
            }
            long nanos = pace.nanos();
            play(nanos - last);
            last = nanos;
            draw();
        }
        return true;
    }

    private long untilNext() {
        return Math.max(0, Math.min(TICK_NANOS, (long) ((rehearsal.due() - now) / rate())));
    }

    /** How fast session time passes now: never slower for keys than at the bench. */
    private double rate() {
        boolean key = rehearsal.key().isPresent();
        return key ? Math.max(speed / SLOWER_KEYS, Math.min(speed, 1)) : speed;
    }

    /** What a machine cannot keep up with is played later, never left out. */
    private void play(long nanos) throws IOException {
        long reached = now + (long) (nanos * rate());
        if (reached < rehearsal.due()) {
            now = reached;
            rehearsal.pass(now);
            return;
        }
        now = rehearsal.due();
        boolean pressed = rehearsal.key().isPresent();
        Result.Done done = rehearsal.next();
        ui =
                pressed
                        ? ui.taken(rehearsal.runner().state(), done.events())
                        : ui.noticed(rehearsal.runner().state(), done.events());
        sound(done.cues());
    }

    private void sound(List<Cue> cues) {
        signals.give(cues, ui.volume())
                .ifPresent(given -> signals.say(given, rehearsal.runner().state()));
        signals.trouble().ifPresent(words -> ui = ui.saying(words));
    }

    private boolean stops(Pressed pressed) {
        Stroke stroke = Stroke.of(pressed.key());
        boolean stops =
                pressed.isEnd()
                        || pressed.key().getKeyType() == KeyType.Escape
                        || List.of(Stroke.of('q'), Stroke.ctrl('q'), Stroke.ctrl('c'))
                                .contains(stroke);
        if (!stops) {
            ui = ui.saying("a rehearsal presses its own keys; q or Esc stops it");
        }
        return stops;
    }

    private void draw() {
        Ui typing = rehearsal.key().map(key -> Typing.of(ui, key)).orElse(ui);
        View view = Painting.view(rehearsal.runner(), typing, now, style).ofRehearsal();
        painting.draw(painting.sized(view));
    }
}
