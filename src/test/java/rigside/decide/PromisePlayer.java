package rigside.decide;

import java.util.List;
import java.util.SplittableRandom;

/**
 * Raw normal values looked at as a schedule says, against four sets of critical values at once.
 * Shares no code with the recursion, nor with {@link Sequential}.
 */
final class PromisePlayer implements Blocks.Player {

    /** Some interval missed the truth: with the program's critical values. */
    static final int MISSED = 0;

    /** The first to miss lay above the truth: a wrong claim, were the truth the band's edge. */
    static final int MISSED_ABOVE = 1;

    /** Some interval missed: ordinary t intervals at every look. */
    static final int PEEKING = 2;

    /** Some interval missed: t quantiles at the levels of the normal-theory boundary. */
    static final int NORMAL_LEVEL = 3;

    /** Some interval missed: the normal-theory boundary as it is. */
    static final int NORMAL_BOUNDARY = 4;

    static final int KINDS = 5;

    private static final double REFERENCE = 2.3;
    private static final double TRUTH = 0.7;
    private static final double SPREAD = 1.3;

    private final boolean paired;
    private final List<Schedule.Look> looks;
    private final double[][] critical;

    PromisePlayer(Schedule schedule, double alpha, double exponent) {
        this.paired = schedule.design() == Schedule.Design.PAIRED;
        this.looks = schedule.looks();
        double[] normal =
                CriticalValues.of(
                        Crossings.knownSpread(
                                looks.stream().map(Schedule.Look::information).toList()),
                        alpha,
                        exponent);
        double[] plain = new double[looks.size()];
        double[] level = new double[looks.size()];
        for (int i = 0; i < plain.length; i++) {
            double df = looks.get(i).degreesOfFreedom();
            plain[i] = StudentT.upperQuantile(alpha / 2, df);
            level[i] = StudentT.upperQuantile(StudentT.upperTail(normal[i], 1e9), df);
        }
        this.critical =
                new double[][] {CriticalValues.of(schedule, alpha, exponent), plain, level, normal};
    }

    @Override
    public void play(SplittableRandom random, long[] counts) {
        int a = 0;
        int b = 0;
        double sumA = 0;
        double sumB = 0;
        double squaresA = 0;
        double squaresB = 0;
        boolean[] missed = new boolean[critical.length];
        for (int i = 0; i < looks.size(); i++) {
            Schedule.Arms arms = looks.get(i).arms();
            for (; !paired && a < arms.reference(); a++) {
                double x = REFERENCE + SPREAD * random.nextGaussian();
                sumA += x;
                squaresA += x * x;
            }
            for (; b < arms.other(); b++) {
                double x = (paired ? 0 : REFERENCE) + TRUTH + SPREAD * random.nextGaussian();
                sumB += x;
                squaresB += x * x;
            }
            double squares = squaresB - sumB * sumB / b;
            double error = 1.0 / b;
            double estimate = sumB / b;
            int df = b - 1;
            if (!paired) {
                squares += squaresA - sumA * sumA / a;
                error += 1.0 / a;
                estimate -= sumA / a;
                df += a - 1;
            }
            double t = (estimate - TRUTH) / Math.sqrt(squares / df * error);
            if (!missed[0] && t > critical[0][i]) {
                counts[MISSED_ABOVE]++;
            }
            for (int kind = 0; kind < missed.length; kind++) {
                missed[kind] |= Math.abs(t) > critical[kind][i];
            }
        }
        counts[MISSED] += missed[0] ? 1 : 0;
        counts[PEEKING] += missed[1] ? 1 : 0;
        counts[NORMAL_LEVEL] += missed[2] ? 1 : 0;
        counts[NORMAL_BOUNDARY] += missed[3] ? 1 : 0;
    }
}
