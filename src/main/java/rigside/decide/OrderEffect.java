package rigside.decide;

/**
 * Whether what comes second in a round differs from what comes first, whichever condition it is:
 * the period effect of the two-period change-over design (Hills and Armitage 1979, The two-period
 * cross-over clinical trial; from memory).
 */
public final class OrderEffect {
    private OrderEffect() {}

    /**
     * Second minus first, freed of the difference between the conditions: half the difference of
     * the mean differences of the two orders, with the pooled two-sample t test.
     *
     * <p>A round in which the reference came first has the condition's difference plus the order's,
     * the other rounds have it minus the order's.
     *
     * @param referenceFirst differences, other minus reference, of rounds with the reference first
     * @param otherFirst the same of rounds with the other condition first
     * @param leastSpread the standard deviation that rounding alone gives a difference; the pooled
     *     one is taken as no smaller
     * @throws IllegalArgumentException unless both orders were used, three rounds in all at least
     */
    public static TTest of(double[] referenceFirst, double[] otherFirst, double leastSpread) {
        if (referenceFirst.length == 0
                || otherFirst.length == 0
                || referenceFirst.length + otherFirst.length < 3) {
            throw new IllegalArgumentException(
                    "an order effect needs both orders and three rounds, there are "
                            + referenceFirst.length
                            + " and "
                            + otherFirst.length);
        }
        Sample sample = Sample.of(otherFirst, referenceFirst);
        return new TTest(
                sample.estimate() / 2,
                Math.max(sample.spread(), leastSpread) / Math.sqrt(sample.information()) / 2,
                sample.degreesOfFreedom());
    }
}
