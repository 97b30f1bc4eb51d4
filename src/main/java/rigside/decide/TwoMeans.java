package rigside.decide;

/**
 * The difference of two means of values that share nothing, with variances of their own.
 *
 * <p>Values of one day share what that day did to all of them; where the two means are of different
 * days, that is part of their difference and not of the spread within a day.
 */
public final class TwoMeans {
    private TwoMeans() {}

    /**
     * From the spread within each alone (Welch 1947, Biometrika 34, 28; degrees of freedom of
     * Satterthwaite 1946).
     *
     * @param one values, at least two
     * @param two values, at least two
     * @param confidence in (0, 1)
     * @return the interval of two less one
     * @throws IllegalArgumentException if there are fewer than two values of either
     */
    public static Interval apart(Summary one, Summary two, double confidence) {
        return interval(one, two, confidence, 0, 1);
    }

    /**
     * The same over days: to the variance of each mean comes that of days, taken as the variance of
     * day means. That holds some of the spread within a day too, so the interval is rather too wide
     * than too narrow, and all parts of its variance are above 0, as Satterthwaite's degrees of
     * freedom want it.
     *
     * @param days means of other days under one condition, at least two, none of them of the days
     *     compared
     * @throws IllegalArgumentException if there are fewer than two values or days
     */
    public static Interval overDays(Summary one, Summary two, Summary days, double confidence) {
        if (days.n() < 2) {
            throw new IllegalArgumentException(
                    "a spread of days needs two of them, there are " + days.n());
        }
        return interval(one, two, confidence, 2 * days.sd() * days.sd(), days.n() - 1.0);
    }

    private static Interval interval(
            Summary one, Summary two, double confidence, double ofDays, double freedomOfDays) {
        if (one.n() < 2 || two.n() < 2) {
            throw new IllegalArgumentException(
                    "two means need two values each, there are " + one.n() + " and " + two.n());
        }
        double ofOne = one.standardError() * one.standardError();
        double ofTwo = two.standardError() * two.standardError();
        double variance = ofOne + ofTwo + ofDays;
        double freedom =
                variance > 0
                        ? variance
                                * variance
                                / (ofOne * ofOne / (one.n() - 1)
                                        + ofTwo * ofTwo / (two.n() - 1)
                                        + ofDays * ofDays / freedomOfDays)
                        : Math.min(one.n(), two.n()) - 1.0;
        return new Interval(
                two.mean() - one.mean(),
                Math.sqrt(variance),
                freedom,
                StudentT.upperQuantile((1 - confidence) / 2, Math.max(1, freedom)));
    }
}
