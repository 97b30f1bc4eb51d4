package rigside.analysis;

import java.util.List;
import java.util.stream.DoubleStream;
import rigside.decide.Schedule;

/**
 * Values of two conditions as people read them, in order of rounds. In the paired design both are
 * of one length, round by round.
 *
 * @param reference values of the reference
 * @param other values of the condition compared with it
 * @param resolution the step they are read to, on the analysis scale; 0 when nothing is known of
 *     one
 * @param rounds how many of them there were after each complete round; empty where every value, or
 *     pair, is a look of its own
 */
record Rows(
        List<Double> reference, List<Double> other, double resolution, List<Schedule.Arms> rounds) {

    Rows {
        reference = List.copyOf(reference);
        other = List.copyOf(other);
        rounds = List.copyOf(rounds);
    }

    /** On the scale of the analysis. */
    double[] reference(Scale scale) {
        return inward(reference, scale);
    }

    /** On the scale of the analysis. */
    double[] other(Scale scale) {
        return inward(other, scale);
    }

    /** Condition less reference on the scale of the analysis, one a round. */
    double[] differences(Scale scale) {
        double[] differences = other(scale);
        for (int round = 0; round < differences.length; round++) {
            differences[round] -= scale.inward(reference.get(round));
        }
        return differences;
    }

    /**
     * The step that leaves as much rounding as values with these steps do together: their root mean
     * square.
     */
    static double resolution(DoubleStream steps) {
        return Math.sqrt(steps.map(step -> step * step).average().orElse(0));
    }

    private static double[] inward(List<Double> values, Scale scale) {
        return values.stream().mapToDouble(scale::inward).toArray();
    }
}
