package rigside.decide;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * At one look: the chance of not having crossed at any earlier look, given the present statistic,
 * as an even function of tau = T / sqrt(df).
 *
 * <p>The function is held on {@link Pieces} of tau between 0 and the end of its support.
 */
final class Survival {

    /**
     * A place where the function is not analytic.
     *
     * @param tau its place, above 0
     * @param age how many looks ago it arose; each look makes it smoother
     */
    record Joint(double tau, int age) {}

    /** Joints older than this are smooth enough for the series to pass over. */
    private static final int OLDEST = 3;

    private final double degreesOfFreedom;
    private final double limit;
    private final Pieces function;
    private final List<Joint> joints;
    private final DoubleUnaryOperator reach;
    private final double angleDensity;

    private Survival(
            double degreesOfFreedom,
            double limit,
            Pieces function,
            List<Joint> joints,
            DoubleUnaryOperator reach) {
        this.degreesOfFreedom = degreesOfFreedom;
        this.limit = limit;
        this.function = function;
        this.joints = joints;
        this.reach = reach;
        this.angleDensity = StudentT.angleDensity(degreesOfFreedom);
    }

    /** Before the first look nothing can have been crossed: one everywhere. */
    static Survival untouched(double degreesOfFreedom) {
        return new Survival(
                degreesOfFreedom,
                Double.POSITIVE_INFINITY,
                Pieces.ONE,
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
        double[] places = kept.stream().mapToDouble(Joint::tau).toArray();
        return new Survival(
                degreesOfFreedom, top, Pieces.of(function, places, top, reach), kept, reach);
    }

    /** The same function with paths beyond {@code tau} ended here. */
    Survival stoppedBeyond(double tau) {
        double end = Math.min(tau, function.top());
        return new Survival(degreesOfFreedom, end, function, joints, reach);
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
        while (count < function.count() && function.low(count) < limit) {
            count++;
        }
        return count;
    }

    double low(int piece) {
        return function.low(piece);
    }

    double high(int piece) {
        return Math.min(function.high(piece), limit);
    }

    /** The value at tau, which lies on this piece up to rounding. */
    double at(int piece, double tau) {
        return function.at(piece, tau);
    }

    /** P(not crossed before, and T / sqrt(df) &gt; tau): one side. */
    double beyond(double tau) {
        if (function == Pieces.ONE) {
            return StudentT.upperTail(tau * Math.sqrt(degreesOfFreedom), degreesOfFreedom);
        }
        double sum = 0;
        for (int piece = function.count() - 1; piece >= 0 && function.high(piece) > tau; piece--) {
            sum += mass(piece, function.root(piece, Math.max(tau, function.low(piece))));
        }
        return sum;
    }

    /**
     * The tau with this much beyond it on one side.
     *
     * @param tail above 0 and below {@code beyond(0)}
     */
    double criticalFor(double tail) {
        if (function == Pieces.ONE) {
            return StudentT.upperQuantile(tail, degreesOfFreedom) / Math.sqrt(degreesOfFreedom);
        }
        double left = tail;
        int piece = function.count() - 1;
        double whole = mass(piece, function.widest(piece));
        while (whole < left && piece > 0) {
            left -= whole;
            piece--;
            whole = mass(piece, function.widest(piece));
        }
        return function.tau(piece, rootFor(piece, left));
    }

    private double rootFor(int piece, double wanted) {
        double low = 0;
        double high = function.widest(piece);
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
        double tau = function.tau(piece, root);
        return angleDensity
                * function.at(piece, tau)
                * Math.exp(-(degreesOfFreedom + 1) / 2 * Math.log1p(tau * tau))
                * 2
                * function.high(piece)
                * root;
    }
}
