package rigside.rig;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;

/**
 * What a feed's thread hands over to the session's. Neither waits for the other: when the session
 * does not come for a long time the oldest arrivals are dropped and counted.
 */
final class ArrivalQueue {
    /** Some minutes of the fastest instruments. */
    static final int MOST = 16_384;

    private final ArrayDeque<Arrival> waiting = new ArrayDeque<>();
    private long dropped;

    synchronized void put(Arrival arrival) {
        if (waiting.size() >= MOST) {
            waiting.poll();
            dropped++;
        }
        waiting.add(arrival);
    }

    /** Everything that waits, in order. */
    synchronized List<Arrival> drain() {
        List<Arrival> all = new ArrayList<>(waiting);
        waiting.clear();
        return all;
    }

    /** How many were dropped so far. */
    synchronized long dropped() {
        return dropped;
    }
}
