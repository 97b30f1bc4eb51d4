package rigside.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * From one look to the next: new values turn the direction of the centred data, and seen from the
 * later look the earlier statistic is the later one mixed with a fresh angle.
 *
 * <p>The direction of the centred data is uniform on a sphere and independent of its length, so the
 * statistics of successive looks form a one-dimensional Markov chain free of parameters. Read
 * backwards it is simplest: with tau = T / sqrt(df),
 *
 * <ul>
 *   <li>one dimension with information, I to I', a = sqrt(I/I'), b = sqrt(1 - a^2): tau = (a tau' +
 *       b sin q) / cos q, q with density proportional to cos^(df-1), df that of the earlier look;
 *   <li>m dimensions without: tau = tau' / cos q, q in (0, pi/2) with density proportional to
 *       cos^(df-1) q sin^(m-1) q.
 * </ul>
 *
 * <p>All values that enter at one look are m = k - 1 dimensions without information, then one with.
 * Derived for this program by rotating the sphere to the later direction. The integrals run over h
 * = tan(q/2), in which sine and cosine are quotients.
 */
final class NextLook {

    /** Integrands below exp(-40) of their peak are left out. */
    private static final double NEGLIGIBLE = 40;

    /** Statistics rarer than about exp(-50) are left out. */
    private static final double NEVER = 50;

    /** Longest piece, in standard deviations of the fresh angle. */
    private static final double PIECE = 4;

    /** Longest panel of an integral, in standard deviations of the fresh angle. */
    private static final double PANEL = 4;

    private NextLook() {}

    /**
     * The chance of not having crossed up to and including the earlier look, given the later one.
     *
     * @param before of the earlier look, stopped beyond its critical value
     * @param earlier the earlier look
     * @param later the look after it
     */
    static Survival after(Survival before, Schedule.Look earlier, Schedule.Look later) {
        int silent = (int) Math.round(later.degreesOfFreedom() - earlier.degreesOfFreedom()) - 1;
        double a = Math.sqrt(earlier.information() / later.information());
        double b = Math.sqrt((later.information() - earlier.information()) / later.information());
        return informed(silent > 0 ? shrunk(before, silent) : before, a, b);
    }

    private static Survival shrunk(Survival before, int m) {
        double df = before.degreesOfFreedom();
        double top = before.limit();
        Shrinking shrinking = Shrinking.by(df, m);
        double step = PIECE / Math.sqrt(2 * (df + m));
        DoubleUnaryOperator reach =
                low ->
                        Math.min(
                                before.reach().applyAsDouble(low),
                                top * Math.cos(Math.max(0, Math.acos(low / top) - step)));
        List<Survival.Joint> joints =
                before.joints().stream()
                        .map(j -> new Survival.Joint(j.tau(), j.age() + 1))
                        .toList();
        return Survival.of(df + m, tau -> shrunkAt(before, tau, shrinking), joints, top, reach);
    }

    private static double shrunkAt(Survival before, double tau, Shrinking shrinking) {
        double sum = 0;
        for (int piece = 0; piece < before.pieces(); piece++) {
            if (before.high(piece) > tau) {
                double from =
                        before.low(piece) <= tau ? 0 : Shrinking.half(tau / before.low(piece));
                double to = Shrinking.half(tau / before.high(piece));
                int at = piece;
                sum +=
                        panels(
                                Math.max(from, shrinking.least()),
                                Math.min(to, shrinking.greatest()),
                                shrinking.df() + shrinking.m(),
                                h ->
                                        shrinking.density(h)
                                                * before.at(
                                                        at,
                                                        Math.max(
                                                                before.low(at),
                                                                Math.min(
                                                                        before.high(at),
                                                                        tau
                                                                                / Shrinking.cosine(
                                                                                        h)))));
            }
        }
        return sum;
    }

