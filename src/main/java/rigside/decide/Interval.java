package rigside.decide;

/**
 * An interval for a difference, on the analysis scale: estimate &plusmn; critical standard errors,
 * and what rounding may have shifted the estimate by.
 *
 * @param estimate of the difference, other minus reference
 * @param standardError of the estimate; at least 0
 * @param degreesOfFreedom behind the standard error
 * @param critical the multiple of the standard error on each side
 * @param shift added on each side, for values too coarse for their spread; mostly 0
 */
public record Interval(
        double estimate,
        double standardError,
        double degreesOfFreedom,
        double critical,
        double shift) {

    /** An interval of values whose rounding does not matter. */
    public Interval(
            double estimate, double standardError, double degreesOfFreedom, double critical) {
        this(estimate, standardError, degreesOfFreedom, critical, 0);
    }

    /** The lower limit. */
    public double lower() {
        return estimate - critical * standardError - shift;
    }

    /** The upper limit. */
    public double upper() {
        return estimate + critical * standardError + shift;
    }
}
