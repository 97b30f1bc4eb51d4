package rigside.analysis;

import java.util.ArrayList;
import java.util.List;

/** How the spread of one condition is reckoned, in short sentences. */
record StudyMethod(Repeatability of) {

    static List<String> of(Repeatability study) {
        return new StudyMethod(study).all();
    }

    private List<String> all() {
        List<String> method = new ArrayList<>();
        method.add(ValueWords.of(of.measure()));
        if (of.spread().isEmpty()) {
            return List.copyOf(method);
        }
        method.add(spread());
        method.add(
                "Its limits come from the chi-square distribution, exact for values that spread"
                        + " normally there.");
        if (of.parts().isPresent()) {
            method.add(
                    "Trials and donnings are told apart by an analysis of variance: the mean"
                            + " square within donnings is the variance of a trial; what the mean"
                            + " square between donnings has beyond it, over the trials a donning, is"
                            + " that of putting the mask on anew. The limits of the second are rough"
                            + " (Satterthwaite 1946).");
        }
        method.add(later());
        method.add(
                "Flags, each where chance alone does it less than once in "
                        + Math.round(1 / Watched.ALPHA)
                        + " times: far values (Grubbs), straight-line drift over donnings and"
                        + " trials. None ever acts.");
        return List.copyOf(method);
    }

    private String spread() {
        String unit = of.measure().unit().symbol();
        return "Spread: the standard deviation s of the donnings' values"
                + (of.isRatio()
                        ? ", taken of their natural logarithms and read as a ratio."
                        : unit.isEmpty() ? "." : ", in " + unit + ".");
    }

    /** Looks and confidence of the plans are those of {@link LaterPlan}. */
    private static String later() {
        return "A later comparison: two conditions that spread alike, looked at after each round"
                + " from "
                + LaterPlan.FEWEST
                + " on with a repeated "
                + Phrases.confidence(LaterPlan.CONFIDENCE)
                + " confidence interval (Jennison and Turnbull 1989, its error spent after Kim and"
                + " DeMets 1987). In campaigns played by the thousand it settles as often as is"
                + " said, both where nothing differs and where twice the meaningful difference"
                + " does.";
    }
}
