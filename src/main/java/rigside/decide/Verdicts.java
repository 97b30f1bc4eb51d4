package rigside.decide;

/** The verdict table: the first row that holds. */
public final class Verdicts {
    private Verdicts() {}

    /**
     * What this interval says. A limit exactly on an edge of the band, or on 0, settles nothing; a
     * limit that is NaN gives {@code NOT_SETTLED}.
     *
     * <p>Where one direction matters, a change the other way is no meaningful change, however
     * large.
     */
    public static Verdict of(Interval interval, Band band, Matters matters) {
        double lower = interval.lower();
        double upper = interval.upper();
        // Written so that NaN fails every comparison.
        boolean increase = lower > band.high() && upper >= lower;
        boolean decrease = upper < band.low() && upper >= lower;
        boolean noIncrease = upper < band.high() && upper >= lower;
        boolean noDecrease = lower > band.low() && upper >= lower;
        boolean beyond;
        boolean within;
        switch (matters) {
            case INCREASE -> {
                beyond = increase;
                within = noIncrease;
            }
            case DECREASE -> {
                beyond = decrease;
                within = noDecrease;
            }
            default -> {
                beyond = increase || decrease;
                within = noIncrease && noDecrease;
            }
        }
        if (beyond) {
            return Verdict.MEANINGFUL_DIFFERENCE;
        }
        if (within) {
            return Verdict.NO_MEANINGFUL_DIFFERENCE;
        }
        boolean offZero = (lower > 0 || upper < 0) && upper >= lower;
        return offZero ? Verdict.DIFFERENCE_SIZE_UNSETTLED : Verdict.NOT_SETTLED;
    }
}
