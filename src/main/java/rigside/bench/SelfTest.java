package rigside.bench;

import com.googlecode.lanterna.input.KeyType;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import rigside.analysis.SelfTestWords;
import rigside.rig.Cue;
import rigside.screen.SelfTestView;
import rigside.screen.SelfTestView.LiveKey;
import rigside.screen.Stroke;
import rigside.screen.View;
import rigside.session.Event;

/**
 * Tries the terminal, each cue, and how evenly the tester reacts: what is asked, in its order. What
 * it found is worth keeping when it was not left early.
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

    private static final Stroke ENTER = Stroke.of(KeyType.Enter);
    private static final Stroke YES = Stroke.of('y');
    private static final Stroke NO = Stroke.of('n');
    private static final Stroke AGAIN = Stroke.of('r');

    private final World world;
    private final RandomGenerator random;
    private final Dialogue dialogue;

    SelfTest(World world, RandomGenerator random, View.Style style, double bounceSeconds) {
        this.world = world;
        this.random = random;
        dialogue = new Dialogue(world, style, bounceSeconds);
    }

    /**
     * Runs it.
     *
     * @param when the moment, as text for the record
     * @param terminal what kind the terminal is, as it calls itself
     * @return what was found; empty when it was left before everything was tried
     */
    Optional<Event.SelfTested> run(String when, String terminal) {
        dialogue.awaits(
                "What is tried",
                List.of(
                        "1. How long the terminal takes from a key to the program.",
                        "2. Whether you hear each cue.",
                        "3. How evenly you react to a signal: "
                                + Reactions.WANTED
                                + " tries with the trigger, "
                                + "["
                                + dialogue.trigger().label()
                                + "].",
                        "",
                        "It takes about two minutes, without a mask. What it finds is kept, and"
                                + " every session from then on records it."),
                "begin",
                ENTER);
        RoundTrips trips = dialogue.isLeft() ? new RoundTrips(List.of()) : terminal();
        List<Cue> heard = new ArrayList<>();
        List<Cue> unheard = new ArrayList<>();
        for (Cue cue : Cue.values()) {
            if (!dialogue.isLeft()) {
                (hears(cue) ? heard : unheard).add(cue);
            }
        }
        boolean byEar = heard.contains(Cue.GO);
        ReactionTimer timer = new ReactionTimer(world, dialogue, random, byEar);
        Reactions reactions = reactions(timer, byEar);
        return dialogue.isLeft()
                ? Optional.empty()
                : Optional.of(
                        new Event.SelfTested(
                                when,
                                terminal,
                                trips.seconds().size(),
                                trips.median(),
                                trips.p99(),
                                trips.most(),
                                timer.signal(),
                                reactions.taken(),
                                heard.stream().map(Cue::word).toList(),
                                unheard.stream().map(Cue::word).toList()));
    }

    /** What was found, until it is read. */
    void tell(Event.SelfTested found, String kept) {
        List<String> lines = new ArrayList<>(SelfTestWords.of(found));
        lines.addAll(List.of("", kept));
        dialogue.awaits("What was found", lines, "end", ENTER);
    }

    private RoundTrips terminal() {
        dialogue.draw(
                "1 of 3  The terminal",
                Optional.empty(),
                List.of("Wait a moment."),
                List.of(Dialogue.LEAVE));
        return new TripTimer(world, dialogue).taken();
    }

    private boolean hears(Cue cue) {
        while (!dialogue.isLeft()) {
            String how = world.give(cue);
            Stroke said =
                    dialogue.asks(
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

    private Reactions reactions(ReactionTimer timer, boolean byEar) {
        dialogue.awaits(
                "3 of 3  Your reaction",
                List.of(
                        "A signal comes after a time that you cannot guess: "
                                + (byEar
                                        ? "the cue 'go', to the ear alone"
                                        : "NOW on the screen, since you do not hear the cue 'go'")
                                + ". Press the trigger, ["
                                + dialogue.trigger().label()
                                + "], as soon as you notice it, "
                                + Reactions.WANTED
                                + " times.",
                        "Only how evenly you do it counts, not how fast."),
                "begin",
                ENTER);
        return timer.taken();
    }
}
