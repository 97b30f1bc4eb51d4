package rigside.decide;

/**
 * What a look concludes: a verdict alone does not say which way a difference goes.
 *
 * @param verdict of the look
 * @param direction of the difference the verdict claims: 1 an increase, -1 a decrease; 0 where it
 *     claims none
 */
public record Conclusion(Verdict verdict, int direction) {

    /**
     * What this verdict concludes from this estimate.
     *
     * @param estimate of the difference on the analysis scale
     */
    public static Conclusion of(Verdict verdict, double estimate) {
        return new Conclusion(
                verdict,
                switch (verdict) {
                    case MEANINGFUL_DIFFERENCE, DIFFERENCE_SIZE_UNSETTLED ->
                            (int) Math.signum(estimate);
                    case TOO_FEW_ROUNDS, NO_MEANINGFUL_DIFFERENCE, NOT_SETTLED -> 0;
                });
    }
}
