package rigside.session;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import rigside.protocol.Plan;

/** The order of conditions within each round, drawn from the session's seed. */
final class Order {
    /** The golden ratio's odd 64-bit multiplier: spreads neighbouring numbers over all bits. */
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private Order() {}

    /**
     * The conditions of one round in the order they are worn.
     *
     * <p>{@link Random} is used because its numbers are fixed by its specification: a journal gives
     * the same order on every Java.
     *
     * @param round from 1
     */
    static List<String> of(List<String> conditions, Plan.Order order, long seed, int round) {
        return switch (order) {
            case AS_LISTED -> conditions;
            case RANDOM -> shuffled(conditions, random(seed, round));
            case BALANCED -> balanced(conditions, seed, round);
        };
    }

    /**
     * Blocks of as many rounds as there are conditions: within a block each condition takes each
     * turn once (a cyclic Latin square whose rows and starting order are shuffled).
     */
    private static List<String> balanced(List<String> conditions, long seed, int round) {
        int size = conditions.size();
        int block = (round - 1) / size;
        Random random = random(seed, -1 - block);
        List<String> symbols = shuffled(conditions, random);
        List<Integer> rows = new ArrayList<>();
        for (int row = 0; row < size; row++) {
            rows.add(row);
        }
        Collections.shuffle(rows, random);
        int shift = rows.get((round - 1) % size);
        List<String> turns = new ArrayList<>();
        for (int turn = 0; turn < size; turn++) {
            turns.add(symbols.get((turn + shift) % size));
        }
        return List.copyOf(turns);
    }

    private static List<String> shuffled(List<String> conditions, Random random) {
        List<String> shuffled = new ArrayList<>(conditions);
        Collections.shuffle(shuffled, random);
        return List.copyOf(shuffled);
    }

    /**
     * Seed and stream are mixed one after the other, so that no seed gives a shifted copy of
     * another's orders.
     */
    private static Random random(long seed, int stream) {
        long mixed = seed * GOLDEN;
        mixed = (mixed ^ (mixed >>> 32) ^ stream) * GOLDEN;
        return new Random(mixed ^ (mixed >>> 32));
    }
}
