package rigside.decide;

import java.util.List;
import java.util.random.RandomGenerator;

/**
 * One comparison played to its end under its rules, from the values already seen. Used over and
 * over; not for several threads at once.
 */
final class Campaign {
    private final Rules rules;
    private final List<Schedule.Look> looks;
    private final double[] critical;
    private final boolean paired;
    private final int first;
    private final Arm reference;
    private final Arm other;

    private int settledAt;
    private Verdict verdict = Verdict.TOO_FEW_ROUNDS;
    private double estimate;
    private boolean missed;

    /**
     * @param reference values seen of the reference; empty when paired
     * @param other values seen of the other condition, or paired differences
     * @param centre a number near the other condition's values or the differences
     */
    Campaign(Rules rules, double[] reference, double[] other, double centre) {
        this.rules = rules;
        this.looks = rules.schedule().looks();
        this.critical = rules.criticalValues();
        this.paired = rules.schedule().design() == Schedule.Design.PAIRED;
        int reached =
                rules.schedule().reached(paired ? other.length : reference.length, other.length);
        this.first = reached + 1;
        Schedule.Arms taken = reached < 0 ? new Schedule.Arms(0, 0) : looks.get(reached).arms();
        this.reference =
                new Arm(
                        reference,
                        paired ? 0 : taken.reference(),
                        reference.length == 0 ? 0 : Sample.mean(reference));
        this.other = new Arm(other, taken.other(), centre);
    }

    /** The look that comes next, from 0; as many as there are looks when none does. */
    int next() {
        return first;
    }

    /**
     * Plays the looks still to come with normal values.
     *
     * @param referenceMean true mean of the reference; not used when paired
     * @param otherMean true mean of the other condition, or of the differences
     * @param spread true standard deviation of a value or of a difference
     * @param beyond whether to go on after settling, to see whether any interval misses
     */
    void play(
            double referenceMean,
            double otherMean,
            double spread,
            boolean beyond,
            RandomGenerator random) {
        double truth = paired ? otherMean : otherMean - referenceMean;
        settledAt = -1;
        verdict = Verdict.NOT_SETTLED;
        missed = false;
        reference.restart();
        other.restart();
        for (int i = first; i < looks.size(); i++) {
            Schedule.Arms arms = looks.get(i).arms();
            other.advance(arms.other(), otherMean, spread, random);
            if (!paired) {
                reference.advance(arms.reference(), referenceMean, spread, random);
            }
            Interval interval = interval(looks.get(i), critical[i]);
            missed |= truth < interval.lower() || truth > interval.upper();
            if (settledAt < 0 && seenSpread(looks.get(i)) >= rules.roundingSpread()) {
                verdict = Verdicts.of(interval, rules.band(), rules.matters());
                settledAt = verdict.settled() ? i : -1;
                estimate = interval.estimate();
            }
            if (settledAt >= 0 && !beyond) {
                return;
            }
        }
    }

    /** Index of the look that settled, or -1. */
    int settledAt() {
        return settledAt;
    }

    /** The settling verdict, or that of the last look. */
    Verdict verdict() {
        return verdict;
    }

    /** The estimate at the look that gave the verdict. */
    double estimate() {
        return estimate;
    }

    /** Whether any interval played missed the truth. */
    boolean missed() {
        return missed;
    }

    private double seenSpread(Schedule.Look look) {
        double squares = other.squares() + (paired ? 0 : reference.squares());
        return Math.sqrt(squares / look.degreesOfFreedom());
    }

    private Interval interval(Schedule.Look look, double c) {
        double mean = paired ? other.mean() : other.mean() - reference.mean();
        return rules.interval(look, mean, seenSpread(look), c);
    }
}
