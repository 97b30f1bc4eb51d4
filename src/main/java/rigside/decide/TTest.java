package rigside.decide;

/**
 * An estimate against its standard error: Student's t test of whether the true value is 0. Made for
 * one look; a flag to look at, never a verdict.
 *
 * @param estimate of what is asked
 * @param standardError of the estimate; at least 0
 * @param degreesOfFreedom behind the standard error
 */
public record TTest(double estimate, double standardError, double degreesOfFreedom) {

    /** estimate / standard error; NaN when both are 0. */
    public double t() {
        return estimate / standardError;
    }

    /** Two-sided p; NaN when estimate and standard error are 0. */
    public double p() {
        return 2 * StudentT.upperTail(Math.abs(t()), degreesOfFreedom);
    }

    /** Whether the true value is hardly 0: p below alpha. NaN is not. */
    public boolean flagged(double alpha) {
        return p() < alpha;
    }
}
