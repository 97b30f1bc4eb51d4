package rigside.bench;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import rigside.rig.Cue;
import rigside.screen.SelfTestView.LiveKey;

/** Times how evenly the tester reacts: from a signal nobody can foresee to the trigger. */
final class ReactionTimer {
    private static final long SECOND = 1_000_000_000L;

    /** Without the trigger by then, that is the time of the try. */
    private static final double PATIENCE_SECONDS = 10;

    private final SelfTest.World world;
    private final Dialogue dialogue;
    private final RandomGenerator random;
    private final boolean byEar;
    private String signal = "picture";

    /**
     * @param byEar whether the signal can be heard; then the screen does not give it away
     */
    ReactionTimer(SelfTest.World world, Dialogue dialogue, RandomGenerator random, boolean byEar) {
        this.byEar = byEar;
        this.world = world;
        this.dialogue = dialogue;
        this.random = random;
    }

    /** How the last signal was given, in a word as the journal has it. */
    String signal() {
        return signal;
    }

    /** Tries until there are enough that count, or the self-test is left. */
    Reactions taken() {
        Reactions reactions = Reactions.NONE;
        Optional<String> said = Optional.empty();
        while (!dialogue.isLeft() && !reactions.areEnough()) {
            OptionalDouble seconds = react(reactions.taken().size() + 1, said);
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
    private OptionalDouble react(int number, Optional<String> said) {
        String title = "3 of 3  Your reaction, " + number + " of " + Reactions.WANTED;
        List<LiveKey> keys =
                List.of(new LiveKey(dialogue.trigger(), "at the signal"), Dialogue.LEAVE);
        dialogue.draw(title, Optional.of(byEar ? "LISTEN" : "WAIT"), List.of(), keys, said);
        long due = world.nanos() + Math.round(Reactions.pause(random) * SECOND);
        Optional<Pressed> early = trigger(due);
        if (early.isPresent() || dialogue.isLeft()) {
            return dialogue.isLeft() ? OptionalDouble.empty() : OptionalDouble.of(-1);
        }
        long given = world.nanos();
        String how = world.give(Cue.GO);
        signal = byEar ? how : "picture";
        if (!byEar) {
            List<String> now = List.of("Press [" + dialogue.trigger().label() + "].");
            dialogue.draw(title, Optional.of("NOW"), now, keys);
        }
        Optional<Pressed> pressed = trigger(given + Math.round(PATIENCE_SECONDS * SECOND));
        double seconds = pressed.map(each -> (each.nanos() - given) / 1e9).orElse(PATIENCE_SECONDS);
        return dialogue.isLeft() ? OptionalDouble.empty() : OptionalDouble.of(seconds);
    }

    private Optional<Pressed> trigger(long until) {
        return dialogue.next(until, pressed -> dialogue.means(pressed, dialogue.trigger()));
    }
}
