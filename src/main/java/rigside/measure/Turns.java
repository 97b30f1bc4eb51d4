package rigside.measure;

import java.util.ArrayList;
import java.util.List;

/**
 * The turning moments of one breath, in seconds.
 *
 * @param inhalation when its inhalation begins
 * @param exhalation when its exhalation begins
 * @param end when the next inhalation begins
 */
record Turns(double inhalation, double exhalation, double end) {
    /** Between these quantiles a sine swings 1.902 times its amplitude: 2 sin(0.4 pi). */
    private static final double QUANTILE = 0.1;

    private static final double SINE_SWING = 2 * Math.sin(0.4 * Math.PI);

    /** The turning moments of the whole breaths of a trace without gaps. */
    static List<Turns> of(TimedTrace trace) {
        double amplitude = amplitude(trace);
        if (!(amplitude >= FreeBreathing.SHALLOWEST_PA)) {
            return List.of();
        }
        Walk walk = new Walk(trace, FreeBreathing.HYSTERESIS * amplitude);
        for (int i = 1; i < trace.readings().size(); i++) {
            walk.read(i);
        }
        return walk.found.stream()
                .filter(t -> t.end() - t.inhalation() >= FreeBreathing.SHORTEST_SECONDS)
                .toList();
    }

    /**
     * The usual amplitude, whatever the zero: outliers and the odd deep breath change it little.
     */
    private static double amplitude(TimedTrace trace) {
        double[] sorted =
                trace.readings().stream()
                        .mapToDouble(TimedTrace.Reading::pascals)
                        .sorted()
                        .toArray();
        return sorted.length == 0
                ? 0
                : (quantile(sorted, 1 - QUANTILE) - quantile(sorted, QUANTILE)) / SINE_SWING;
    }

    private static double quantile(double[] sorted, double share) {
        return sorted[(int) Math.round(share * (sorted.length - 1))];
    }

    /** Where breathing stands while the trace is gone through. */
    private enum Phase {
        UNKNOWN,
        IN,
        OUT
    }

    private static final class Walk {
        private final List<TimedTrace.Reading> readings;
        private final double threshold;
        private final List<Turns> found = new ArrayList<>();
        private Phase phase = Phase.UNKNOWN;
        private double crossing = Double.NaN;
        private double inhalation = Double.NaN;
        private double exhalation = Double.NaN;

        Walk(TimedTrace trace, double threshold) {
            this.readings = trace.readings();
            this.threshold = threshold;
        }

        void read(int i) {
            double before = readings.get(i - 1).pascals();
            double now = readings.get(i).pascals();
            if ((before < 0) != (now < 0)) {
                double from = readings.get(i - 1).seconds();
                crossing = from + (readings.get(i).seconds() - from) * before / (before - now);
            }
            if (now < -threshold && phase != Phase.IN) {
                inhales();
            } else if (now > threshold && phase != Phase.OUT) {
                exhalation = crossing;
                phase = Phase.OUT;
            }
        }

        /** A beginning that was not seen is NaN, and no breath comes of it. */
        private void inhales() {
            boolean seen = phase == Phase.OUT;
            if (seen && inhalation < exhalation && exhalation < crossing) {
                found.add(new Turns(inhalation, exhalation, crossing));
            }
            inhalation = seen ? crossing : Double.NaN;
            phase = Phase.IN;
        }
    }
}
