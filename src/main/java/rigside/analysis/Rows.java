package rigside.analysis;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Values of two conditions as people read them, in order of rounds. In the paired design both are
 * of one length, round by round.
 *
 * @param reference values of the reference
 * @param other values of the condition compared with it
 */
record Rows(List<Double> reference, List<Double> other) {

    Rows {
        reference = List.copyOf(reference);
        other = List.copyOf(other);
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

    /** The geometric mean of all values; what a relative step is relative to. */
    double typical() {
        return Math.exp(
                DoubleStream.concat(
                                DoubleStream.of(reference(Scale.RATIO)),
                                DoubleStream.of(other(Scale.RATIO)))
                        .average()
                        .orElse(0));
    }

    boolean isEmpty() {
        return reference.isEmpty() && other.isEmpty();
    }

    private static double[] inward(List<Double> values, Scale scale) {
        return values.stream().mapToDouble(scale::inward).toArray();
    }
}
