package rigside.rig;

/**
 * A window of session time.
 *
 * @param from its begin, in nanoseconds of session time
 * @param to its end, not before {@code from}
 * @param switched whether the tube of a switched counter was put on at its begin, or may have been
 */
public record Span(long from, long to, boolean switched) {
    public Span {
        if (to < from) {
            throw new IllegalArgumentException(
                    "span " + from + " to " + to + ", must not end before");
        }
    }
}
