package rigside.bench;

import com.googlecode.lanterna.input.KeyType;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import rigside.measure.TimedInhalation;
import rigside.rig.Cue;
import rigside.screen.SelfTestView;
import rigside.screen.SelfTestView.LiveKey;
import rigside.screen.Stroke;
import rigside.screen.View;
import rigside.session.Event;

/**
 * Tries the terminal, each cue, and how evenly the tester reacts. What it found is worth keeping
 * when it was not left early.
 */
final class SelfTest {
    /** What a self-test needs of the world; a test has one of its own. */
    interface World {
        /** The steady clock, in nanoseconds. */
        long nanos();

        /** The next key, if one arrives within the time. */
        Optional<Pressed> next(long waitNanos);

        void draw(SelfTestView view);

        /** Asks the terminal where its cursor is; the answer comes as a key. */
        void askTerminal();

        /** Gives a cue; how, in a word as the journal has it. */
        String give(Cue cue);
    }

    private static final long SECOND = 1_000_000_000L;

    /** So often the terminal is asked, with this between. */
    private static final int QUESTIONS = 50;

    private static final long BETWEEN_NANOS = SECOND / 50;

    /** A terminal that has not answered by then will not. */
    private static final long PATIENCE_NANOS = SECOND;

    /**
     * The library below keeps the very first answer for itself; a silent terminal is not asked on.
     */
    private static final int MOST_SILENT = 2;

    private static final Stroke ENTER = Stroke.of(KeyType.Enter);
    private static final Stroke YES = Stroke.of('y');
    private static final Stroke NO = Stroke.of('n');
    private static final Stroke AGAIN = Stroke.of('r');

    private static final LiveKey LEAVE = new LiveKey(Stroke.of('q'), "leave");

    private final World world;
    private final RandomGenerator random;
    private final View.Style style;
    private final double bounceSeconds;
    private boolean left;

    SelfTest(World world, RandomGenerator random, View.Style style, double bounceSeconds) {
        this.world = world;
        this.random = random;
        this.style = style;
        this.bounceSeconds = bounceSeconds;
    }

    /**
     * Runs it.
     *
     * @param when the moment, as text for the record
     * @param terminal what kind the terminal is, as it calls itself
     * @return what was found; empty when it was left before everything was tried
     */
    Optional<Event.SelfTested> run(String when, String terminal) {
        awaits(
                "What is tried",
                List.of(
                        "1. How long the terminal takes from a key to the program.",
                        "2. Whether you hear each cue.",
                        "3. How evenly you react to a signal: "
                                + Reactions.WANTED
                                + " tries with the trigger, "
                                + "["
                                + style.trigger().label()
                                + "].",
                        "",
                        "It takes about two minutes, without a mask. What it finds is kept, and"
                                + " every session from then on records it."),
                "begin",
                ENTER);
        RoundTrips trips = left ? new RoundTrips(List.of()) : terminal();
        List<Cue> heard = new ArrayList<>();
        List<Cue> unheard = new ArrayList<>();
        for (Cue cue : left ? new Cue[0] : Cue.values()) {
            if (!left) {
                (hears(cue) ? heard : unheard).add(cue);
            }
        }
        String[] signal = {"picture"};
        Reactions reactions = left ? Reactions.NONE : reactions(signal);
        return left
                ? Optional.empty()
                : Optional.of(
                        new Event.SelfTested(
                                when,
                                terminal,
                                trips.seconds().size(),
                                trips.median(),
                                trips.p99(),
                                trips.most(),
                                signal[0],
                                reactions.taken(),
                                heard.stream().map(Cue::word).toList(),
                                unheard.stream().map(Cue::word).toList()));
    }

    /** What was found, until it is read. */
    void tell(Event.SelfTested found, String kept) {
        List<String> lines = new ArrayList<>(words(found));
        lines.addAll(List.of("", kept));
        awaits("What was found", lines, "end", ENTER);
    }

