package rigside.analysis;

import rigside.decide.Forecast;
import rigside.decide.Verdict;

/**
 * What to do next for one question, in plain English.
 *
 * @param wording the comparison's words
 * @param rows the values so far
 * @param onward whether further rounds may follow
 */
record Advice(Wording wording, Rows rows, Onward onward) {

    /** A chance of settling below this is called unlikely: convention. */
    private static final double UNLIKELY = 0.2;

    /** Whether the plan will hardly settle what is still open, or not at all. */
    static boolean isUnlikely(Comparison open) {
        return open.forecast().settlesWithinPlan().stream().anyMatch(chance -> chance < UNLIKELY)
                || (open.atResolution() && open.interval().isPresent());
    }

    String next(
            Verdict verdict,
            boolean planUsedUp,
            boolean atResolution,
            boolean unresolved,
            boolean contradicted,
            Forecast forecast) {
        if (verdict.settled()) {
            return contradicted
                    ? "No further repeat under this plan can help. Take the question as open, and"
                            + " ask it again by a new plan with donnings of its own."
                    : "Enough repeats for this question.";
        }
        if (unresolved) {
            return "The counter cannot resolve the fit factor: use more ambient particles or sample"
                    + " longer; repeats alone will not settle it.";
        }
        if (atResolution) {
            return "The values differ by no more than their last digit can show: read them finer;"
                    + " repeats alone will not settle it.";
        }
        if (planUsedUp) {
            return "The plan is used up, and going on under it the "
                    + Phrases.confidence(wording.setting().plan().confidence())
                    + " would no longer be true."
                    + needed(forecast);
        }
        if (onward != Onward.OPEN) {
            return over(verdict, forecast);
        }
        String first =
                verdict == Verdict.TOO_FEW_ROUNDS
                        ? "Too early to say, the first look comes after " + lacking().more()
                        : "Not settled yet";
        return first + (forecast.settlesWithinPlan().isPresent() ? hope(forecast) : ".");
    }

    /** There is nothing left to do under this plan. */
    private String over(Verdict verdict, Forecast forecast) {
        if (verdict == Verdict.TOO_FEW_ROUNDS) {
            return "No verdict: " + lacking().soFar() + ".";
        }
        return unsettled() + (forecast.needed().isPresent() ? needed(forecast) : "");
    }

    private String unsettled() {
        if (onward == Onward.DAMAGED) {
            return "Not settled, and this session cannot be gone on with.";
        }
        return wording.setting().compared().decides()
                ? "The repeats were ended before it was settled."
                : "It was not to decide when to stop, and the repeats ended before it was"
                        + " settled.";
    }

    private String hope(Forecast forecast) {
        double chance = forecast.settlesWithinPlan().getAsDouble();
        String withinPlan = Digits.chance(chance);
        if (forecast.median().isEmpty()) {
            return "; it is "
                    + (chance < UNLIKELY ? "unlikely" : "uncertain")
                    + " ("
                    + withinPlan
                    + ") that the plan settles it."
                    + (lacking().n() < wording.setting().plan().fewest() ? "" : needed(forecast));
        }
        int median = forecast.median().getAsInt();
        if (median == 1 && wording.setting().isPaired()) {
            return ": another round (one donning of each) settles it with a chance of "
                    + Digits.chance(forecast.nextLook().getAsDouble())
                    + ", the whole plan with "
                    + withinPlan
                    + ".";
        }
        return ": about "
                + wording.more(median)
                + (wording.steps(median) == 1 ? " is" : " are")
                + " needed"
                + range(forecast)
                + "; the chance to settle it within the plan is "
                + withinPlan
                + ".";
    }

    private Lacking lacking() {
        return new Lacking(wording, rows);
    }

    /** The tenth and the ninetieth percentile as what they are. */
    private String range(Forecast forecast) {
        if (forecast.low().isEmpty()) {
            return "";
        }
        int low = wording.steps(forecast.low().getAsInt());
        if (forecast.high().isEmpty()) {
            return " (in 9 of 10 cases at least " + low + ")";
        }
        int high = wording.steps(forecast.high().getAsInt());
        return low == high ? "" : " (in 8 of 10 cases between " + low + " and " + high + ")";
    }

    private String needed(Forecast forecast) {
        return forecast.needed().isPresent()
                ? " If change and spread are really as seen, a new plan with donnings of its own"
                        + " settles it in 8 of 10 cases with "
                        + wording.units(forecast.needed().getAsInt())
                        + "."
                : " Another question, or values that spread less, would be needed.";
    }
}
