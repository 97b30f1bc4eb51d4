package rigside.decide;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Critical values of the repeated confidence interval: estimate &plusmn; c standard errors holds at
 * all looks together with the promised confidence, however small the degrees of freedom.
 *
 * <p>Repeated confidence intervals: Jennison and Turnbull 1989; spending of the error: Lan and
 * DeMets 1983, with the power family of Kim and DeMets 1987. The distribution of the sequence of t
 * statistics is exact, see {@link NextLook}.
 */
public final class CriticalValues {

    private static final int KEPT = 200;

    private static final Map<Plan, double[]> CACHE =
            new LinkedHashMap<>(64, 0.75f, true) {
                private static final long serialVersionUID = 1L;

                @Override
                protected boolean removeEldestEntry(Map.Entry<Plan, double[]> eldest) {
                    return size() > KEPT;
                }
            };

    private record Plan(Schedule schedule, double alpha, double exponent) {}

    private CriticalValues() {}

    /**
     * Two-sided critical values, one a look. Of alpha (planned information / last
     * planned)^exponent, each look spends what the looks before it have not; the first spends all
     * accrued to it.
     *
     * @param alpha the two-sided error over all looks, in (0, 1)
     * @param exponent of the spending function, above 0
     * @return a fresh array as long as the schedule
     * @throws IllegalArgumentException if alpha or exponent is outside its range
     */
    public static double[] of(Schedule schedule, double alpha, double exponent) {
        Plan plan = new Plan(schedule, alpha, exponent);
        double[] known;
        synchronized (CACHE) {
            known = CACHE.get(plan);
        }
        if (known == null) {
            known = spending(schedule, spent(schedule, alpha, exponent));
            synchronized (CACHE) {
                CACHE.put(plan, known);
            }
        }
        return known.clone();
    }

    /**
     * Cumulative error spent at each look by the power family.
     *
     * @throws IllegalArgumentException unless 0 &lt; alpha &lt; 1 and exponent &gt; 0 and finite
     */
    public static double[] spent(Schedule schedule, double alpha, double exponent) {
        if (!(alpha > 0 && alpha < 1)) {
            throw new IllegalArgumentException("alpha " + alpha + " must be in (0, 1)");
        }
        if (!(exponent > 0 && exponent < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("exponent " + exponent + " must be above 0");
        }
        double all = schedule.last().planned();
        return schedule.looks().stream()
                .mapToDouble(look -> alpha * Math.pow(look.planned() / all, exponent))
                .toArray();
    }

    /**
     * Two-sided critical values for any cumulative spending.
     *
     * @param spent cumulative error at each look: strictly rising, in (0, 1)
     * @throws IllegalArgumentException if {@code spent} has another length than the schedule or
     *     does not rise strictly within (0, 1)
     */
    public static double[] spending(Schedule schedule, double[] spent) {
        requireLength(schedule, spent);
        double before = 0;
        for (double now : spent) {
            if (!(now > before && now < 1)) {
                throw new IllegalArgumentException(
                        "cumulative error "
                                + now
                                + " after "
                                + before
                                + " must rise within (0, 1)");
            }
            before = now;
        }
        double[] critical = new double[spent.length];
        walk(
                schedule,
                (look, survival) -> {
                    double share = look == 0 ? spent[0] : spent[look] - spent[look - 1];
                    double tau = survival.criticalFor(share / 2);
                    critical[look] = tau * Math.sqrt(survival.degreesOfFreedom());
                    return tau;
                });
        return critical;
    }

    /**
     * The two-sided p that each look would have by itself at its critical value.
     *
     * @param critical above 0, one a look
     * @throws IllegalArgumentException if lengths differ
     */
    public static double[] nominal(Schedule schedule, double[] critical) {
        requireLength(schedule, critical);
        double[] nominal = new double[critical.length];
        for (int i = 0; i < nominal.length; i++) {
            double df = schedule.looks().get(i).degreesOfFreedom();
            nominal[i] = 2 * StudentT.upperTail(critical[i], df);
        }
        return nominal;
    }

    /** What is done at a look; gives the tau beyond which paths end. */
    interface Stop {
        double at(int look, Survival survival);
    }

    /** Goes from look to look. */
    static void walk(Schedule schedule, Stop stop) {
        List<Schedule.Look> looks = schedule.looks();
        Survival survival = Survival.untouched(looks.get(0).degreesOfFreedom());
        for (int i = 0; i < looks.size(); i++) {
            double tau = stop.at(i, survival);
            if (i + 1 < looks.size()) {
                survival =
                        NextLook.after(survival.stoppedBeyond(tau), looks.get(i), looks.get(i + 1));
            }
        }
    }

    private static void requireLength(Schedule schedule, double[] values) {
        if (values.length != schedule.looks().size()) {
            throw new IllegalArgumentException(
                    values.length + " values for " + schedule.looks().size() + " looks");
        }
    }
}
