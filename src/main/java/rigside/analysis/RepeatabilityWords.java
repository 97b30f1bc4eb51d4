package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import rigside.decide.Limits;
import rigside.decide.VarianceParts;
import rigside.measure.Unit;

/** How far one condition spreads, in plain words. */
record RepeatabilityWords(Repeatability of) {

    /**
     * An upper limit beyond so many times its estimate tells nothing: with few donnings and a part
     * that hardly shows it grows without bound. Own judgement.
     */
    private static final double MOST_USEFUL = 100;

    List<String> all() {
        List<String> all = new ArrayList<>();
        if (of.n() == 0) {
            return List.of();
        }
        all.add(mean());
        if (of.untold().isPresent()) {
            all.add(of.untold().get());
        } else if (of.spread().isEmpty()) {
            all.add("How far donnings spread takes two of them at least.");
        } else {
            all.add(spread());
            of.parts().ifPresent(parts -> all.add(parts(parts)));
            all.add(later());
            all.add(expected());
            all.add(
                    "Each of these limits holds by itself, for donnings whose number was fixed"
                            + " beforehand and that spread normally"
                            + (of.isRatio() ? " in their logarithms" : "")
                            + "; nothing is compared, so there is no verdict.");
        }
        return List.copyOf(all);
    }

    private String mean() {
        return (of.isRatio() ? "Geometric mean " : "Mean ")
                + (of.bounded() ? "at least " : "")
                + withUnit(Digits.three(of.mean().orElseThrow()))
                + " over "
                + Phrases.count(of.n(), "donning", "donnings")
                + ".";
    }

    private String spread() {
        Limits limits = of.limits().orElseThrow();
        return "From one donning to the next the value spreads by about "
                + withLimits(of.spread().getAsDouble(), limits, "")
                + (of.isRatio()
                        ? ", as a geometric standard deviation."
                        : ", as a standard deviation.");
    }

    private String parts(VarianceParts parts) {
        String trial =
                "Of that, one trial varies within its donning by about "
                        + withLimits(
                                Math.sqrt(parts.trial()),
                                roots(parts.trialLimits(of.confidence())),
                                "")
                        + ", with "
                        + Digits.two(of.trialsPerDonning()).replaceAll("\\.0$", "")
                        + " trials a donning; ";
        Limits between = roots(parts.donningLimits(of.confidence()));
        return parts.donning() > 0
                ? trial
                        + "putting the mask on anew adds about "
                        + withLimits(Math.sqrt(parts.donning()), between, ", after Satterthwaite")
                        + "."
                : trial
                        + "beyond that nothing is seen of putting the mask on anew (at most about "
                        + size(Scale.of(of.measure()), of.measure().unit(), between.high())
                        + ").";
    }

    private String later() {
        LaterPlan widest = of.later().get(0);
        boolean asFactor = of.isRatio() && SpreadWords.isFactor(Math.log(widest.cautious()));
        List<String> plans = new ArrayList<>();
        for (LaterPlan plan : of.later()) {
            plans.add(
                    change(plan.meaningful(), asFactor)
                            + " ("
                            + change(plan.cautious(), asFactor)
                            + ") with up to "
                            + plan.most()
                            + " rounds");
        }
        return "A later comparison with a condition that spreads alike settles, in "
                + Math.round(10 * LaterPlan.SETTLES)
                + " of 10 cases, a meaningful difference of "
                + Phrases.list(plans)
                + "; in brackets, if the spread is as large as its upper limit.";
    }

    private String expected() {
        List<String> spreads = of.expectedSpreads();
        return "Write into its measure 'expected-spread: "
                + spreads.get(0)
                + "'"
                + (spreads.get(1).equals(spreads.get(0))
                        ? "."
                        : ", or to be cautious 'expected-spread: " + spreads.get(1) + "'.");
    }

    /** A spread with its limits, all of one form. */
    private String withLimits(double spread, Limits limits, String how) {
        if (!(limits.high() <= MOST_USEFUL * spread)) {
            boolean large = of.isRatio() && SpreadWords.isFactor(spread);
            return size(spread, large)
                    + " ("
                    + Phrases.confidence(of.confidence())
                    + " limits: from "
                    + size(limits.low(), large)
                    + ", with no useful one above"
                    + how
                    + ")";
        }
        boolean asFactor = of.isRatio() && SpreadWords.isFactor(limits.high());
        return size(spread, asFactor)
                + " ("
                + Phrases.confidence(of.confidence())
                + " limits "
                + size(limits.low(), asFactor)
                + " to "
                + size(limits.high(), asFactor)
                + how
                + ")";
    }

    private static Limits roots(Limits variances) {
        return new Limits(Math.sqrt(variances.low()), Math.sqrt(variances.high()));
    }

    private String withUnit(String number) {
        return (number + " " + of.measure().unit().symbol()).strip();
    }

    private String size(double size, boolean asFactor) {
        return asFactor
                ? SpreadWords.factor(size)
                : of.isRatio()
                        ? SpreadWords.percentage(size)
                        : size(Scale.DIFFERENCE, of.measure().unit(), size);
    }

    /** A meaningful difference, as people read it. */
    private String change(double read, boolean asFactor) {
        return size(of.isRatio() ? Math.log(read) : read, asFactor);
    }

    /** The spread with its limits, bare numbers on the scale of the analysis. */
    static String technical(Repeatability of, Limits limits) {
        String unit = of.isRatio() ? "" : of.measure().unit().symbol();
        return (of.isRatio() ? "Logarithms of values" : "Values")
                + ", n = "
                + of.n()
                + ": "
                + ("s = " + Digits.three(of.spread().orElseThrow()) + " " + unit).strip()
                + " ("
                + (of.n() - 1)
                + " degrees of freedom), "
                + Phrases.confidence(of.confidence())
                + " limits "
                + Digits.three(limits.low())
                + " to "
                + Digits.three(limits.high())
                + ".";
    }

    /** A size on the scale of the analysis as a protocol takes it. */
    static String size(Scale scale, Unit unit, double size) {
        return SpreadWords.of(scale.isRatio(), unit.symbol(), size);
    }
}
