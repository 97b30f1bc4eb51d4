package rigside.decide;

import java.util.Arrays;
import java.util.List;

/** Whether values drift along their order: fatigue over trials, a drifting room over rounds. */
public final class Trend {
    private Trend() {}

    /**
     * The slope common to several groups, each about its own mean: the least-squares line through
     * values and places centred within their group, with values - groups - 1 degrees of freedom
     * (analysis of covariance with one slope, any textbook; values of R's lm with the group as a
     * factor).
     *
     * @param places where each value stands, group by group
     * @param values finite, group by group; empty groups are passed over
     * @param leastSpread the standard deviation that rounding alone gives a value; the residual one
     *     is taken as no smaller
     * @throws IllegalArgumentException unless a degree of freedom is left and some group has values
     *     in two places
     */
    public static TTest within(List<double[]> places, List<double[]> values, double leastSpread) {
        int freedom = -1;
        double across = 0;
        double along = 0;
        for (int group = 0; group < values.size(); group++) {
            double[] x = centred(places.get(group));
            double[] y = centred(values.get(group));
            freedom += Math.max(0, y.length - 1);
            for (int i = 0; i < y.length; i++) {
                across += x[i] * y[i];
                along += x[i] * x[i];
            }
        }
        if (freedom < 1 || !(along > 0)) {
            throw new IllegalArgumentException(
                    "a trend needs three values, " + freedom + " degrees of freedom are left");
        }
        double slope = across / along;
        double squares = 0;
        for (int group = 0; group < values.size(); group++) {
            double[] x = centred(places.get(group));
            double[] y = centred(values.get(group));
            for (int i = 0; i < y.length; i++) {
                double residual = y[i] - slope * x[i];
                squares += residual * residual;
            }
        }
        double spread = Math.max(Math.sqrt(squares / freedom), leastSpread);
        return new TTest(slope, spread / Math.sqrt(along), freedom);
    }

    private static double[] centred(double[] values) {
        double mean = Sample.mean(values);
        return Arrays.stream(values).map(value -> value - mean).toArray();
    }
}
