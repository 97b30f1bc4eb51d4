package rigside.runner;

import rigside.protocol.Measure;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;
import rigside.protocol.Step;
import rigside.rig.Wearer.Level;
import rigside.rig.Wearer.Scatter;

/**
 * How the spread of a donning's value comes about from what differs between donnings and from its
 * single readings, and the other way round.
 *
 * @param readings how many readings a donning's value is made of; at least 1
 * @param share the variance of the value that one reading's variance brings, as a share of that
 * @param harmonic whether the readings are averaged as they are while they vary by factors
 * @param eachCounts whether each reading is a value of its own
 */
record Spreading(int readings, double share, boolean harmonic, boolean eachCounts) {
    /** Of the variance of a donning's value at most this much comes from its readings. */
    private static final double MOST_WITHIN = 0.5;

    /** How the values of a measure come about in donnings of a condition. */
    static Spreading of(Protocol protocol, Measure measure, String condition) {
        int readings =
                Math.max(
                        1,
                        protocol.donning().stream()
                                .filter(step -> step.appliesTo(condition))
                                .mapToInt(step -> readings(step, measure))
                                .sum());
        boolean median = measure.kind() instanceof Measure.PressureTrace;
        boolean inhalation = measure.kind() instanceof Measure.TimedInhalation;
        return new Spreading(
                readings,
                median ? ofMedian(readings) : 1.0 / readings,
                measure.kind() instanceof Measure.FitFactor,
                inhalation && protocol.plan().design() == Plan.Design.INDEPENDENT_TRIALS);
    }

    private static int readings(Step step, Measure measure) {
        if (step instanceof Step.Trials trials) {
            return trials.measure().equals(measure.id()) ? trials.count() : 0;
        }
        if (!(step instanceof Step.Exercises exercises)) {
            return 0;
        }
        if (exercises.fitFactor().filter(measure.id()::equals).isPresent()) {
            return (int)
                    exercises.exercises().stream()
                            .filter(each -> each.counted() && each.mask().isPresent())
                            .count();
        }
        return exercises.pressureTrace().filter(measure.id()::equals).isPresent()
                ? (int)
                        exercises.exercises().stream()
                                .filter(each -> each.pressure().isPresent())
                                .count()
                : 0;
    }

    /**
     * The variance of the median of n normal values as a share of the variance of one: exact for 1
     * and 2, and pi / (2 (n - 1) + pi) otherwise, off by some percent (0.440 for 3, where it is
     * 0.449).
     */
    private static double ofMedian(int n) {
        return n == 2 ? 0.5 : Math.PI / (2 * (n - 1) + Math.PI);
    }

    /**
     * A level whose values spread as asked.
     *
     * @param like the spread within a donning that is kept as far as it leaves room
     * @param spread standard deviation of a donning's value (of one trial where each counts)
     */
    Level level(Level like, double median, double spread, Scatter scatter) {
        if (eachCounts) {
            return new Level(median, 0, spread, scatter, like.dimension());
        }
        double usual = like.scatter() == scatter ? like.within() : scaled(like, scatter);
        double within = Math.min(usual, spread * Math.sqrt(MOST_WITHIN / share));
        double rest = Math.max(0, spread * spread - fromReadings(within));
        return new Level(median, Math.sqrt(rest), within, scatter, like.dimension());
    }

    private static double scaled(Level like, Scatter scatter) {
        double median = Math.abs(like.median());
        return scatter == Scatter.BY_AMOUNTS ? like.within() * median : like.within() / median;
    }

    /** The standard deviation of a donning's value (of one trial where each counts). */
    double spread(Level level) {
        return eachCounts
                ? Math.hypot(level.between(), level.within())
                : Math.sqrt(level.between() * level.between() + fromReadings(level.within()));
    }

    /** Of a mean of log-normal readings the log varies by (exp(s^2) - 1) / n, to first order. */
    private double fromReadings(double within) {
        double variance = within * within;
        return share * (harmonic ? Math.expm1(variance) : variance);
    }
}