    /** What was found, in words. */
    static List<String> words(Event.SelfTested found) {
        OptionalDouble spread = TimedInhalation.pairSpread(found.reactions());
        return List.of(
                found.answers() == 0
                        ? "Terminal: it does not say where its cursor is, so its delay is not known."
                        : String.format(
                                Locale.ROOT,
                                "Terminal: there and back in %.1f ms (median of %d; 99 %% within"
                                        + " %.1f ms, the longest %.1f ms).",
                                found.median() * 1e3,
                                found.answers(),
                                found.p99() * 1e3,
                                found.most() * 1e3),
                found.unheard().isEmpty()
                        ? "Cues: all heard."
                        : "Cues not heard: " + String.join(", ", found.unheard()) + ".",
                String.format(
                        Locale.ROOT,
                        "Reaction: a start and a stop by you spread by %.0f ms (standard deviation,"
                                + " from %d tries at %s). The usual figure is %.0f ms.",
                        spread.orElse(Double.NaN) * 1e3,
                        found.reactions().size(),
                        found.signal().equals("picture")
                                ? "the picture alone"
                                : found.signal() + " and the picture",
                        TimedInhalation.HAND_TIMING_SD_SECONDS * 1e3));
    }

    private RoundTrips terminal() {
        draw("1 of 3  The terminal", Optional.empty(), List.of("Wait a moment."), List.of(LEAVE));
        List<Double> answers = new ArrayList<>();
        int silent = 0;
        while (answers.size() < QUESTIONS && silent < MOST_SILENT && !left) {
            long asked = world.nanos();
            world.askTerminal();
            OptionalDouble answer = answer(asked);
            answer.ifPresent(answers::add);
            silent += answer.isEmpty() ? 1 : 0;
            idle(BETWEEN_NANOS);
        }
        return new RoundTrips(answers);
    }

    private OptionalDouble answer(long asked) {
        long until = asked + PATIENCE_NANOS;
        while (!left && world.nanos() < until) {
            Optional<Pressed> pressed = world.next(until - world.nanos());
            if (pressed.filter(SelfTest::isAnswer).isPresent()) {
                return OptionalDouble.of((pressed.get().nanos() - asked) / 1e9);
            }
            pressed.ifPresent(this::leaves);
        }
        return OptionalDouble.empty();
    }

    private static boolean isAnswer(Pressed pressed) {
        return pressed.key().getKeyType() == KeyType.CursorLocation;
    }

    private boolean hears(Cue cue) {
        while (!left) {
            String how = world.give(cue);
            Stroke said =
                    asks(
                            "2 of 3  The cues",
                            List.of(
                                    "This is '" + cue.word() + "' (" + given(how) + ").",
                                    "Did you hear it?"),
                            new LiveKey(YES, "I heard it"),
                            new LiveKey(NO, "I did not"),
                            new LiveKey(AGAIN, "once more"));
            if (!said.equals(AGAIN)) {
                return said.equals(YES);
            }
        }
        return false;
    }

    private static String given(String how) {
        return switch (how) {
            case "tones" -> "its own rhythm, see the help page";
            case "bell" -> "the terminal's bell: no sound device answers";
            default -> how;
        };
    }

    /**
     * @param signal takes how the signal was given
     */
    private Reactions reactions(String[] signal) {
        awaits(
                "3 of 3  Your reaction",
                List.of(
                        "A signal comes after a time that you cannot guess: the cue 'go', and NOW"
                                + " on the screen. Press the trigger, ["
                                + style.trigger().label()
                                + "], as soon as you notice it, "
                                + Reactions.WANTED
                                + " times.",
                        "Only how evenly you do it counts, not how fast."),
                "begin",
                ENTER);
        Reactions reactions = Reactions.NONE;
        Optional<String> said = Optional.empty();
        while (!left && !reactions.areEnough()) {
            OptionalDouble seconds = react(reactions.taken().size() + 1, said, signal);
            if (seconds.isPresent()) {
                Reactions.Worth worth = Reactions.worth(seconds.getAsDouble());
                said = said(worth, seconds.getAsDouble());
                reactions =
                        worth == Reactions.Worth.COUNTS
                                ? reactions.with(seconds.getAsDouble())
                                : reactions;
            }
        }
        return reactions;
    }

