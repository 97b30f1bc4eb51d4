package rigside.bench;

import com.googlecode.lanterna.input.KeyType;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Times how long the terminal takes to answer. */
record TripTimer(SelfTest.World world, Dialogue dialogue) {
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

    /** Asks it again and again, unless the self-test is left. */
    RoundTrips taken() {
        List<Double> answers = new ArrayList<>();
        int silent = 0;
        while (answers.size() < QUESTIONS && silent < MOST_SILENT && !dialogue.isLeft()) {
            long asked = world.nanos();
            world.askTerminal();
            OptionalDouble answer = answer(asked);
            answer.ifPresent(answers::add);
            silent += answer.isEmpty() ? 1 : 0;
            dialogue.next(world.nanos() + BETWEEN_NANOS, any -> false);
        }
        return new RoundTrips(answers);
    }

    private OptionalDouble answer(long asked) {
        Optional<Pressed> answer = dialogue.next(asked + PATIENCE_NANOS, TripTimer::isAnswer);
        return answer.isPresent()
                ? OptionalDouble.of((answer.get().nanos() - asked) / 1e9)
                : OptionalDouble.empty();
    }

    private static boolean isAnswer(Pressed pressed) {
        return pressed.key().getKeyType() == KeyType.CursorLocation;
    }
}
