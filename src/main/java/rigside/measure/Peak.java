package rigside.measure;

import java.util.List;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;

/**
 * The peak of half a breath: the top of the parabola through the readings above {@link #TOP} of the
 * highest one, never above that one.
 *
 * <p>The highest reading alone is too high by what noise adds, the more so the more readings there
 * are. Over the top of a sine the parabola is 0.14 % low (its quartic term).
 */
final class Peak {
    /** Of the highest reading; half the time of a half sine lies above it. */
    private static final double TOP = 0.7;

    /** With fewer the highest reading is taken as it is. */
    private static final int FEWEST = 5;

    private Peak() {}

    /**
     * The peak in Pa, above 0.
     *
     * @param part half a breath
     * @param sign 1 where the pressure is positive, -1 where it is negative
     */
    static double of(TimedTrace part, int sign) {
        double highest =
                part.readings().stream().mapToDouble(r -> sign * r.pascals()).max().orElse(0);
        List<TimedTrace.Reading> top =
                part.readings().stream().filter(r -> sign * r.pascals() >= TOP * highest).toList();
        if (top.size() < FEWEST) {
            return highest;
        }
        double middle = (top.get(0).seconds() + top.get(top.size() - 1).seconds()) / 2;
        double half = top.get(top.size() - 1).seconds() - middle;
        double[][] powers = new double[top.size()][];
        double[] pressures = new double[top.size()];
        for (int i = 0; i < top.size(); i++) {
            double x = (top.get(i).seconds() - middle) / half;
            powers[i] = new double[] {x, x * x};
            pressures[i] = sign * top.get(i).pascals();
        }
        return top(powers, pressures, highest);
    }

    private static double top(double[][] powers, double[] pressures, double highest) {
        OLSMultipleLinearRegression parabola = new OLSMultipleLinearRegression();
        parabola.newSampleData(pressures, powers);
        try {
            double[] c = parabola.estimateRegressionParameters();
            double at = -c[1] / (2 * c[2]);
            boolean arched = c[2] < 0 && Math.abs(at) <= 1;
            return arched ? Math.min(highest, c[0] + c[1] * at / 2) : highest;
        } catch (SingularMatrixException fewMoments) {
            return highest;
        }
    }
}
