package rigside.decide;

import java.util.Optional;

/**
 * What the values up to one look say.
 *
 * @param n pairs used, or values per arm (of the smaller arm when they differ)
 * @param estimate of the difference on the analysis scale, from the values used; NaN when there are
 *     none
 * @param interval empty before the first look
 * @param verdict of this look by itself
 * @param planUsedUp whether this was the last look of the schedule
 * @param atResolution whether the spread seen is below what rounding explains, so that the interval
 *     stands on the rounding and settles nothing
 */
public record Finding(
        int n,
        double estimate,
        Optional<Interval> interval,
        Verdict verdict,
        boolean planUsedUp,
        boolean atResolution) {

    /** The verdict with the direction it claims. */
    public Conclusion conclusion() {
        return Conclusion.of(verdict, estimate);
    }
}
