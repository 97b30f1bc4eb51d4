package rigside.decide;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.special.Beta;

/**
 * The chance of crossing three looks at pairs, one pair between two looks, by the chain as the
 * design states it: u = T / sqrt(T^2 + nu), then u' = a u cos psi + b sin psi with psi an angle of
 * density proportional to cos^(d-1), d the values so far. No code is shared with the recursion,
 * which reads the chain backwards in another variable.
 */
final class ForwardQuadrature {
    private static final int NODES = 120;

    private final int first;
    private final double[] critical;

    /**
     * @param first pairs at the first look
     * @param critical of three looks, the first after so many pairs
     */
    ForwardQuadrature(int first, double[] critical) {
        this.first = first;
        this.critical = critical.clone();
    }

    /** The chance of crossing first at look 1, 2 and 3. */
    double[] crossings() {
        double edge = Math.atan(critical[0] / Math.sqrt(first - 1.0));
        Angle turn = new Angle(first - 2);
        Move second = move(1);
        Move third = move(2);
        double fromSecond = Math.asin(second.least());
        double fromThird = Math.asin(second.before(third.least()));
        return new double[] {
            2 * turn.above(edge),
            2
                    * integral(
                            q -> turn.density(q) * second.from(Math.sin(q)).beyond(),
                            0,
                            edge,
                            fromSecond),
            2
                    * integral(
                            q -> turn.density(q) * second.from(Math.sin(q)).within(third),
                            0,
                            edge,
                            fromSecond,
                            fromThird)
        };
    }

    private Move move(int look) {
        int before = first + look - 1;
        double a = Math.sqrt(before / (before + 1.0));
        return new Move(
                new Angle(before - 1),
                a,
                Math.sqrt(1 - a * a),
                critical[look] / Math.hypot(critical[look], Math.sqrt(before)));
    }

    /**
     * Midpoints after x = s^3 (10 - 15 s + 6 s^2), which makes roots at the ends of the pieces
     * harmless.
     *
     * @param breaks places where the function is not smooth; those outside are left out
     */
    private static double integral(
            DoubleUnaryOperator f, double from, double to, double... breaks) {
        double[] inside = Arrays.stream(breaks).filter(x -> x > from && x < to).toArray();
        double[] ends = Arrays.copyOf(inside, inside.length + 2);
        ends[inside.length] = from;
        ends[inside.length + 1] = Math.max(from, to);
        Arrays.sort(ends);
        double sum = 0;
        for (int piece = 0; piece + 1 < ends.length; piece++) {
            double width = ends[piece + 1] - ends[piece];
            for (int i = 0; i < NODES; i++) {
                double s = (i + 0.5) / NODES;
                double x = ends[piece] + width * s * s * s * (10 - 15 * s + 6 * s * s);
                sum += width * 30 * s * s * (1 - s) * (1 - s) * f.applyAsDouble(x) / NODES;
            }
        }
        return sum;
    }

    /** An angle in (-pi/2, pi/2) of density proportional to this power of its cosine. */
    private record Angle(double power) {
        double density(double angle) {
            return Math.pow(Math.cos(angle), power) / Math.exp(Beta.logBeta((power + 1) / 2, 0.5));
        }

        double above(double angle) {
            double cos = Math.cos(angle);
            double tail = 0.5 * Beta.regularizedBeta(cos * cos, (power + 1) / 2, 0.5);
            return angle < 0 ? 1 - tail : tail;
        }
    }

    /**
     * From one look to the next.
     *
     * @param limit paths end where the next u is farther from 0
     */
    private record Move(Angle angle, double a, double b, double limit) {

        Step from(double u) {
            return new Step(this, Math.hypot(a * u, b), Math.atan2(a * u, b));
        }

        /** The least u from which a path can end; 0 when from any. */
        double least() {
            return before(limit);
        }

        /** The least u from which this next u is reached; 0 when from any, 1 when from none. */
        double before(double next) {
            return Math.min(1, Math.sqrt(Math.max(0, (next - b) * (next + b))) / a);
        }
    }

    /**
     * One move from a u of at least 0.
     *
     * @param reach the next u is reach times sin(psi + lead)
     */
    private record Step(Move move, double reach, double lead) {

        /** The chance that it ends here. */
        double beyond() {
            if (move.limit >= reach) {
                return 0;
            }
            double edge = Math.asin(move.limit / reach);
            double up = move.angle.above(edge - lead) - move.angle.above(top(edge));
            double down = move.angle.above(Math.min(Math.PI / 2, edge + lead));
            return up + down;
        }

        /** The chance that it goes on and the move after it ends. */
        double within(Move after) {
            DoubleUnaryOperator f =
                    psi ->
                            move.angle.density(psi)
                                    * after.from(Math.abs(reach * Math.sin(psi + lead))).beyond();
            double turn = Math.asin(Math.min(1, after.least() / reach));
            double[] breaks = {turn - lead, -turn - lead, Math.PI - turn - lead};
            if (move.limit >= reach) {
                return integral(f, -Math.PI / 2, Math.PI / 2, breaks);
            }
            double edge = Math.asin(move.limit / reach);
            return integral(f, Math.max(-Math.PI / 2, -edge - lead), edge - lead, breaks)
                    + integral(f, top(edge), Math.PI / 2, breaks);
        }

        /** Where the next u falls below the limit again; at most pi/2. */
        private double top(double edge) {
            return Math.min(Math.PI / 2, Math.PI - edge - lead);
        }
    }
}
