package rigside.archive;

import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import rigside.analysis.Standing;

/**
 * A session with the values of its donnings.
 *
 * @param session the session
 * @param values measure by measure in the protocol's order, each in the order the donnings were
 *     begun; empty while the session is open, since they may be concealed
 */
public record WithValues(Archived session, List<Value> values) {
    public WithValues {
        values = List.copyOf(values);
        if (!session.closed() && !values.isEmpty()) {
            throw new IllegalArgumentException("values of a session that is not closed");
        }
    }

    /**
     * One measure in one donning.
     *
     * @param measure the measure's id
     * @param condition the id of the condition worn
     * @param donning the donning's number in the session, from 1
     * @param round the round it belongs to, from 1
     * @param worn when the donning was begun, by the wall clock; for a form, when it was typed in
     * @param wornBefore how often the piece had been put on before: what the protocol says, and the
     *     earlier times in this session, under whatever condition
     * @param standing what becomes of the value
     * @param number on the scale people read, in the measure's unit; a lower bound where {@code
     *     bounded}; empty when it cannot be stated
     * @param halved the same with what the counter only bounded at half its penetration; equal to
     *     {@code number} where nothing is bounded
     * @param bounded whether the counter only bounded it, in whole or in part
     * @param unresolved whether the counter resolved none of its exercises
     */
    public record Value(
            String measure,
            String condition,
            int donning,
            int round,
            Instant worn,
            int wornBefore,
            Standing standing,
            OptionalDouble number,
            OptionalDouble halved,
            boolean bounded,
            boolean unresolved) {
        /** Whether it enters comparisons. */
        public boolean counts() {
            return standing == Standing.COUNTS;
        }
    }
}
