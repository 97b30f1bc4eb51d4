package rigside.decide;

import java.util.Arrays;

/**
 * What a comparison needs of its values.
 *
 * @param estimate the difference; NaN when an arm is empty
 * @param spread standard deviation of one value (pooled) or of one difference; NaN without a degree
 *     of freedom
 * @param information such that the standard error is spread / sqrt(information)
 * @param degreesOfFreedom of the spread
 * @param largest the largest size among the values
 */
record Sample(
        double estimate,
        double spread,
        double information,
        double degreesOfFreedom,
        double largest) {

    /** Paired differences. */
    static Sample of(double[] differences) {
        int n = differences.length;
        return new Sample(
                mean(differences),
                Math.sqrt(squares(differences) / (n - 1)),
                n,
                n - 1.0,
                largest(differences));
    }

    /** Two arms, spread pooled. */
    static Sample of(double[] reference, double[] other) {
        double df = reference.length + other.length - 2.0;
        return new Sample(
                mean(other) - mean(reference),
                Math.sqrt((squares(reference) + squares(other)) / df),
                (double) reference.length * other.length / (df + 2),
                df,
                Math.max(largest(reference), largest(other)));
    }

    /** Two passes: the second takes away what rounding left of the first. */
    static double mean(double[] values) {
        double first = Arrays.stream(values).sum() / values.length;
        double rest = 0;
        for (double value : values) {
            rest += value - first;
        }
        return first + rest / values.length;
    }

    /** Sum of squared deviations from the mean, corrected for what rounding left of the mean. */
    static double squares(double[] values) {
        double mean = mean(values);
        double sum = 0;
        double rest = 0;
        for (double value : values) {
            double deviation = value - mean;
            sum += deviation * deviation;
            rest += deviation;
        }
        return Math.max(0, sum - rest * rest / values.length);
    }

    private static double largest(double[] values) {
        return Arrays.stream(values).map(Math::abs).max().orElse(0);
    }
}
