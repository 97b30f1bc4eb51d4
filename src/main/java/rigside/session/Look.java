package rigside.session;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What was concluded after a complete round, in plain numbers, so that a resumed session goes on by
 * it whatever version reads it.
 *
 * @param round how many rounds were complete
 * @param enough whether every deciding measure has settled
 * @param planUsedUp whether the plan allows no further round
 * @param lines one for each comparison
 */
public record Look(int round, boolean enough, boolean planUsedUp, List<Line> lines) {
    public Look {
        lines = List.copyOf(lines);
    }

    /**
     * One comparison at this look.
     *
     * @param measure the measure's id
     * @param condition the id of the condition compared with the reference
     * @param n rounds (values per condition when independent) used
     * @param entries the numbers of the entries used
     * @param estimate the estimated change on the scale people read: a ratio, or a difference in
     *     the measure's unit
     * @param low lower end of the interval on that scale; empty when there is none yet
     * @param high upper end of the interval on that scale; empty when there is none yet
     * @param critical the critical value used; empty when there is none yet
     * @param verdict the verdict's word
     * @param settled whether the verdict settles the question
     */
    public record Line(
            String measure,
            String condition,
            int n,
            List<Integer> entries,
            OptionalDouble estimate,
            OptionalDouble low,
            OptionalDouble high,
            OptionalDouble critical,
            String verdict,
            boolean settled) {
        public Line {
            entries = List.copyOf(entries);
        }
    }
}