    private static Survival informed(Survival before, double a, double b) {
        double df = before.degreesOfFreedom();
        double norm = 2 * StudentT.angleDensity(df);
        List<Survival.Joint> joints = new ArrayList<>();
        joints.add(new Survival.Joint(b / a, 0));
        for (Survival.Joint joint : before.joints()) {
            if (joint.tau() < before.limit()) {
                joints.add(new Survival.Joint(Math.hypot(b, joint.tau()) / a, joint.age() + 1));
            }
        }
        double top = Math.hypot(b, before.limit()) / a;
        double never = Math.sqrt(Math.expm1(2 * NEVER / (df + 1)));
        double step = PIECE * b / a / Math.sqrt(df);
        double growth = Math.min(1.5, 8 / df);
        return Survival.of(
                df + 1,
                tau -> norm * informedAt(before, a * tau, b),
                joints,
                Math.min(top, never),
                low -> low + Math.max(step, growth * low));
    }

    /**
     * The integral over the fresh angle, split where the earlier statistic passes from piece to
     * piece, on both sides of the angle where it is smallest in size.
     */
    private static double informedAt(Survival before, double pulled, double b) {
        double nearest = pulled > b ? Math.sqrt((pulled - b) * (pulled + b)) : 0;
        double turn = Math.tan(-Math.asin(Math.min(pulled, b) / Math.max(pulled, b)) / 2);
        double below = turn;
        double above = turn;
        double sum = 0;
        for (int piece = 0; piece < before.pieces(); piece++) {
            double tau = before.high(piece);
            if (tau <= nearest) {
                continue;
            }
            double wide = Math.atan(tau / b);
            double lean = Math.asin(Math.min(1, pulled / Math.hypot(b, tau)));
            double nextAbove = Math.tan((wide - lean) / 2);
            double nextBelow = Math.tan((pulled > b ? wide + lean - Math.PI : -wide - lean) / 2);
            sum += segment(before, piece, pulled, b, above, nextAbove);
            sum += segment(before, piece, pulled, b, nextBelow, below);
            above = nextAbove;
            below = nextBelow;
        }
        return sum;
    }

    private static double segment(
            Survival before, int piece, double pulled, double b, double from, double to) {
        double df = before.degreesOfFreedom();
        double widest = widest(df);
        double low = before.low(piece);
        double high = before.high(piece);
        return panels(
                Math.max(from, -widest),
                Math.min(to, widest),
                df,
                h -> {
                    double square = h * h;
                    double over = 1 / (1 + square);
                    double rest = (1 - h) * (1 + h);
                    double tau = Math.abs((pulled * (1 + square) + 2 * b * h) / rest);
                    return over
                            * power(rest * over, h, df - 1)
                            * before.at(piece, Math.max(low, Math.min(high, tau)));
                });
    }

    /** The integral over h in panels short against the spread of the fresh angle. */
    private static double panels(double from, double to, double df, DoubleUnaryOperator f) {
        if (!(from < to)) {
            return 0;
        }
        int count = (int) Math.ceil((to - from) * 2 * Math.sqrt(df) / PANEL);
        double width = (to - from) / count;
        double sum = 0;
        for (int i = 0; i < count; i++) {
            double start = from + i * width;
            sum += Quadrature.SMOOTHED.integrate(start, start + width, f);
        }
        return sum;
    }

    /** tan(q/2) of the angle q beyond which cos^(df-1) q is negligible. */
    private static double widest(double df) {
        return df <= 1 ? 1 : Shrinking.half(Math.exp(-NEGLIGIBLE / (df - 1)));
    }

    /**
     * x^exponent, by multiplication for everyday exponents; for huge ones from h = tan(q/2) of the
     * angle whose cosine is x, keeping the small distance of the cosine from 1.
     */
    private static double power(double x, double h, double exponent) {
        if (exponent > 1000) {
            return Math.exp(exponent * Math.log1p(-2 * h * h / (1 + h * h)));
        }
        double result = 1;
        double square = x;
        for (int left = (int) exponent; left > 0; left >>= 1) {
            if ((left & 1) == 1) {
                result *= square;
            }
            square *= square;
        }
        return result;
    }
}
