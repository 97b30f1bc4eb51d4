package rigside.decide;

import java.io.PrintStream;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * What reading to coarse steps does to the promise. The truth is the band's edge, so a claim of a
 * meaningful increase is wrong, and so is one of a decrease beyond the other side of it, which is
 * what "no increase that matters" is at the edge. Where the two true means lie between the steps is
 * fixed in a session: of all places on a grid the worst is told.
 *
 * <p>Spread and step are those of one value; the step is 1.
 */
final class RoundingStudy {

    static final long SEED = 20_261_127L;

    private static final int CAMPAIGNS = 4000;

    /** As if values were not rounded. */
    static final int PLAIN = 0;

    /** A spread below that of rounding settles nothing. */
    static final int FLOOR = 1;

    /** And below twice that a step is added on each side: the rule. */
    static final int RULE = 2;

    private static final int RULES = 3;

    static final double[] SPREADS = {0.06, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5, 0.7, 1};

    /** Places of a mean between two steps, from 0 to below 1. */
    static final int PLACES = 10;

    /** A plan that is played. */
    record Plan(Schedule schedule, String words) {}

    static final List<Plan> PLANS =
            List.of(
                    new Plan(Schedule.paired(3, 10), "pairs, 3 to 10"),
                    new Plan(Schedule.paired(5, 20), "pairs, 5 to 20"),
                    new Plan(Schedule.independent(2, 6), "independent, 2 to 6"),
                    new Plan(Schedule.independent(5, 20), "independent, 5 to 20"));

    private RoundingStudy() {}

    /** For each rule the largest share of campaigns that claim one way, over all places. */
    static double[] worst(Plan plan, double spread, int campaigns) {
        double[] worst = new double[RULES];
        double[] critical = CriticalValues.of(plan.schedule(), 0.05, 2);
        for (int reference = 0; reference < PLACES; reference++) {
            for (int other = 0; other < PLACES; other++) {
                Place place = new Place((double) reference / PLACES, (double) other / PLACES);
                long seed = SEED + 100L * reference + other;
                long[] counts =
                        Blocks.count(
                                seed,
                                campaigns,
                                2 * RULES,
                                () -> new Player(plan.schedule(), critical, place, spread));
                for (int kind = 0; kind < counts.length; kind++) {
                    double share = (double) counts[kind] / campaigns;
                    worst[kind / 2] = Math.max(worst[kind / 2], share);
                }
            }
        }
        return worst;
    }

    public static void main(String[] args) {
        print(System.out, args.length == 0 ? CAMPAIGNS : Integer.parseInt(args[0]));
    }

    static void print(PrintStream out, int campaigns) {
        out.println("| design | spread, in steps | as if not rounded | floor alone | rule |");
        out.println("| --- | --- | --- | --- | --- |");
        for (Plan plan : PLANS) {
            for (double spread : SPREADS) {
                out.printf(Locale.ROOT, "| %s | %s |", plan.words(), spread);
                for (double share : worst(plan, spread, campaigns)) {
                    out.printf(Locale.ROOT, " %.4f |", share);
                }
                out.println();
            }
        }
        out.println();
    }

    private record Place(double reference, double other) {}

    private static final class Player implements Blocks.Player {
        private final Schedule schedule;
        private final double[] critical;
        private final Place place;
        private final double spread;
        private final double[] reference;
        private final double[] other;

        Player(Schedule schedule, double[] critical, Place place, double spread) {
            this.schedule = schedule;
            this.critical = critical;
            this.place = place;
            this.spread = spread;
            this.reference = new double[schedule.last().arms().reference()];
            this.other = new double[schedule.last().arms().other()];
        }

        /** Each value less its true mean, so that the edge is at 0. */
        private double read(SplittableRandom random, double mean) {
            return Math.rint(mean + spread * random.nextGaussian()) - mean;
        }

        @Override
        public void play(SplittableRandom random, long[] counts) {
            for (int i = 0; i < other.length; i++) {
                reference[i] = read(random, place.reference());
                other[i] = read(random, place.other());
            }
            boolean[] claimed = new boolean[counts.length];
            for (int look = 0; look < critical.length; look++) {
                Sample sample = sample(schedule.looks().get(look).arms());
                double half = critical[look] * sample.spread() / Math.sqrt(sample.information());
                claim(claimed, PLAIN, sample, half);
                if (sample.spread() >= rounding()) {
                    claim(claimed, FLOOR, sample, half);
                    boolean ample = sample.spread() >= 2 * rounding();
                    claim(claimed, RULE, sample, ample ? half : half + 1);
                }
            }
            for (int kind = 0; kind < claimed.length; kind++) {
                counts[kind] += claimed[kind] ? 1 : 0;
            }
        }

        private static void claim(boolean[] claimed, int rule, Sample sample, double half) {
            claimed[2 * rule] |= sample.spread() > 0 && sample.estimate() > half;
            claimed[2 * rule + 1] |= sample.spread() > 0 && sample.estimate() < -half;
        }

        private double rounding() {
            return Math.sqrt((isPaired() ? 2 : 1) / 12.0);
        }

        private boolean isPaired() {
            return schedule.design() == Schedule.Design.PAIRED;
        }

        private Sample sample(Schedule.Arms arms) {
            double[] mine = Arrays.copyOf(reference, arms.reference());
            double[] theirs = Arrays.copyOf(other, arms.other());
            if (!isPaired()) {
                return Sample.of(mine, theirs);
            }
            for (int i = 0; i < theirs.length; i++) {
                theirs[i] -= mine[i];
            }
            return Sample.of(theirs);
        }
    }
}
