package rigside.decide;

import java.util.random.RandomGenerator;

/**
 * One arm of a simulated campaign: values already seen first, drawn ones after them. Sums are kept
 * about a centre near the values, so that no digits cancel.
 */
final class Arm {
    private final double[] seen;
    private final double centre;
    private final int start;
    private final double startSum;
    private final double startSquares;
    private int count;
    private double sum;
    private double squares;

    /**
     * @param seen values already seen
     * @param start how many of them belong to looks already taken
     * @param centre a number near the values
     */
    Arm(double[] seen, int start, double centre) {
        this.seen = seen.clone();
        this.start = start;
        this.centre = centre;
        for (int i = 0; i < start; i++) {
            add(seen[i] - centre);
        }
        startSum = sum;
        startSquares = squares;
    }

    /** Back to where the looks already taken end. */
    void restart() {
        count = start;
        sum = startSum;
        squares = startSquares;
    }

    /** Goes on to this many values, drawing what has not been seen. */
    void advance(int to, double mean, double spread, RandomGenerator random) {
        while (count < to) {
            if (count < seen.length) {
                add(seen[count] - centre);
            } else {
                add(mean - centre + spread * random.nextGaussian());
            }
        }
    }

    double mean() {
        return centre + sum / count;
    }

    /** Sum of squared deviations from the mean. */
    double squares() {
        return Math.max(0, squares - sum * sum / count);
    }

    private void add(double deviation) {
        count++;
        sum += deviation;
        squares += deviation * deviation;
    }
}
