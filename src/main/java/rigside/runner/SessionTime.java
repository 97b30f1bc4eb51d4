package rigside.runner;

/**
 * Turns stamps of a monotonic clock into session time.
 *
 * @param origin a stamp, in nanoseconds
 * @param at the session time at {@code origin}, in nanoseconds
 * @param speed seconds of session time in one second; 1 on a real bench
 */
public record SessionTime(long origin, long at, double speed) {
    public SessionTime {
        if (!(speed > 0)) {
            throw new IllegalArgumentException("speed " + speed + ", must be above 0");
        }
    }

    /** The session time of a stamp, in nanoseconds. */
    public long of(long stamp) {
        long since = stamp - origin;
        return at + (speed == 1 ? since : (long) (since * speed));
    }
}
