package rigside.analysis;

import rigside.decide.Conclusion;
import rigside.decide.Verdict;
import rigside.protocol.Measure.Compared.Matters;

/** A verdict in words, the same ones in every sentence, table and picture. */
public final class VerdictWords {
    private VerdictWords() {}

    /**
     * As a noun, 30 letters at most: "no meaningful difference", or "no meaningful increase" where
     * only an increase matters.
     *
     * @param matters the direction that matters
     */
    public static String of(Verdict verdict, Matters matters) {
        return switch (verdict) {
            case TOO_FEW_ROUNDS -> "too few repeats";
            case MEANINGFUL_DIFFERENCE -> "a meaningful " + change(matters);
            case NO_MEANINGFUL_DIFFERENCE -> "no meaningful " + change(matters);
            case DIFFERENCE_SIZE_UNSETTLED -> "a difference of unsettled size";
            case NOT_SETTLED -> "not settled";
        };
    }

    /** The same with the way it goes, which alone may be what two conclusions differ in. */
    public static String of(Conclusion conclusion, Matters matters) {
        return switch (conclusion.verdict()) {
            case MEANINGFUL_DIFFERENCE ->
                    conclusion.direction() > 0 ? "a meaningful increase" : "a meaningful decrease";
            default -> of(conclusion.verdict(), matters);
        };
    }

    /** The same at the end of a sentence that gave the numbers. */
    static String clause(Verdict verdict, Matters matters) {
        return verdict == Verdict.DIFFERENCE_SIZE_UNSETTLED
                ? "there is a difference; whether it matters is not settled"
                : of(verdict, matters);
    }

    private static String change(Matters matters) {
        return switch (matters) {
            case EITHER -> "difference";
            case INCREASE -> "increase";
            case DECREASE -> "decrease";
        };
    }
}
