package rigside.analysis;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One piece a donning's value is made of: an exercise's fit factor, one trial's time, one
 * exercise's peak pressure, one typed number.
 *
 * @param title the exercise's name; "trial 1", "trial 2" for trials
 * @param value on the scale people read, in the measure's unit; empty when it cannot be stated
 * @param bounded whether the counter only bounded it: the value is then what it is at least
 * @param counted whether it enters the donning's value
 * @param level how it stands to the required level, if the protocol names one
 * @param entries the numbers of the entries it comes from
 * @param missing why it has no value; empty when it has one
 */
public record Part(
        String title,
        OptionalDouble value,
        boolean bounded,
        boolean counted,
        Level level,
        List<Integer> entries,
        String missing) {
    public Part {
        entries = List.copyOf(entries);
    }
}
