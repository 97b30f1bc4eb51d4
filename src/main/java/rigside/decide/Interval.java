package rigside.decide;

/**
 * An interval for a difference, on the analysis scale: estimate &plusmn; critical standard errors.
 *
 * @param estimate of the difference, other minus reference
 * @param standardError of the estimate; at least 0
 * @param degreesOfFreedom behind the standard error
 * @param critical the multiple of the standard error on each side
 */
public record Interval(
        double estimate, double standardError, double degreesOfFreedom, double critical) {

    /** The lower limit. */
    public double lower() {
        return estimate - critical * standardError;
    }

    /** The upper limit. */
    public double upper() {
        return estimate + critical * standardError;
    }
}
