package rigside.analysis;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import rigside.decide.Band;
import rigside.decide.Matters;
import rigside.decide.Outlook;
import rigside.decide.Planning;
import rigside.decide.Rules;
import rigside.decide.Schedule;
import rigside.protocol.Plan;

/**
 * What a later comparison of two conditions can settle, given how far values spread.
 *
 * @param most its most rounds; looked at from {@link #FEWEST} on, with 95 % confidence
 * @param meaningful the smallest meaningful difference that such a plan settles in {@link #SETTLES}
 *     of cases, both when nothing differs and when twice as much does: a ratio for ratios, in the
 *     measure's unit otherwise
 * @param cautious the same should the spread be as large as its upper limit
 */
public record LaterPlan(int most, double meaningful, double cautious) {

    /** The rounds before the first look. */
    public static final int FEWEST = 3;

    /** The share of cases in which it settles. */
    public static final double SETTLES = 0.8;

    private static final double ALPHA = 0.05;

    /** Of its interval. */
    static final double CONFIDENCE = 1 - ALPHA;

    /** Plans that people have the time for, and one they hardly have: own judgement. */
    private static final List<Integer> MOST = List.of(6, 10, 20);

    /** Shares are good to 0.006 (one sigma): half a per cent of the difference found. */
    private static final int CAMPAIGNS = 4_000;

    /** Halvings of 0 to {@link #FAR} spreads: to the third digit. */
    private static final int HALVINGS = 12;

    /** In spreads of one value, more than the shortest plan needs. */
    private static final double FAR = 16;

    /** The found ones, which are numbers of nothing but the most rounds. */
    private static final Map<Integer, Double> FOUND = new ConcurrentHashMap<>();

    /**
     * One for each of a few plans, the shortest first.
     *
     * @param ratio whether values are compared as ratios
     * @param spread of one value on the scale of the analysis, above 0
     * @param upper its upper limit
     */
    public static List<LaterPlan> all(boolean ratio, double spread, double upper) {
        return all(ratio ? Scale.RATIO : Scale.DIFFERENCE, spread, upper);
    }

    static List<LaterPlan> all(Scale scale, double spread, double upper) {
        return MOST.stream()
                .map(
                        most ->
                                new LaterPlan(
                                        most,
                                        scale.outward(settled(most) * spread),
                                        scale.outward(settled(most) * upper)))
                .toList();
    }

    /**
     * In spreads of one value. What a plan settles hangs on the band and the spread by their ratio
     * alone, so one number serves every measure.
     */
    static double settled(int most) {
        return FOUND.computeIfAbsent(most, LaterPlan::search);
    }

    private static double search(int most) {
        double low = 0;
        double high = FAR;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (chance(most, middle) < SETTLES) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** How often it settles, at worst of no difference and twice the meaningful one. */
    static double chance(int most, double meaningful) {
        Rules rules =
                new Rules(
                        Schedule.paired(FEWEST, most),
                        ALPHA,
                        Plan.DEFAULT_EXPONENT,
                        new Band(-meaningful, meaningful),
                        Matters.EITHER,
                        0);
        return Math.min(settles(rules, 0), settles(rules, 2 * meaningful));
    }

    private static double settles(Rules rules, double truth) {
        Outlook outlook =
                Planning.outlook(rules, truth, 1, CAMPAIGNS, new SplittableRandom(most(rules)));
        return 1 - outlook.unsettled();
    }

    /** Any seed would do; the same plan gives the same number. */
    private static long most(Rules rules) {
        return rules.schedule().last().arms().other();
    }
}
