package rigside.report;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.protocol.Step;

/**
 * The axes that all traces of a measure share, so that they can be set side by side.
 *
 * @param unit of the suction shown
 * @param suction in that unit; what goes further is drawn at its end
 * @param seconds from the window's zero; what takes longer is cut off
 */
record PressureScale(Unit unit, Axis suction, Axis seconds) {
    /**
     * The axis ends at so many times the upper end of the target's tolerance: one knock on the
     * gauge would shrink all traces to lines. Ours, no source.
     */
    private static final int REACH = 2;

    /** The same of the middle one of the peaks captured: work and rest differ. Ours, no source. */
    private static final int REACH_OF_PEAKS = 4;

    /** What does not count is cut off after so many times what counts: a trigger left unpressed. */
    private static final int LONGER = 2;

    /** The target with its tolerance, in the unit shown. */
    record Band(double low, double target, double high) {}

    /**
     * Those of all traces of a measure.
     *
     * @param all at least one, each with a trace
     */
    static PressureScale of(Plotting of, PressureTraces traces, List<PressureFollowed> all) {
        Unit unit =
                all.get(0).trials().map(step -> step.target().unit()).orElse(of.measure().unit());
        List<PressureTrace> drawn = all.stream().map(each -> each.trace(traces)).toList();
        double[] read =
                drawn.stream()
                        .flatMapToDouble(each -> DoubleStream.of(each.lowest(), each.highest()))
                        .map(pascals -> in(unit, pascals))
                        .toArray();
        double[] values = values(of, unit, all);
        double reach = reach(all.get(0).trials().isPresent(), values.length > 0 ? values : read);
        double[] numbers =
                Stream.of(new double[] {0}, values, read)
                        .flatMapToDouble(DoubleStream::of)
                        .map(each -> Math.max(-reach, Math.min(reach, each)))
                        .toArray();
        return new PressureScale(
                unit, Axis.holding(numbers, false, 0, 1), seconds(traces, all, drawn));
    }

    /** The upper and lower ends of the target, or the values captured. */
    private static double[] values(Plotting of, Unit unit, List<PressureFollowed> all) {
        List<Step.Trials> steps =
                all.stream().flatMap(each -> each.trials().stream()).distinct().toList();
        return steps.isEmpty()
                ? all.stream()
                        .flatMap(each -> each.value(of).stream())
                        .mapToDouble(v -> v)
                        .toArray()
                : steps.stream()
                        .map(step -> band(unit, step))
                        .flatMapToDouble(band -> DoubleStream.of(band.low(), band.high()))
                        .toArray();
    }

    /**
     * How far the axis goes.
     *
     * @param numbers ends of targets, or what was captured or, where nothing was, read
     */
    private static double reach(boolean isPulls, double[] numbers) {
        double[] sizes = DoubleStream.of(numbers).map(Math::abs).sorted().toArray();
        return isPulls ? REACH * sizes[sizes.length - 1] : REACH_OF_PEAKS * sizes[sizes.length / 2];
    }

    private static Axis seconds(
            PressureTraces traces, List<PressureFollowed> all, List<PressureTrace> drawn) {
        double begin = drawn.stream().mapToDouble(each -> each.window().begin()).min().orElse(0);
        double end = drawn.stream().mapToDouble(each -> each.window().end()).max().orElse(1);
        double counts =
                all.stream()
                        .filter(PressureFollowed::counts)
                        .mapToDouble(each -> each.trace(traces).window().end())
                        .max()
                        .orElse(end);
        return new Axis(false, begin, Math.min(end, LONGER * counts), 0, 1);
    }

    private static double in(Unit unit, double pascals) {
        return new Quantity(pascals, Unit.PASCAL).in(unit).value();
    }

    /** A pressure in the unit shown. */
    double shown(double pascals) {
        return in(unit, pascals);
    }

    Band band(Step.Trials step) {
        return band(unit, step);
    }

    private static Band band(Unit unit, Step.Trials step) {
        double target = step.target().in(unit).value();
        double off = step.tolerance().orElse(0) * target;
        return new Band(target - off, target, target + off);
    }

    /** Whether some reading is beyond the axis. */
    boolean cuts(PressureTrace trace) {
        return !suction.holds(shown(trace.lowest())) || !suction.holds(shown(trace.highest()));
    }

    /** Whether it goes on beyond the end of the axis. */
    boolean outlasts(PressureTrace trace) {
        return trace.all().stream().anyMatch(each -> each.seconds() > seconds.high());
    }
}
