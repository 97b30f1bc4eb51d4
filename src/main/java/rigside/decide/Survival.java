package rigside.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * At one look: the chance of not having crossed at any earlier look, given the present statistic,
 * as an even function of tau = T / sqrt(df).
 *
 * <p>Held on pieces of tau between 0 and the end of its support; on each piece a Chebyshev series
 * in sqrt(1 - tau / upper end), in which the square-root behaviour at that end is analytic.
 */
final class Survival {

    /**
     * A place where the function is not analytic.
     *
     * @param tau its place, above 0
     * @param age how many looks ago it arose; each look makes it smoother
     */
    record Joint(double tau, int age) {}

    /** Nodes a piece; 48 change no critical value tried by more than 1e-9. */
    private static final int NODES = 24;

    /** Joints older than this are smooth enough for the series to pass over. */
    private static final int OLDEST = 3;

    private static final double[][] COSINES = cosines();

    private final double degreesOfFreedom;
    private final double limit;
    private final double[] ends;
    private final double[][] series;
    private final List<Joint> joints;
    private final DoubleUnaryOperator reach;
    private final double angleDensity;

    private Survival(
            double degreesOfFreedom,
            double limit,
            double[] ends,
            double[][] series,
            List<Joint> joints,
            DoubleUnaryOperator reach) {
        this.degreesOfFreedom = degreesOfFreedom;
        this.limit = limit;
        this.ends = ends;
        this.series = series;
        this.joints = joints;
        this.reach = reach;
        this.angleDensity = StudentT.angleDensity(degreesOfFreedom);
    }

    /** Before the first look nothing can have been crossed: one everywhere. */
    static Survival untouched(double degreesOfFreedom) {
        return new Survival(
                degreesOfFreedom,
                Double.POSITIVE_INFINITY,
                new double[] {0, Double.POSITIVE_INFINITY},
                new double[][] {{1}},
                List.of(),
                low -> Double.POSITIVE_INFINITY);
    }

    /**
     * Tabulates a function.
     *
     * @param joints all places where it is not analytic; those at or beyond top are left out
     * @param top end of its support; at or beyond it the function is not evaluated
     * @param reach from the lower end of a piece to the farthest upper end at which one series
     *     still follows the function
     */
    static Survival of(
            double degreesOfFreedom,
            DoubleUnaryOperator function,
            List<Joint> joints,
            double top,
            DoubleUnaryOperator reach) {
        List<Joint> kept = joints.stream().filter(j -> j.tau() < top && j.age() <= OLDEST).toList();
        double[] ends = split(kept, top, reach);
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
        return new Survival(degreesOfFreedom, top, ends, series, kept, reach);
    }

    /** The same function with paths beyond {@code tau} ended here. */
    Survival stoppedBeyond(double tau) {
        double end = Math.min(tau, ends[ends.length - 1]);
        return new Survival(degreesOfFreedom, end, ends, series, joints, reach);
    }

    double degreesOfFreedom() {
        return degreesOfFreedom;
    }

    /** Where paths end: the critical value once stopped, else the end of the support. */
    double limit() {
        return limit;
    }

    List<Joint> joints() {
        return joints;
    }

    /** From the lower end of a piece to the farthest upper end one series can follow. */
    DoubleUnaryOperator reach() {
        return reach;
    }

    /** Number of pieces up to the limit. */
    int pieces() {
        int count = 0;
        while (count < series.length && ends[count] < limit) {
            count++;
        }
        return count;
    }

    double low(int piece) {
        return ends[piece];
    }

    double high(int piece) {
        return Math.min(ends[piece + 1], limit);
    }

    /** The value at tau, which lies on this piece up to rounding. */
    double at(int piece, double tau) {
        double[] c = series[piece];
        if (c.length == 1) {
            return c[0];
        }
        double root = Math.sqrt(Math.max(0, 1 - tau / ends[piece + 1]));
        double x = 2 * root / widest(ends, piece) - 1;
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

    /** P(not crossed before, and T / sqrt(df) &gt; tau): one side. */
    double beyond(double tau) {
        if (ends[1] == Double.POSITIVE_INFINITY) {
            return StudentT.upperTail(tau * Math.sqrt(degreesOfFreedom), degreesOfFreedom);
        }
        double sum = 0;
        for (int piece = series.length - 1; piece >= 0 && ends[piece + 1] > tau; piece--) {
            double low = Math.max(tau, ends[piece]);
            sum += mass(piece, Math.sqrt(1 - low / ends[piece + 1]));
        }
        return sum;
    }

    /**
     * The tau with this much beyond it on one side.
     *
     * @param tail above 0 and below {@code beyond(0)}
     */
    double criticalFor(double tail) {
        if (ends[1] == Double.POSITIVE_INFINITY) {
            return StudentT.upperQuantile(tail, degreesOfFreedom) / Math.sqrt(degreesOfFreedom);
        }
        double left = tail;
        int piece = series.length - 1;
        double whole = mass(piece, widest(ends, piece));
        while (whole < left && piece > 0) {
            left -= whole;
            piece--;
            whole = mass(piece, widest(ends, piece));
        }
        double root = rootFor(piece, left);
        return ends[piece + 1] * (1 - root * root);
    }

    private double rootFor(int piece, double wanted) {
        double low = 0;
        double high = widest(ends, piece);
        double root = high / 2;
        for (int i = 0; i < 80; i++) {
            double excess = mass(piece, root) - wanted;
            if (excess > 0) {
                high = root;
            } else {
                low = root;
            }
            double next = root - excess / density(piece, root);
            if (!(next > low && next < high)) {
                next = (low + high) / 2;
            }
            if (Math.abs(next - root) <= 1e-14 * high) {
                return next;
            }
            root = next;
        }
        return root;
    }

    /** Mass on a piece between its upper end and this root. */
    private double mass(int piece, double root) {
        return Quadrature.PLAIN.integrate(0, root, r -> density(piece, r));
    }

    private double density(int piece, double root) {
        double top = ends[piece + 1];
        double tau = top * (1 - root * root);
        return angleDensity
                * at(piece, tau)
                * Math.exp(-(degreesOfFreedom + 1) / 2 * Math.log1p(tau * tau))
                * 2
                * top
                * root;
    }

    private static double[] split(List<Joint> joints, double top, DoubleUnaryOperator reach) {
        List<Double> ends = new ArrayList<>(List.of(0.0));
        List<Double> stops = new ArrayList<>(joints.stream().map(Joint::tau).sorted().toList());
        stops.add(top);
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

    /** The root at a piece's lower end. */
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
