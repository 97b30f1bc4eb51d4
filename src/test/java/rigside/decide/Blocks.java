package rigside.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Simulated campaigns in blocks, each with random numbers of its own, counted side by side. */
final class Blocks {
    private static final int BLOCKS = 100;

    private Blocks() {}

    /** Plays one campaign and adds what it came to to the counts. */
    interface Player {
        void play(SplittableRandom random, long[] counts);
    }

    /** A player for each block, since players keep their values in arrays. */
    interface Players {
        Player player();
    }

    /**
     * The counts over all campaigns; the same for the same seed however many processors there are.
     *
     * @param campaigns a multiple of 100
     */
    static long[] count(long seed, int campaigns, int kinds, Players players) {
        SplittableRandom root = new SplittableRandom(seed);
        List<SplittableRandom> sources = new ArrayList<>();
        for (int block = 0; block < BLOCKS; block++) {
            sources.add(root.split());
        }
        return sources.parallelStream()
                .map(
                        random -> {
                            long[] counts = new long[kinds];
                            Player player = players.player();
                            for (int i = 0; i < campaigns / BLOCKS; i++) {
                                player.play(random, counts);
                            }
                            return counts;
                        })
                .reduce(
                        new long[kinds],
                        (a, b) -> {
                            long[] sum = new long[kinds];
                            for (int i = 0; i < kinds; i++) {
                                sum[i] = a[i] + b[i];
                            }
                            return sum;
                        });
    }
}
