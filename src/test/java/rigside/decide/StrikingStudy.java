package rigside.decide;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Striking out after a look, in pairs of which only an increase matters. What looking again without
 * the least favourable pair costs when the truth is the band's edge, what the rule (a verdict
 * stands only if it is the same with the struck entry and without) keeps of the promise, and what
 * it costs when an entry deserved to be struck.
 *
 * <p>Struck pairs are done again under their round's number.
 */
final class StrikingStudy {

    static final long SEED = 20_261_126L;

    static final int HONEST = 0;
    static final int ONCE_WITHOUT_RULE = 1;
    static final int ONCE_WITH_RULE = 2;
    static final int ALWAYS_WITHOUT_RULE = 3;
    static final int ALWAYS_WITH_RULE = 4;
    static final int SETTLES = 5;
    static final int SLIP_LEFT_IN = 6;
    static final int SLIP_STRUCK_WITH_RULE = 7;
    static final int SOUND_STRUCK_WITH_RULE = 8;
    static final int KINDS = 9;

    /** How far a slip lies below its true value, in standard deviations of a difference. */
    private static final double SLIP = 3;

    /**
     * @param beyond by how much the truth is beyond the edge where settling is counted, in standard
     *     deviations of a difference
     */
    record Plan(int fewest, int most, double alpha, double beyond) {}

    static final List<Plan> PLANS =
            List.of(
                    new Plan(3, 10, 0.05, 1.1),
                    new Plan(2, 6, 0.05, 1.6),
                    new Plan(4, 12, 0.05, 1.0),
                    new Plan(3, 8, 0.1, 1.1));

    private StrikingStudy() {}

    static long[] counts(Plan plan, int place, int campaigns) {
        return Blocks.count(SEED + 1000L * place, campaigns, KINDS, () -> new Player(plan));
    }

    static void print(PrintStream out, int campaigns) {
        out.println(
                "| pairs | alpha | nominal | honest | once, no rule | once, rule | always, no rule |"
                        + " always, rule | settles | slip left in | slip struck, rule |"
                        + " sound struck, rule |");
        out.println("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        for (int i = 0; i < PLANS.size(); i++) {
            Plan plan = PLANS.get(i);
            long[] counts = counts(plan, i, campaigns);
            out.printf(
                    Locale.ROOT,
                    "| %d to %d | %s | %s |",
                    plan.fewest(),
                    plan.most(),
                    plan.alpha(),
                    plan.alpha() / 2);
            for (int kind = 0; kind < KINDS; kind++) {
                out.printf(
                        Locale.ROOT,
                        kind < SETTLES ? " %.5f |" : " %.3f |",
                        CoverageStudy.share(counts[kind], campaigns));
            }
            out.println();
        }
        out.println();
    }

    private static final class Player implements Blocks.Player {
        private final Plan plan;
        private final double[] critical;
        private final double[] first;
        private final double[] again;
        private final double[] now;
        private final double[] spoiled;

        Player(Plan plan) {
            this.plan = plan;
            this.critical =
                    CriticalValues.of(Schedule.paired(plan.fewest(), plan.most()), plan.alpha(), 2);
            this.first = new double[plan.most()];
            this.again = new double[plan.most()];
            this.now = new double[plan.most()];
            this.spoiled = new double[plan.most()];
        }

        /** Distances from the edge, in units of their standard deviation. */
        @Override
        public void play(SplittableRandom random, long[] counts) {
            for (int i = 0; i < first.length; i++) {
                first[i] = random.nextGaussian();
                again[i] = random.nextGaussian();
            }
            counts[HONEST] += settles(first, 0) ? 1 : 0;
            striking(false, counts, ONCE_WITHOUT_RULE, ONCE_WITH_RULE);
            striking(true, counts, ALWAYS_WITHOUT_RULE, ALWAYS_WITH_RULE);
            deserved(counts);
        }

        /** Strikes the least favourable pair whenever, or once, a look does not claim. */
        private void striking(boolean always, long[] counts, int without, int with) {
            System.arraycopy(first, 0, now, 0, first.length);
            boolean claimed = false;
            boolean agreed = false;
            for (int n = plan.fewest(); n <= plan.most(); n++) {
                boolean original = t(first, n, 0) > critical[n - plan.fewest()];
                boolean claims = t(now, n, 0) > critical[n - plan.fewest()];
                claimed |= claims;
                agreed |= claims && original;
                if (!claimed && (always || n == plan.fewest())) {
                    int least = 0;
                    for (int i = 1; i < n; i++) {
                        least = now[i] < now[least] ? i : least;
                    }
                    // A pair is done again once; after that it stays as it is.
                    if (now[least] == first[least]) {
                        now[least] = again[least];
                    }
                    claims = t(now, n, 0) > critical[n - plan.fewest()];
                    claimed |= claims;
                    agreed |= claims && original;
                }
            }
            counts[without] += claimed ? 1 : 0;
            counts[with] += agreed ? 1 : 0;
        }

        /** The truth is beyond the edge; the first pair is a slip, or is struck though sound. */
        private void deserved(long[] counts) {
            double beyond = plan.beyond();
            counts[SETTLES] += settles(first, beyond) ? 1 : 0;
            System.arraycopy(first, 0, spoiled, 0, first.length);
            spoiled[0] -= SLIP;
            counts[SLIP_LEFT_IN] += settles(spoiled, beyond) ? 1 : 0;
            System.arraycopy(first, 0, now, 0, first.length);
            now[0] = again[0];
            counts[SLIP_STRUCK_WITH_RULE] += bothSettle(spoiled, now, beyond) ? 1 : 0;
            counts[SOUND_STRUCK_WITH_RULE] += bothSettle(first, now, beyond) ? 1 : 0;
        }

        /** Whether the first settling look claims a meaningful increase. */
        private boolean settles(double[] values, double beyond) {
            for (int n = plan.fewest(); n <= plan.most(); n++) {
                double t = t(values, n, beyond);
                if (Math.abs(t) > critical[n - plan.fewest()]) {
                    return t > 0;
                }
            }
            return false;
        }

        /** A verdict once reached stays, so both need not settle at the same look. */
        private boolean bothSettle(double[] with, double[] without, double beyond) {
            return settles(with, beyond) && settles(without, beyond);
        }

        private static double t(double[] values, int n, double beyond) {
            double sum = 0;
            double squares = 0;
            for (int i = 0; i < n; i++) {
                sum += values[i];
                squares += values[i] * values[i];
            }
            double mean = sum / n;
            return (mean + beyond) / Math.sqrt((squares - sum * mean) / (n - 1) / n);
        }
    }
}
