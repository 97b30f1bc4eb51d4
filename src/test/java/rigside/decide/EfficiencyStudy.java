package rigside.decide;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Mean rounds of a plan against the fixed design that settles as often: one ordinary t interval of
 * the same confidence after n rounds, n between two whole numbers interpolated; its chance to
 * settle is exact, not played. Where a plan settles nearly always, "as often" asks much of the
 * fixed design that nobody needs: so beside it what 99 times of 100 would take.
 */
final class EfficiencyStudy {

    static final long SEED = 20_261_127L;

    /** So often is enough. */
    private static final double ENOUGH = 0.99;

    private static final double ALPHA = 0.05;
    private static final double EDGE = Math.log(1.1);

    /** Pairs; a difference matters from 10 % either way; spread is that of a log ratio. */
    record Setting(int fewest, int most, double spread, double ratio) {}

    /**
     * @param settles chance to settle
     * @param rounds on average
     * @param fixed rounds of the fixed design that settles as often
     * @param enough rounds of the fixed design that settles as often, or 99 times of 100 where the
     *     plan settles oftener
     */
    record Result(double settles, double rounds, double fixed, double enough) {

        /** The share of its rounds that the plan saves. */
        double saved(double others) {
            return 1 - rounds / others;
        }
    }

    static final List<Setting> SETTINGS =
            List.of(
                    new Setting(3, 6, 0.03, 1.0),
                    new Setting(3, 6, 0.05, 1.2),
                    new Setting(3, 6, 0.05, 1.35),
                    new Setting(3, 8, 0.05, 1.0),
                    new Setting(3, 8, 0.05, 1.2),
                    new Setting(3, 8, 0.08, 1.35),
                    new Setting(3, 10, 0.03, 1.0),
                    new Setting(3, 10, 0.05, 1.0),
                    new Setting(3, 10, 0.05, 1.2),
                    new Setting(3, 10, 0.05, 1.35),
                    new Setting(3, 10, 0.10, 1.2),
                    new Setting(3, 10, 0.10, 1.35),
                    new Setting(4, 12, 0.08, 1.0),
                    new Setting(4, 12, 0.10, 1.2),
                    new Setting(4, 12, 0.10, 1.35),
                    new Setting(5, 20, 0.10, 1.0),
                    new Setting(5, 20, 0.15, 1.2),
                    new Setting(5, 20, 0.15, 1.35));

    private EfficiencyStudy() {}

    static void print(PrintStream out, int campaigns) {
        out.println(
                "| pairs | spread | true ratio | settles | mean rounds | fixed, as often | saved |"
                        + " fixed, 99 of 100 | saved |");
        out.println("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        for (int i = 0; i < SETTINGS.size(); i++) {
            Setting setting = SETTINGS.get(i);
            Result result = result(setting, i, campaigns);
            out.printf(
                    Locale.ROOT,
                    "| %d to %d | %.2f | %.2f | %.3f | %.2f | %.2f | %+.0f %% | %.2f | %+.0f %% |%n",
                    setting.fewest(),
                    setting.most(),
                    setting.spread(),
                    setting.ratio(),
                    result.settles(),
                    result.rounds(),
                    result.fixed(),
                    100 * result.saved(result.fixed()),
                    result.enough(),
                    100 * result.saved(result.enough()));
        }
    }

    static Result result(Setting setting, int place, int campaigns) {
        // The plan's settled and its rounds.
        long[] counts = Blocks.count(SEED + 1000L * place, campaigns, 2, () -> new Player(setting));
        double settles = CoverageStudy.share(counts[0], campaigns);
        // Had all settled, one more might not have.
        double often = Math.min(settles, 1 - 1.0 / campaigns);
        return new Result(
                settles,
                (double) counts[1] / campaigns,
                fixed(setting, often),
                fixed(setting, Math.min(often, ENOUGH)));
    }

    /** Rounds of the fixed design that settles so often. */
    private static double fixed(Setting setting, double settles) {
        int n = 2;
        double before = 0;
        double chance = chance(setting, n);
        while (chance < settles) {
            n++;
            before = chance;
            chance = chance(setting, n);
        }
        return n - (chance - settles) / (chance - before);
    }

    private static double chance(Setting setting, int n) {
        Rules rules =
                new Rules(
                        Schedule.paired(n, n), ALPHA, 2, Bands.symmetric(EDGE), Matters.EITHER, 0);
        return FixedDesign.of(rules, Math.log(setting.ratio()), setting.spread() / Math.sqrt(2))
                .settles();
    }

    private static final class Player implements Blocks.Player {
        private final Setting setting;
        private final double[] critical;

        Player(Setting setting) {
            this.setting = setting;
            this.critical =
                    CriticalValues.of(Schedule.paired(setting.fewest(), setting.most()), ALPHA, 2);
        }

        @Override
        public void play(SplittableRandom random, long[] counts) {
            double sum = 0;
            double squares = 0;
            boolean settled = false;
            for (int n = 1; n <= setting.most(); n++) {
                double x = Math.log(setting.ratio()) + setting.spread() * random.nextGaussian();
                sum += x;
                squares += x * x;
                if (n < 2) {
                    continue;
                }
                double mean = sum / n;
                double error = Math.sqrt((squares - sum * mean) / (n - 1) / n);
                if (!settled
                        && n >= setting.fewest()
                        && settles(mean, critical[n - setting.fewest()] * error)) {
                    settled = true;
                    counts[0]++;
                    counts[1] += n;
                }
            }
            counts[1] += settled ? 0 : setting.most();
        }

        private static boolean settles(double mean, double half) {
            double lower = mean - half;
            double upper = mean + half;
            return lower > EDGE || upper < -EDGE || (lower > -EDGE && upper < EDGE);
        }
    }
}
