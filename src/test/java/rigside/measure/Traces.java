package rigside.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/** Traces sampled from a known pressure. */
final class Traces {
    private Traces() {}

    /** Sampled evenly, without noise. */
    static TimedTrace even(double from, double to, double perSecond, DoubleUnaryOperator pascals) {
        List<TimedTrace.Reading> readings = new ArrayList<>();
        int count = (int) Math.floor((to - from) * perSecond + 1e-9);
        for (int i = 0; i <= count; i++) {
            double at = from + i / perSecond;
            readings.add(new TimedTrace.Reading(at, pascals.applyAsDouble(at)));
        }
        return TimedTrace.of(readings, perSecond);
    }

    /** Intervals from half to one and a half times the usual one, and normal noise. */
    static TimedTrace uneven(
            double from,
            double to,
            double perSecond,
            double noisePa,
            long seed,
            DoubleUnaryOperator pascals) {
        Random random = new Random(seed);
        List<TimedTrace.Reading> readings = new ArrayList<>();
        for (double at = from; at <= to; at += (0.5 + random.nextDouble()) / perSecond) {
            double read = pascals.applyAsDouble(at) + noisePa * random.nextGaussian();
            readings.add(new TimedTrace.Reading(at, read));
        }
        return TimedTrace.of(readings, perSecond);
    }

    /** Without the readings strictly between two moments. */
    static TimedTrace without(TimedTrace trace, double from, double to) {
        return new TimedTrace(
                trace.readings().stream()
                        .filter(r -> r.seconds() <= from || r.seconds() >= to)
                        .toList(),
                trace.gapSeconds());
    }
}
