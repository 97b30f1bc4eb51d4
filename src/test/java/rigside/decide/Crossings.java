package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;

/** The recursion read the other way round, and at the limit of a known spread. */
final class Crossings {

    /**
     * Degrees of freedom that stand for a known spread. At this size the t statistic differs from
     * the normal one by less than 1e-7 of a critical value, and all steps keep their precision.
     */
    static final double KNOWN = 1e9;

    private Crossings() {}

    /**
     * The cumulative chance that some interval has missed the truth, at each look, when these
     * critical values are used.
     */
    static double[] of(Schedule schedule, double[] critical) {
        assertEquals(schedule.looks().size(), critical.length);
        double[] crossed = new double[critical.length];
        CriticalValues.walk(
                schedule,
                (look, survival) -> {
                    double tau = critical[look] / Math.sqrt(survival.degreesOfFreedom());
                    crossed[look] = (look == 0 ? 0 : crossed[look - 1]) + 2 * survival.beyond(tau);
                    return tau;
                });
        return crossed;
    }

    /** Looks at these amounts of information with the spread known: only information counts. */
    static Schedule knownSpread(List<Double> information) {
        List<Schedule.Look> looks = new ArrayList<>();
        for (double amount : information) {
            looks.add(
                    new Schedule.Look(
                            new Schedule.Arms(0, looks.size()), amount, KNOWN + looks.size()));
        }
        return new Schedule(Schedule.Design.PAIRED, looks);
    }
}
