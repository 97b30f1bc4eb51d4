package rigside.session;

import java.util.Optional;

/**
 * One time the mask was put on.
 *
 * @param number its number in the session, from 1, in the order they were begun
 * @param round the round it belongs to, from 1
 * @param turn its place in the round's order, from 1
 * @param condition the id of the condition worn
 * @param outcome how it stands now
 * @param reason why it was abandoned or struck out; empty otherwise
 * @param looksBefore how many looks had been taken when it was struck out; 0 otherwise
 * @param startedAt when it was begun, in nanoseconds of session time
 * @param endedAt when it was completed or abandoned, in nanoseconds of session time
 */
public record Donning(
        int number,
        int round,
        int turn,
        String condition,
        Outcome outcome,
        String reason,
        int looksBefore,
        long startedAt,
        Optional<Long> endedAt) {

    /** How a donning stands. */
    public enum Outcome {
        OPEN,
        COMPLETE,
        /** Broken off before its end; done again in the same turn. */
        ABANDONED,
        /** Complete, then struck out as a whole; done again in the same turn. */
        STRUCK
    }

    Donning ended(Outcome how, String why, long at) {
        return new Donning(
                number, round, turn, condition, how, why, looksBefore, startedAt, Optional.of(at));
    }

    Donning struck(String why, int looks) {
        return new Donning(
                number, round, turn, condition, Outcome.STRUCK, why, looks, startedAt, endedAt);
    }
}
