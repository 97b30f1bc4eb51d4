package rigside.analysis;

import java.util.Optional;
import rigside.decide.Verdict;

/**
 * What to do next for one question, in plain English.
 *
 * @param wording the comparison's words
 * @param n values so far, as the plan counts them
 */
record Advice(Wording wording, int n) {

    /** A chance from which on settling is called likely, and below which unlikely: convention. */
    private static final double LIKELY = 0.5;

    private static final double UNLIKELY = 0.2;

    String next(
            Verdict verdict,
            boolean planUsedUp,
            boolean atResolution,
            boolean unresolved,
            Optional<Outlook> outlook) {
        if (verdict.settled()) {
            return "Enough repeats for this question.";
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
            return "The plan is used up. Going on would break its promise; a new plan would need"
                    + " donnings of its own.";
        }
        if (verdict == Verdict.TOO_FEW_ROUNDS) {
            int lacking = Math.max(1, wording.setting().plan().fewest() - n);
            return "Not settled yet: " + wording.units(lacking) + " more until the first look.";
        }
        return "Not settled yet: " + outlook.map(this::hope).orElse("go on") + ".";
    }

    private String hope(Outlook outlook) {
        if (outlook.settlesWithinPlan() < UNLIKELY || outlook.median().isEmpty()) {
            return "it is unlikely ("
                    + Figures.percent(outlook.settlesWithinPlan())
                    + ") that the "
                    + wording.units(wording.setting().plan().most() - n)
                    + " left in the plan settle it";
        }
        int median = outlook.median().getAsInt();
        String sure = outlook.settlesWithinPlan() >= LIKELY ? "likely" : "less than likely";
        String range =
                outlook.low().isPresent() && outlook.high().isPresent()
                        ? " (" + outlook.low().getAsInt() + " to " + outlook.high().getAsInt() + ")"
                        : "";
        String chance =
                "to settle it within the plan ("
                        + Figures.percent(outlook.settlesWithinPlan())
                        + ")";
        return median == 1 && wording.setting().isPaired()
                ? "another round (one donning of each) is " + sure + " " + chance
                : "about " + wording.units(median) + " more" + range + ", " + sure + " " + chance;
    }
}
