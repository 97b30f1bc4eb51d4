package rigside.decide;

import org.apache.commons.math3.special.Beta;

/**
 * How far the statistic shrinks: the angle q of m dimensions without information, by h = tan(q/2),
 * with density proportional to cos^(df-1) q sin^(m-1) q.
 *
 * @param least below it the density is negligible against its peak
 * @param greatest likewise above it; at most 1
 */
record Shrinking(double df, int m, double logNorm, double least, double greatest) {

    /** Densities below exp(-40) of their peak are left out. */
    private static final double NEGLIGIBLE = 40;

    /**
     * By m dimensions more than df + 1.
     *
     * @param m at least 1
     */
    static Shrinking by(double df, int m) {
        double logNorm = Math.log(4) - Beta.logBeta(df / 2, m / 2.0);
        Shrinking whole = new Shrinking(df, m, logNorm, 0, 1);
        double peak = m == 1 ? 0 : half(Math.sqrt((df - 1) / (df + m - 2)));
        return new Shrinking(df, m, logNorm, whole.negligible(peak, 0), whole.negligible(peak, 1));
    }

    /** Of h, not of q, so that it integrates to 1 from 0 to 1. */
    double density(double h) {
        double over = 1 / (1 + h * h);
        return over * Math.exp(logNorm + logs(h));
    }

    private double logs(double h) {
        double turned = df == 1 ? 0 : (df - 1) * Math.log(cosine(h));
        return m == 1 ? turned : turned + (m - 1) * Math.log(2 * h / (1 + h * h));
    }

    /** Between the peak and an end, where the density becomes negligible; else the end. */
    private double negligible(double peak, double end) {
        double inside = peak;
        double outside = end;
        if (logs(end) > logs(peak) - NEGLIGIBLE) {
            return end;
        }
        while (Math.abs(outside - inside) > 1e-3 * Math.abs(end - peak)) {
            double middle = (inside + outside) / 2;
            if (logs(middle) > logs(peak) - NEGLIGIBLE) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return outside;
    }

    /** tan(q/2) of the angle with this cosine. */
    static double half(double cos) {
        return Math.sqrt((1 - cos) / (1 + cos));
    }

    /** The cosine of the angle q with this tan(q/2). */
    static double cosine(double h) {
        return (1 - h) * (1 + h) / (1 + h * h);
    }
}
