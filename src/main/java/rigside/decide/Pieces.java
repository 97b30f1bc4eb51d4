package rigside.decide;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A function of tau between 0 and the end of its support, held on pieces: on each a Chebyshev
 * series in sqrt(1 - tau / upper end), called the root of tau, in which square-root behaviour at
 * that end is analytic.
 */
final class Pieces {

    /** One everywhere, on a single piece without end. */
    static final Pieces ONE =
            new Pieces(new double[] {0, Double.POSITIVE_INFINITY}, new double[][] {{1}});

    /** Nodes a piece; 48 change no critical value tried by more than 1e-9. */
    private static final int NODES = 24;

    private static final double[][] COSINES = cosines();

    private final double[] ends;
    private final double[][] series;

    private Pieces(double[] ends, double[][] series) {
        this.ends = ends;
        this.series = series;
    }

    /**
     * Tabulates a function.
     *
     * @param joints places below top where it is not analytic: pieces end there
     * @param top end of its support; at or beyond it the function is not evaluated
     * @param reach from the lower end of a piece to the farthest upper end at which one series
     *     still follows the function
     */
    static Pieces of(
            DoubleUnaryOperator function, double[] joints, double top, DoubleUnaryOperator reach) {
        double[] ends = split(joints, top, reach);
        double[][] series = new double[ends.length - 1][];
        for (int piece = 0; piece < series.length; piece++) {
            double wide = widest(ends, piece);
            double[] value = new double[NODES];
            for (int i = 0; i < NODES; i++) {
                double root = wide * (1 + COSINES[1][i]) / 2;
                value[i] = function.applyAsDouble(ends[piece + 1] * (1 - root * root));
            }
            series[piece] = chebyshev(value);
        }
        return new Pieces(ends, series);
    }

    int count() {
        return series.length;
    }

    /** The lower end of a piece. */
    double low(int piece) {
        return ends[piece];
    }

    /** The upper end of a piece. */
    double high(int piece) {
        return ends[piece + 1];
    }

    /** The end of the support. */
    double top() {
        return ends[ends.length - 1];
    }

    /** The root of a tau on this piece; 0 at its upper end. */
    double root(int piece, double tau) {
        return Math.sqrt(Math.max(0, 1 - tau / ends[piece + 1]));
    }

    /** The tau of a root on this piece. */
    double tau(int piece, double root) {
        return ends[piece + 1] * (1 - root * root);
    }

    /** The root at a piece's lower end. */
    double widest(int piece) {
        return widest(ends, piece);
    }

    /** The value at tau, which lies on this piece up to rounding. */
    double at(int piece, double tau) {
        double[] c = series[piece];
        if (c.length == 1) {
            return c[0];
        }
        double root = root(piece, tau);
        double x = 2 * root / widest(piece) - 1;
        // Clenshaw, even and odd terms side by side so that neither waits for the other.
        double twice = 2 * (2 * x * x - 1);
        double even = 0;
        double evenBefore = 0;
        double odd = 0;
        double oddBefore = 0;
        for (int k = NODES - 2; k > 0; k -= 2) {
            double nextEven = twice * even + (c[k] - evenBefore);
            double nextOdd = twice * odd + (c[k + 1] - oddBefore);
            evenBefore = even;
            oddBefore = odd;
            even = nextEven;
            odd = nextOdd;
        }
        double lastOdd = twice * odd + (c[1] - oddBefore);
        return twice / 2 * even + (c[0] - evenBefore) + x * (lastOdd - odd);
    }

    private static double[] split(double[] joints, double top, DoubleUnaryOperator reach) {
        List<Double> ends = new ArrayList<>(List.of(0.0));
        double[] stops = Arrays.copyOf(joints, joints.length + 1);
        stops[joints.length] = top;
        Arrays.sort(stops);
        double low = 0;
        for (double stop : stops) {
            double next = reach.applyAsDouble(low);
            while (stop - low > 1.25 * (next - low)) {
                low = next;
                ends.add(low);
                next = reach.applyAsDouble(low);
            }
            // Joints closer than this would only make slivers.
            if (stop - low > 1e-3 * stop) {
                low = stop;
                ends.add(low);
            }
        }
        ends.set(ends.size() - 1, top);
        return ends.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static double widest(double[] ends, int piece) {
        return Math.sqrt(1 - ends[piece] / ends[piece + 1]);
    }

    private static double[] chebyshev(double[] value) {
        double[] c = new double[NODES];
        for (int k = 0; k < NODES; k++) {
            double sum = 0;
            for (int i = 0; i < NODES; i++) {
                sum += value[i] * COSINES[k][i];
            }
            c[k] = sum * (k == 0 ? 1 : 2) / NODES;
        }
        return c;
    }

    /** cos(k (i + 1/2) pi / NODES): row k the k-th polynomial at the nodes, row 1 the nodes. */
    private static double[][] cosines() {
        double[][] cos = new double[NODES][NODES];
        for (int k = 0; k < NODES; k++) {
            for (int i = 0; i < NODES; i++) {
                cos[k][i] = Math.cos(k * (i + 0.5) * Math.PI / NODES);
            }
        }
        return cos;
    }
}
