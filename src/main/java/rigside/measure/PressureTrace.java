package rigside.measure;

import java.util.List;
import java.util.OptionalDouble;

/** What mask pressures of a donning say. */
public final class PressureTrace {
    private PressureTrace() {}

    /**
     * The median of peak pressures, in their unit: the middle one, or the mean of the middle two.
     *
     * @param peaks in any order
     * @return empty if there is none
     * @throws IllegalArgumentException if a pressure is NaN or infinite
     */
    public static OptionalDouble median(List<Double> peaks) {
        double[] sorted =
                peaks.stream()
                        .mapToDouble(p -> Check.finite("peak pressure", p))
                        .sorted()
                        .toArray();
        int half = sorted.length / 2;
        if (sorted.length == 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                sorted.length % 2 == 1
                        ? sorted[half]
                        : sorted[half - 1] + (sorted[half] - sorted[half - 1]) / 2);
    }
}
