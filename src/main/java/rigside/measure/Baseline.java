package rigside.measure;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/** The pressure that whole breaths average to: the gauge's own offset and drift. */
final class Baseline {
    /** The first pass finds breaths about a rough zero; after the third, nothing changes. */
    private static final int PASSES = 3;

    private Baseline() {}

    /**
     * A trace without gaps with its baseline taken off: the mean over each whole breath, put at its
     * middle, straight in between and beyond the first and the last. With no whole breath the
     * baseline is the straight line through all readings.
     *
     * <p>The mean of a periodic pressure over one period does not depend on where the period
     * begins: breaths found about a rough zero give the right one.
     */
    static TimedTrace removed(TimedTrace run) {
        if (!(run.seconds() > 0)) {
            return run;
        }
        TimedTrace zeroed = less(run, straight(run));
        for (int pass = 0; pass < PASSES; pass++) {
            List<TimedTrace.Reading> means = means(run, zeroed);
            if (means.isEmpty()) {
                return zeroed;
            }
            zeroed = less(run, means);
        }
        return zeroed;
    }

    private static List<TimedTrace.Reading> straight(TimedTrace run) {
        SimpleRegression line = new SimpleRegression();
        run.readings().forEach(r -> line.addData(r.seconds(), r.pascals()));
        double from = run.readings().get(0).seconds();
        double to = run.last().seconds();
        return List.of(
                new TimedTrace.Reading(from, line.predict(from)),
                new TimedTrace.Reading(to, line.predict(to)));
    }

    private static List<TimedTrace.Reading> means(TimedTrace run, TimedTrace zeroed) {
        List<TimedTrace.Reading> means = new ArrayList<>();
        for (Turns turns : Turns.of(zeroed)) {
            TimedTrace breath = run.between(turns.inhalation(), turns.end());
            means.add(
                    new TimedTrace.Reading(
                            (turns.inhalation() + turns.end()) / 2,
                            breath.integral() / breath.seconds()));
        }
        return means;
    }

    private static TimedTrace less(TimedTrace run, List<TimedTrace.Reading> baseline) {
        List<TimedTrace.Reading> rest = new ArrayList<>();
        int next = 1;
        for (TimedTrace.Reading reading : run.readings()) {
            while (next < baseline.size() - 1 && baseline.get(next).seconds() < reading.seconds()) {
                next++;
            }
            double zero = at(baseline, next, reading.seconds());
            rest.add(new TimedTrace.Reading(reading.seconds(), reading.pascals() - zero));
        }
        return new TimedTrace(rest, run.gapSeconds());
    }

    private static double at(List<TimedTrace.Reading> baseline, int next, double seconds) {
        TimedTrace.Reading a = baseline.get(0);
        if (baseline.size() == 1) {
            return a.pascals();
        }
        a = baseline.get(next - 1);
        TimedTrace.Reading b = baseline.get(next);
        double share = (seconds - a.seconds()) / (b.seconds() - a.seconds());
        return a.pascals() + share * (b.pascals() - a.pascals());
    }
}
