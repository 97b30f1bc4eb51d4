package rigside.decide;

import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.random.RandomGenerator;

/** What a plan can be expected to bring, by playing whole campaigns with normal values. */
public final class Planning {
    private Planning() {}

    /**
     * The outlook for one true difference.
     *
     * @param truth on the analysis scale; finite
     * @param spread the true standard deviation of one value, on the analysis scale; above 0
     * @param campaigns how many to play, at least 1; the shares have a standard error of at most
     *     0.5 / sqrt(campaigns)
     * @param random seeded by the caller
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static Outlook outlook(
            Rules rules, double truth, double spread, int campaigns, RandomGenerator random) {
        require(truth, spread, campaigns);
        Campaign campaign = new Campaign(rules, new double[0], new double[0], truth);
        Tally tally = new Tally(rules, truth);
        double analysed = rules.analysedSpread(spread);
        for (int i = 0; i < campaigns; i++) {
            campaign.play(0, truth, analysed, true, random);
            tally.add(campaign);
        }
        return tally.outlook();
    }

    /**
     * The chance that some look settles the question: {@code 1 - unsettled} of the outlook, without
     * the rest of it.
     *
     * @param truth on the analysis scale; finite
     * @param spread the true standard deviation of one value, on the analysis scale; above 0
     * @param campaigns how many to play, at least 1
     * @param random seeded by the caller
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double settles(
            Rules rules, double truth, double spread, int campaigns, RandomGenerator random) {
        require(truth, spread, campaigns);
        Campaign campaign = new Campaign(rules, new double[0], new double[0], truth);
        double analysed = rules.analysedSpread(spread);
        int settled = 0;
        for (int i = 0; i < campaigns; i++) {
            campaign.play(0, truth, analysed, false, random);
            settled += campaign.settledAt() >= 0 ? 1 : 0;
        }
        return (double) settled / campaigns;
    }

    /**
     * The fewest rounds at most with which a plan is good enough, a longer plan never being worse.
     *
     * @param shortest the fewest considered
     * @param longest the most considered, at least {@code shortest}
     * @param isEnough whether a plan of so many rounds is good enough
     * @return empty when even the longest is not
     * @throws IllegalArgumentException if the longest is shorter than the shortest
     */
    public static OptionalInt fewestOf(int shortest, int longest, IntPredicate isEnough) {
        if (longest < shortest) {
            throw new IllegalArgumentException(
                    "plans from " + shortest + " to " + longest + " rounds");
        }
        int low = shortest - 1;
        int high = shortest;
        // Stepping up first, since long plans take longest to play.
        for (int step = 1; !isEnough.test(high); step *= 2) {
            if (high == longest) {
                return OptionalInt.empty();
            }
            low = high;
            high = Math.min(longest, high + step);
        }
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (isEnough.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return OptionalInt.of(high);
    }

    private static void require(double truth, double spread, int campaigns) {
        if (!Double.isFinite(truth)) {
            throw new IllegalArgumentException("true difference " + truth + " must be finite");
        }
        if (!(spread > 0 && spread < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("spread " + spread + " must be above 0");
        }
        if (campaigns < 1) {
            throw new IllegalArgumentException("campaigns " + campaigns + " must be at least 1");
        }
    }

    private static final class Tally {
        private final Rules rules;
        private final double truth;
        private final int[] endedAt;
        private int meaningful;
        private int noMeaningful;
        private int wrong;
        private int covered;
        private int all;

        Tally(Rules rules, double truth) {
            this.rules = rules;
            this.truth = truth;
            this.endedAt = new int[rules.schedule().looks().size()];
        }

        void add(Campaign campaign) {
            all++;
            covered += campaign.missed() ? 0 : 1;
            int end = campaign.settledAt();
            endedAt[end < 0 ? endedAt.length - 1 : end]++;
            if (end >= 0) {
                boolean claimed = campaign.verdict() == Verdict.MEANINGFUL_DIFFERENCE;
                meaningful += claimed ? 1 : 0;
                noMeaningful += claimed ? 0 : 1;
                wrong += isSo(claimed, campaign.estimate() > 0) ? 0 : 1;
            }
        }

        private boolean isSo(boolean claimed, boolean increase) {
            boolean up = truth > rules.band().high() && rules.matters() != Matters.DECREASE;
            boolean down = truth < rules.band().low() && rules.matters() != Matters.INCREASE;
            if (claimed) {
                return increase ? up : down;
            }
            return !up && !down;
        }

        Outlook outlook() {
            double rounds = 0;
            int ended = 0;
            int ninetieth = 0;
            for (int i = 0; i < endedAt.length; i++) {
                Schedule.Arms arms = rules.schedule().looks().get(i).arms();
                int n = Math.max(arms.reference(), arms.other());
                rounds += (double) n * endedAt[i];
                if (ended < 0.9 * all) {
                    ninetieth = n;
                }
                ended += endedAt[i];
            }
            return new Outlook(
                    truth,
                    share(meaningful),
                    share(noMeaningful),
                    share(all - meaningful - noMeaningful),
                    share(wrong),
                    rounds / all,
                    ninetieth,
                    share(covered));
        }

        private double share(int count) {
            return (double) count / all;
        }
    }
}
