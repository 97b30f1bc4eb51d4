package rigside.bench;

import java.time.ZonedDateTime;

/**
 * One moment on both clocks.
 *
 * @param nanos the steady clock, as {@code System.nanoTime} tells it
 * @param wall the clock on the wall
 */
record Moment(long nanos, ZonedDateTime wall) {
    /** The first readings load classes and take milliseconds, the ones after it microseconds. */
    private static final int READINGS = 20;

    /** Now: of several readings the one during which the steady clock went on least. */
    static Moment now() {
        long least = Long.MAX_VALUE;
        Moment best = null;
        for (int i = 0; i < READINGS; i++) {
            long before = System.nanoTime();
            ZonedDateTime wall = Wall.now();
            long took = System.nanoTime() - before;
            if (best == null || took < least) {
                least = took;
                best = new Moment(before + took / 2, wall);
            }
        }
        return best;
    }
}
