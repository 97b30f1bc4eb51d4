package rigside.decide;

import java.io.PrintStream;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Amending after a look, by somebody who wants a claim: after every look that does not claim a
 * meaningful increase, the least favourable pair is given the mean of the others, four times over.
 * The truth is the band's edge; only an increase matters, in pairs. What that gains without a rule,
 * where a verdict has to hold with the value before the last amendment, and by the rule: it has to
 * hold with the values that their first looks had.
 */
final class AmendingStudy {

    static final int HONEST = 0;
    static final int WITHOUT_RULE = 1;
    static final int VALUE_BEFORE = 2;
    static final int FIRST_LOOKED_AT = 3;
    static final int KINDS = 4;

    private static final int TIMES = 4;

    private AmendingStudy() {}

    static long[] counts(StrikingStudy.Plan plan, int place, int campaigns) {
        long seed = StrikingStudy.SEED + 2 + 1000L * place;
        return Blocks.count(seed, campaigns, KINDS, () -> new Player(plan));
    }

    static void print(PrintStream out, int campaigns) {
        out.println("| pairs | alpha | nominal | honest | no rule | value before | rule |");
        out.println("| --- | --- | --- | --- | --- | --- | --- |");
        for (int i = 0; i < StrikingStudy.PLANS.size(); i++) {
            StrikingStudy.Plan plan = StrikingStudy.PLANS.get(i);
            out.printf(
                    Locale.ROOT,
                    "| %d to %d | %s | %s |",
                    plan.fewest(),
                    plan.most(),
                    plan.alpha(),
                    plan.alpha() / 2);
            for (long count : counts(plan, i, campaigns)) {
                out.printf(Locale.ROOT, " %.5f |", CoverageStudy.share(count, campaigns));
            }
            out.println();
        }
        out.println();
    }

    private static final class Player implements Blocks.Player {
        private final StrikingStudy.Plan plan;
        private final double[] critical;

        Player(StrikingStudy.Plan plan) {
            this.plan = plan;
            this.critical =
                    CriticalValues.of(Schedule.paired(plan.fewest(), plan.most()), plan.alpha(), 2);
        }

        /** Distances from the edge, in units of their standard deviation. */
        @Override
        public void play(SplittableRandom random, long[] counts) {
            double[] first = new double[plan.most()];
            for (int i = 0; i < first.length; i++) {
                first[i] = random.nextGaussian();
            }
            double[] now = first.clone();
            double[] before = first.clone();
            boolean[] claimed = new boolean[KINDS];
            for (int n = plan.fewest(); n <= plan.most(); n++) {
                for (int times = 0; times <= TIMES; times++) {
                    boolean claims = claims(now, n);
                    claimed[WITHOUT_RULE] |= claims;
                    claimed[VALUE_BEFORE] |= claims && claims(before, n);
                    claimed[FIRST_LOOKED_AT] |= claims && claims(first, n);
                    if (times < TIMES) {
                        int least = least(now, n);
                        before[least] = now[least];
                        now[least] = meanOfOthers(now, n, least);
                    }
                }
            }
            claimed[HONEST] = claims(first, plan.most());
            for (int kind = 0; kind < KINDS; kind++) {
                counts[kind] += claimed[kind] ? 1 : 0;
            }
        }

        /** Whether the first look that settles, of those up to n pairs, claims an increase. */
        private boolean claims(double[] values, int pairs) {
            for (int n = plan.fewest(); n <= pairs; n++) {
                double t = t(values, n);
                if (Math.abs(t) > critical[n - plan.fewest()]) {
                    return t > 0;
                }
            }
            return false;
        }

        private static int least(double[] values, int n) {
            int least = 0;
            for (int i = 1; i < n; i++) {
                least = values[i] < values[least] ? i : least;
            }
            return least;
        }

        private static double meanOfOthers(double[] values, int n, int out) {
            double sum = -values[out];
            for (int i = 0; i < n; i++) {
                sum += values[i];
            }
            return sum / (n - 1);
        }

        private static double t(double[] values, int n) {
            double sum = 0;
            double squares = 0;
            for (int i = 0; i < n; i++) {
                sum += values[i];
                squares += values[i] * values[i];
            }
            double mean = sum / n;
            return mean / Math.sqrt((squares - sum * mean) / (n - 1) / n);
        }
    }
}
