package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import rigside.decide.Band;
import rigside.decide.Course;
import rigside.decide.Limits;
import rigside.decide.Matters;
import rigside.decide.Rules;
import rigside.decide.Schedule;
import rigside.decide.Sequential;
import rigside.protocol.Measure;
import rigside.protocol.Plan;

/**
 * Everything about the comparisons of one measure that was fixed beforehand.
 *
 * @param measure a measure that is compared
 * @param plan the plan
 * @param sharing how many comparisons share the error equally (Bonferroni)
 * @param perRound how many values a condition gives in a round: the trials of a donning where each
 *     stands for itself, else 1
 */
record Setting(Measure measure, Plan plan, int sharing, int perRound) {

    Measure.Compared compared() {
        return measure.compared().orElseThrow();
    }

    Scale scale() {
        return Scale.of(measure);
    }

    boolean isPaired() {
        return plan.design() == Plan.Design.ROUNDS;
    }

    /** Whether each trial is a value of its own. */
    boolean isByTrial() {
        return plan.design() == Plan.Design.INDEPENDENT_TRIALS
                && measure.kind() instanceof Measure.TimedInhalation;
    }

    double alpha() {
        return (1 - plan.confidence()) / sharing;
    }

    /** Changes too small to matter, as people read them. */
    Limits band() {
        return new Limits(
                scale().outward(compared().bandLow()), scale().outward(compared().bandHigh()));
    }

    /**
     * The looks: after each complete round. Where rounds bring several values each, from the first
     * round with the fewest to the last that keeps within the most; one look at least.
     */
    Schedule schedule() {
        if (isPaired()) {
            return Schedule.paired(plan.fewest(), plan.most());
        }
        List<Schedule.Arms> looks = new ArrayList<>();
        int first = -Math.floorDiv(-plan.fewest(), perRound);
        int last = Math.max(first, plan.most() / perRound);
        for (int rounds = first; rounds <= last; rounds++) {
            looks.add(new Schedule.Arms(rounds * perRound, rounds * perRound));
        }
        return Schedule.independent(looks);
    }

    /**
     * The same with the counts there really are after each complete round: a value that was lost
     * changes what a look knows, not what it may spend. A round that brings nothing is no look.
     */
    private Schedule schedule(Rows rows) {
        if (isPaired() || rows.rounds().isEmpty()) {
            return schedule();
        }
        List<Schedule.Arms> looks = new ArrayList<>();
        List<Schedule.Arms> planned = new ArrayList<>();
        Schedule.Arms before = new Schedule.Arms(1, 1);
        for (Schedule.Look look : schedule().looks()) {
            Schedule.Arms now = counts(rows, look.arms().other() / perRound);
            if (Math.min(now.reference(), now.other()) > 0 && !now.equals(before)) {
                looks.add(now);
                planned.add(look.arms());
                before = now;
            }
        }
        return looks.isEmpty() ? schedule() : Schedule.independent(looks, planned);
    }

    /** Values after so many complete rounds; those to come bring what was planned. */
    private Schedule.Arms counts(Rows rows, int rounds) {
        int done = Math.min(rounds, rows.rounds().size());
        Schedule.Arms counts = rows.rounds().get(done - 1);
        int more = (rounds - done) * perRound;
        return new Schedule.Arms(counts.reference() + more, counts.other() + more);
    }

    /** This many meaningful differences, on the analysis scale; below 0 they are decreases. */
    double trueDifference(double multiple) {
        return multiple < 0 ? -multiple * compared().bandLow() : multiple * compared().bandHigh();
    }

    /** The number of complete rounds after which the plan has no further look. */
    int lastRound() {
        return -Math.floorDiv(-schedule().last().arms().other(), perRound);
    }

    /** The rules, with the step these values are read to. */
    Rules rules(Rows rows) {
        return rules(schedule(rows), rows.resolution());
    }

    /** The rules with the looks as planned, for values read to this step. */
    Rules rules(double resolution) {
        return rules(schedule(), resolution);
    }

    private Rules rules(Schedule schedule, double resolution) {
        return new Rules(
                schedule,
                alpha(),
                plan.exponent(),
                new Band(compared().bandLow(), compared().bandHigh()),
                switch (compared().matters()) {
                    case EITHER -> Matters.EITHER;
                    case INCREASE -> Matters.INCREASE;
                    case DECREASE -> Matters.DECREASE;
                },
                resolution);
    }

    /** All looks at these values, in order. */
    Course course(Rows rows) {
        return isPaired()
                ? Sequential.pairedCourse(rules(rows), rows.differences(scale()))
                : Sequential.independentCourse(
                        rules(rows), rows.reference(scale()), rows.other(scale()));
    }
}
