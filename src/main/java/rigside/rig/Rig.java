package rigside.rig;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What answers for the instruments. */
public interface Rig extends AutoCloseable {
    /** What answers, in words for the journal and the screen. */
    String words();

    /** Whether the answers are invented. */
    boolean simulated();

    /** The answer in the SI unit of what is asked; empty when the tester has to type or time it. */
    OptionalDouble answer(Asked asked);

    /**
     * Lets session time pass: takes over what instruments have sent, without waiting for any.
     *
     * @return which feeds began to fail or are back since the last call
     */
    default List<FeedTrouble> pass(long now) {
        return List.of();
    }

    /**
     * Says what the tester does; only a simulated rig wants to know.
     *
     * @param at since when, or when it was noticed, in nanoseconds of session time
     */
    default void does(Act act, long at) {}

    /** How every feed is doing; empty without instruments. */
    default List<FeedState> states() {
        return List.of();
    }

    /** The last reading of a signal, however old; empty when there is none. */
    default Optional<Reading> latest(Signal signal) {
        return Optional.empty();
    }

    /**
     * What a signal reads now, smoothed over {@value Lately#SECONDS} s, so that a gauge does not
     * flicker; empty when no instrument follows it.
     */
    default Optional<Now> now(Signal signal) {
        return Optional.empty();
    }

    /**
     * The readings of a signal between two session times, both included, in order; those of a
     * switched counter whose lines do not say what its tube is on count for both its signals.
     */
    default List<Reading> readings(Signal signal, long from, long to) {
        return List.of();
    }

    /**
     * The readings of a signal in a window summed up, with the settling time after a switch left
     * out; empty when no feed gives the signal.
     */
    default Optional<Sample> sample(Signal signal, Span span) {
        return Optional.empty();
    }

    /** Lets go of instruments; nothing without any. */
    @Override
    default void close() {}

    /** No instrument is attached: everything is typed and timed by the tester. */
    static Rig typed() {
        return new Rig() {
            @Override
            public String words() {
                return "typed";
            }

            @Override
            public boolean simulated() {
                return false;
            }

            @Override
            public OptionalDouble answer(Asked asked) {
                return OptionalDouble.empty();
            }
        };
    }
}
