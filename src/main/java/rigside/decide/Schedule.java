package rigside.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The looks planned beforehand: how much each one knows about the difference.
 *
 * @param design how values are set against each other
 * @param looks in order, at least one; information strictly rising
 */
public record Schedule(Design design, List<Look> looks) {

    /** How values are set against each other. */
    public enum Design {
        /** Differences within rounds; one arm of n differences. */
        PAIRED,
        /** Two arms of values, spread pooled. */
        INDEPENDENT
    }

    /** Counts of values in the two arms; for pairs both are the number of pairs. */
    public record Arms(int reference, int other) {}

    /**
     * One look.
     *
     * @param arms counts of values seen at this look
     * @param information on the difference, in units of one over the variance of one value (of one
     *     difference when paired): n, or n_A n_B / (n_A + n_B); above 0
     * @param degreesOfFreedom of the spread; at least 1
     * @param planned the information planned for this look, in the same unit: what its share of the
     *     error goes by, however many values were lost
     */
    public record Look(Arms arms, double information, double degreesOfFreedom, double planned) {

        /** A look that has what was planned. */
        public Look(Arms arms, double information, double degreesOfFreedom) {
            this(arms, information, degreesOfFreedom, information);
        }
    }

    /**
     * @throws IllegalArgumentException if there is no look, a look has no degree of freedom, or a
     *     look adds nothing to the one before
     */
    public Schedule {
        looks = List.copyOf(looks);
        if (looks.isEmpty()) {
            throw new IllegalArgumentException("a schedule needs at least one look");
        }
        Look before = null;
        for (Look look : looks) {
            if (!(look.information() > 0) || !(look.degreesOfFreedom() >= 1)) {
                throw new IllegalArgumentException(
                        "look at " + look.arms() + " has no degree of freedom for the spread");
            }
            if (before != null
                    && !(look.information() > before.information()
                            && look.degreesOfFreedom() > before.degreesOfFreedom())) {
                throw new IllegalArgumentException(
                        "look at " + look.arms() + " adds nothing to " + before.arms());
            }
            before = look;
        }
    }

    /**
     * A look after every pair from {@code fewest} to {@code most}.
     *
     * @throws IllegalArgumentException unless 2 &le; fewest &le; most
     */
    public static Schedule paired(int fewest, int most) {
        return paired(everyFrom(fewest, most));
    }

    /**
     * Looks at these numbers of pairs.
     *
     * @throws IllegalArgumentException unless the numbers rise strictly from at least 2
     */
    public static Schedule paired(List<Integer> pairs) {
        List<Look> looks = new ArrayList<>();
        for (int n : pairs) {
            looks.add(new Look(new Arms(n, n), n, n - 1.0));
        }
        return new Schedule(Design.PAIRED, looks);
    }

    /**
     * A look after every value of each arm from {@code fewest} to {@code most} values an arm.
     *
     * @throws IllegalArgumentException unless 2 &le; fewest &le; most
     */
    public static Schedule independent(int fewest, int most) {
        return independent(everyFrom(fewest, most).stream().map(n -> new Arms(n, n)).toList());
    }

    /**
     * Looks at these counts of values in the two arms: balanced or not, one arm first, jumps.
     *
     * @throws IllegalArgumentException unless both counts are at least 1, together at least 3, and
     *     no count falls from look to look while at least one rises
     */
    public static Schedule independent(List<Arms> arms) {
        return independent(arms, arms);
    }

    /**
     * Looks at these counts of values, where others were planned.
     *
     * @param planned the counts planned for the same looks
     * @throws IllegalArgumentException as for the counts alone, or unless there are as many
     */
    public static Schedule independent(List<Arms> arms, List<Arms> planned) {
        if (arms.size() != planned.size()) {
            throw new IllegalArgumentException(
                    arms.size() + " looks, must be " + planned.size() + " as planned");
        }
        List<Look> looks = new ArrayList<>();
        Arms before = new Arms(1, 1);
        for (int at = 0; at < arms.size(); at++) {
            Arms now = arms.get(at);
            if (now.reference() < before.reference() || now.other() < before.other()) {
                throw new IllegalArgumentException(
                        "look at " + now + " has fewer values than " + before);
            }
            double freedom = (double) now.reference() + now.other() - 2;
            looks.add(new Look(now, information(now), freedom, information(planned.get(at))));
            before = now;
        }
        return new Schedule(Design.INDEPENDENT, looks);
    }

    private static double information(Arms arms) {
        double total = (double) arms.reference() + arms.other();
        return arms.reference() * (double) arms.other() / total;
    }

    /** The last look. */
    public Look last() {
        return looks.get(looks.size() - 1);
    }

    /**
     * The latest look these counts of values allow.
     *
     * @return its index, or -1 before the first look
     */
    public int reached(int reference, int other) {
        int reached = -1;
        while (reached + 1 < looks.size()
                && looks.get(reached + 1).arms().reference() <= reference
                && looks.get(reached + 1).arms().other() <= other) {
            reached++;
        }
        return reached;
    }

    private static List<Integer> everyFrom(int fewest, int most) {
        if (fewest < 2 || most < fewest) {
            throw new IllegalArgumentException(
                    "looks from "
                            + fewest
                            + " to "
                            + most
                            + ": fewest must be at least 2 and most at least fewest");
        }
        return IntStream.rangeClosed(fewest, most).boxed().toList();
    }
}
