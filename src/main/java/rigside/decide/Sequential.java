package rigside.decide;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * From the rules and the values so far to what they say.
 *
 * <p>Looks happen only where the schedule has them: values beyond a look wait for the next, and
 * values beyond the last look are not used at all.
 */
public final class Sequential {

    /** Spread below this share of the largest value is rounding of double arithmetic. */
    private static final double ARITHMETIC = 1e-12;

    private Sequential() {}

    /**
     * The latest look at paired differences.
     *
     * @param differences other minus reference, one a round, in order of rounds
     * @throws IllegalArgumentException if the schedule is not for pairs or a value is not finite
     */
    public static Finding paired(Rules rules, double[] differences) {
        return pairedCourse(rules, differences).latest();
    }

    /**
     * All looks at paired differences.
     *
     * @param differences other minus reference, one a round, in order of rounds
     * @throws IllegalArgumentException if the schedule is not for pairs or a value is not finite
     */
    public static Course pairedCourse(Rules rules, double[] differences) {
        require(rules, Schedule.Design.PAIRED);
        requireFinite(differences);
        return course(
                rules,
                differences.length,
                differences.length,
                arms -> Sample.of(Arrays.copyOf(differences, arms.other())));
    }

    /**
     * The latest look at two independent arms.
     *
     * @param reference values of the reference, in order
     * @param other values of the other condition, in order
     * @throws IllegalArgumentException if the schedule is not for independent arms or a value is
     *     not finite
     */
    public static Finding independent(Rules rules, double[] reference, double[] other) {
        return independentCourse(rules, reference, other).latest();
    }

    /**
     * All looks at two independent arms.
     *
     * @param reference values of the reference, in order
     * @param other values of the other condition, in order
     * @throws IllegalArgumentException if the schedule is not for independent arms or a value is
     *     not finite
     */
    public static Course independentCourse(Rules rules, double[] reference, double[] other) {
        require(rules, Schedule.Design.INDEPENDENT);
        requireFinite(reference);
        requireFinite(other);
        return course(
                rules,
                reference.length,
                other.length,
                arms ->
                        Sample.of(
                                Arrays.copyOf(reference, arms.reference()),
                                Arrays.copyOf(other, arms.other())));
    }

    private interface Taken {
        Sample upTo(Schedule.Arms arms);
    }

    private static Course course(Rules rules, int reference, int other, Taken taken) {
        List<Schedule.Look> looks = rules.schedule().looks();
        int reached = rules.schedule().reached(reference, other);
        if (reached < 0) {
            Schedule.Arms all = new Schedule.Arms(reference, other);
            return new Course(
                    List.of(
                            new Finding(
                                    Math.min(reference, other),
                                    taken.upTo(all).estimate(),
                                    Optional.empty(),
                                    Verdict.TOO_FEW_ROUNDS,
                                    false,
                                    false)));
        }
        double[] critical = rules.criticalValues();
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i <= reached; i++) {
            Schedule.Arms arms = looks.get(i).arms();
            boolean last = i == looks.size() - 1;
            findings.add(finding(rules, looks.get(i), taken.upTo(arms), critical[i], last));
        }
        return new Course(findings);
    }

    private static Finding finding(
            Rules rules, Schedule.Look look, Sample sample, double critical, boolean last) {
        double floor = Math.max(rules.roundingSpread(), ARITHMETIC * sample.largest());
        boolean atResolution = !(sample.spread() > 0) || sample.spread() < floor;
        double spread = Math.max(sample.spread(), ARITHMETIC * sample.largest());
        Interval interval = rules.interval(look, sample.estimate(), spread, critical);
        Verdict verdict =
                atResolution
                        ? Verdict.NOT_SETTLED
                        : Verdicts.of(interval, rules.band(), rules.matters());
        Schedule.Arms arms = look.arms();
        return new Finding(
                Math.min(arms.reference(), arms.other()),
                sample.estimate(),
                Optional.of(interval),
                verdict,
                last,
                atResolution);
    }

    private static void require(Rules rules, Schedule.Design design) {
        if (rules.schedule().design() != design) {
            throw new IllegalArgumentException(
                    "the schedule is " + rules.schedule().design() + ", not " + design);
        }
    }

    private static void requireFinite(double[] values) {
        for (double value : values) {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("value " + value + " must be finite");
            }
        }
    }
}
