package rigside.analysis;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.measure.Counted;

/**
 * One measure in one donning.
 *
 * @param donning the donning's number in the session
 * @param round the round it belongs to
 * @param condition the id of the condition worn
 * @param standing what becomes of the value
 * @param value on the scale people read, in the measure's unit; a lower bound where {@code
 *     bounded}; empty when it cannot be stated, or is concealed
 * @param halved the same with what is bounded at half its penetration; equal to {@code value} where
 *     nothing is bounded
 * @param resolution what one step of its readings changes it by, on the analysis scale; 0 when
 *     nothing is known of one, or the value is concealed
 * @param bounded whether the counter only bounded it, in whole or in part
 * @param unresolved whether every exercise was at or below the detection limit
 * @param level how it stands to the level the protocol requires, by the protocol's rule
 * @param parts what it is made of, in the order of the procedure
 * @param entries the numbers of all entries used
 * @param missing what is missing and why, each in words; empty when complete
 * @param counting what counting particles alone leaves open of a fit factor, with 95 % confidence;
 *     empty where the volume sampled is not known
 */
public record DonningValue(
        int donning,
        int round,
        String condition,
        Standing standing,
        OptionalDouble value,
        OptionalDouble halved,
        double resolution,
        boolean bounded,
        boolean unresolved,
        Level level,
        List<Part> parts,
        List<Integer> entries,
        List<String> missing,
        Optional<Counted.Limits> counting) {

    /** A value that is not counted. */
    DonningValue(
            int donning,
            int round,
            String condition,
            Standing standing,
            OptionalDouble value,
            OptionalDouble halved,
            double resolution,
            boolean bounded,
            boolean unresolved,
            Level level,
            List<Part> parts,
            List<Integer> entries,
            List<String> missing) {
        this(
                donning,
                round,
                condition,
                standing,
                value,
                halved,
                resolution,
                bounded,
                unresolved,
                level,
                parts,
                entries,
                missing,
                Optional.empty());
    }

    public DonningValue {
        parts = List.copyOf(parts);
        entries = List.copyOf(entries);
        missing = List.copyOf(missing);
    }

    /** Whether the value enters the comparisons. */
    public boolean counts() {
        return standing == Standing.COUNTS;
    }

    /** The same without what is concealed. */
    DonningValue shown(boolean withValue, boolean withParts) {
        return new DonningValue(
                donning,
                round,
                condition,
                standing,
                withValue ? value : OptionalDouble.empty(),
                withValue ? halved : OptionalDouble.empty(),
                withValue ? resolution : 0,
                withValue && bounded,
                withValue && unresolved,
                withValue ? level : Level.NONE,
                withParts ? parts : List.of(),
                entries,
                missing,
                withValue ? counting : Optional.empty());
    }
}
