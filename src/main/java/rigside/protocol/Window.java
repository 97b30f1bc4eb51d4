package rigside.protocol;

/**
 * A sample window within an exercise, in seconds from its start.
 *
 * @param from its start, 0 or more
 * @param to its end, after {@code from}
 */
public record Window(double from, double to) {
    public Window {
        if (!(from >= 0 && to > from)) {
            throw new IllegalArgumentException(
                    "window " + from + " to " + to + " s, must begin at 0 or later and end after");
        }
    }
}