    private static Optional<String> said(Reactions.Worth worth, double seconds) {
        return switch (worth) {
            case COUNTS -> Optional.empty();
            case TOO_EARLY -> Optional.of("that was before the signal; it is tried once more");
            case TOO_LATE ->
                    Optional.of(
                            String.format(
                                    Locale.ROOT,
                                    "that took %.1f s; it is tried once more",
                                    seconds));
        };
    }

    /** One try: the time from the signal to the trigger, below 0 when it came before the signal. */
    private OptionalDouble react(int number, Optional<String> said, String[] signal) {
        String title = "3 of 3  Your reaction, " + number + " of " + Reactions.WANTED;
        List<LiveKey> keys = List.of(new LiveKey(style.trigger(), "at the signal"), LEAVE);
        draw(title, Optional.of("WAIT"), List.of(), keys, said);
        long due = world.nanos() + Math.round(Reactions.pause(random) * SECOND);
        Optional<Pressed> early = trigger(due);
        if (early.isPresent() || left) {
            return left ? OptionalDouble.empty() : OptionalDouble.of(-1);
        }
        long given = world.nanos();
        signal[0] = world.give(Cue.GO);
        List<String> now = List.of("Press [" + style.trigger().label() + "].");
        draw(title, Optional.of("NOW"), now, keys);
        Optional<Pressed> pressed = trigger(given + 10 * SECOND);
        double seconds = pressed.map(each -> (each.nanos() - given) / 1e9).orElse(10.0);
        return left ? OptionalDouble.empty() : OptionalDouble.of(seconds);
    }

    /** The trigger, if it is pressed before a moment. */
    private Optional<Pressed> trigger(long until) {
        while (!left && world.nanos() < until) {
            Optional<Pressed> pressed = world.next(until - world.nanos());
            if (pressed.filter(this::isTrigger).isPresent()) {
                return pressed;
            }
            pressed.ifPresent(this::leaves);
        }
        return Optional.empty();
    }

    private boolean isTrigger(Pressed pressed) {
        return Stroke.of(pressed.key()).equals(style.trigger()) && !pressed.isRepeat(bounceSeconds);
    }

    private void idle(long nanos) {
        long until = world.nanos() + nanos;
        while (!left && world.nanos() < until) {
            world.next(until - world.nanos()).ifPresent(this::leaves);
        }
    }

    private void awaits(String title, List<String> lines, String help, Stroke stroke) {
        if (!left) {
            asks(title, lines, new LiveKey(stroke, help));
        }
    }

    /** Shows something until one of some keys is pressed; any of them when it is left. */
    private Stroke asks(String title, List<String> lines, LiveKey... keys) {
        List<LiveKey> live = Stream.concat(Stream.of(keys), Stream.of(LEAVE)).toList();
        draw(title, Optional.empty(), lines, live);
        while (!left) {
            Optional<Pressed> pressed = world.next(SECOND);
            for (LiveKey key : keys) {
                if (pressed.filter(each -> means(each, key.stroke())).isPresent()) {
                    return key.stroke();
                }
            }
            pressed.ifPresent(this::leaves);
            draw(title, Optional.empty(), lines, live);
        }
        return keys[0].stroke();
    }

    private boolean means(Pressed pressed, Stroke stroke) {
        return Stroke.of(pressed.key()).equals(stroke) && !pressed.isRepeat(bounceSeconds);
    }

    private void leaves(Pressed pressed) {
        Stroke stroke = Stroke.of(pressed.key());
        left |=
                pressed.isEnd()
                        || stroke.equals(LEAVE.stroke())
                        || stroke.equals(Stroke.ctrl('c'))
                        || stroke.equals(Stroke.ctrl('q'))
                        || stroke.equals(Stroke.of(KeyType.Escape));
    }

    private void draw(String title, Optional<String> big, List<String> lines, List<LiveKey> keys) {
        draw(title, big, lines, keys, Optional.empty());
    }

    private void draw(
            String title,
            Optional<String> big,
            List<String> lines,
            List<LiveKey> keys,
            Optional<String> message) {
        world.draw(new SelfTestView(title, big, lines, message, keys, style));
    }
}
