package rigside.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The breaths of a pressure trace of free breathing.
 *
 * <p>An inhalation begins at the last zero crossing before the suction passes a threshold, an
 * exhalation at the last one before the pressure passes it on the other side (zero crossings with
 * hysteresis): noise about zero, and a rest between breaths, make no breaths. The threshold is
 * {@link #HYSTERESIS} of the usual amplitude. Only whole breaths count: one that had begun when the
 * trace did, was not followed by another, or has a gap in it is left out.
 *
 * @param breaths in time order
 * @param broken the number of gaps, each of which may have cost a breath
 */
public record FreeBreathing(List<Breath> breaths, int broken) {
    /** Share of the usual amplitude; ours, no source. Breaths shallower than it are not seen. */
    static final double HYSTERESIS = 0.2;

    /** A smaller usual amplitude is a gauge in still air, not breathing; ours, no source. */
    static final double SHALLOWEST_PA = 2;

    /** Nobody breathes 75 times a minute: what is shorter is noise; ours, no source. */
    static final double SHORTEST_SECONDS = 0.8;

    public FreeBreathing {
        breaths = List.copyOf(breaths);
    }

    /** What counts as pressure 0. */
    public enum Zero {
        /** The gauge's own zero: right where the gauge was zeroed and keeps it. */
        GAUGE,
        /**
         * The mean over whole breaths, followed through the trace: takes out an offset and a slow
         * drift of the gauge. Right only where breathing in meets the same resistance as breathing
         * out: with an exhalation valve the mean is not 0, and this would shift the peaks.
         */
        BREATHS
    }

    /** The breaths of a trace. */
    public static FreeBreathing of(TimedTrace trace, Zero zero) {
        List<TimedTrace> runs = trace.runs();
        List<Breath> breaths = new ArrayList<>();
        for (TimedTrace run : runs) {
            TimedTrace zeroed = zero == Zero.GAUGE ? run : Baseline.removed(run);
            Turns.of(zeroed).forEach(turns -> breaths.add(breath(zeroed, turns)));
        }
        return new FreeBreathing(breaths, Math.max(0, runs.size() - 1));
    }

    private static Breath breath(TimedTrace trace, Turns turns) {
        TimedTrace in = trace.between(turns.inhalation(), turns.exhalation());
        TimedTrace out = trace.between(turns.exhalation(), turns.end());
        return new Breath(
                turns.inhalation(),
                turns.end() - turns.inhalation(),
                turns.exhalation() - turns.inhalation(),
                Peak.of(in, -1),
                Peak.of(out, 1),
                -in.integral(),
                out.integral());
    }

    /**
     * The medians over the breaths, each figure by itself; the start is 0.
     *
     * @return empty if there is no breath
     */
    public Optional<Breath> medians() {
        return breaths.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Breath(
                                0,
                                median(Breath::seconds),
                                median(Breath::inhalationSeconds),
                                median(Breath::peakInhalationPa),
                                median(Breath::peakExhalationPa),
                                median(Breath::inhalationIntegral),
                                median(Breath::exhalationIntegral)));
    }

    private double median(ToDoubleFunction<Breath> figure) {
        return PressureTrace.median(breaths.stream().map(figure::applyAsDouble).toList())
                .orElseThrow();
    }
}
