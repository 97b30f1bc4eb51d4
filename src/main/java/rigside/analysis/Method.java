package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import rigside.protocol.Measure;
import rigside.protocol.Plan;

/**
 * How the comparisons of one measure are reckoned, in short sentences.
 *
 * @param setting what was fixed beforehand
 * @param values of the measure, one a donning
 * @param comparisons of the measure
 * @param changed ways to take back what was struck out or amended after a look; may be empty
 */
record Method(
        Setting setting,
        List<DonningValue> values,
        List<Comparison> comparisons,
        List<Evidence> changed) {

    List<String> all() {
        List<String> method = new ArrayList<>();
        method.add(ValueWords.of(setting.measure()));
        method.add(design());
        method.add(
                "Interval: estimate plus or minus c standard errors, a repeated confidence interval"
                        + " (Jennison and Turnbull 1989).");
        method.add(
                "c is larger than for a single look, so that in "
                        + Phrases.confidence(setting.plan().confidence())
                        + " of all such plans every interval from first to last holds the true"
                        + " change: one may look after every round and stop at any.");
        method.add(spending());
        method.add(
                "c is calculated for Student's t with these few degrees of freedom, not borrowed"
                        + " from the normal distribution.");
        method.add(sharing());
        method.add("No ordinary p is given: it holds for one look only, and here one looks often.");
        method.add(band());
        method.add("A verdict once reached stays; a later look that contradicts it is shown.");
        handled(method);
        method.add(
                "Forecast: ten thousand campaigns played on under the same rules, true mean and"
                        + " spread drawn from what the values so far say of them (no prior"
                        + " knowledge).");
        method.add(
                "Of these campaigns half need no more repeats than the number given, 8 of 10 a"
                        + " number in the range beside it. With too few values to see a spread the"
                        + " protocol's expected spread is used; without one there is no forecast.");
        if (setting.measure().kind() instanceof Measure.TimedInhalation) {
            KindOfRepeat.of(setting, values).ifPresent(each -> method.add(each.components()));
        }
        method.add(flags());
        return List.copyOf(method);
    }

    private String design() {
        Plan plan = setting.plan();
        String scale =
                setting.scale().isRatio()
                        ? "on the scale of natural logarithms, so that differences are ratios"
                        : "as differences" + unit();
        if (setting.isPaired()) {
            return "Design: each round gives one difference, condition less reference, "
                    + scale
                    + "; the interval is that of their mean, after "
                    + plan.fewest()
                    + " to "
                    + plan.most()
                    + " complete rounds.";
        }
        return "Design: each "
                + (setting.isByTrial() ? "trial" : "donning")
                + " is a value of its own, compared "
                + scale
                + "; two samples with pooled spread, from "
                + plan.fewest()
                + " to "
                + plan.most()
                + " values per condition.";
    }

    private String unit() {
        String symbol = setting.measure().unit().symbol();
        return symbol.isEmpty() ? "" : " in " + symbol;
    }

    private String spending() {
        String power = Digits.three(setting.plan().exponent()).replaceAll("\\.?0+$", "");
        return "The error is spent as the share of the plan that is done to the power "
                + power
                + " (Kim and DeMets 1987); what has accrued by the first look is spent there.";
    }

    private String sharing() {
        String error = Phrases.confidence(1 - setting.plan().confidence());
        return setting.sharing() > 1
                ? "The error of "
                        + error
                        + " is shared equally by "
                        + Phrases.all(setting.sharing(), "comparisons")
                        + " (Bonferroni), "
                        + Phrases.error(setting.alpha())
                        + " each."
                : "The error of " + error + " is for this comparison alone.";
    }

    private String band() {
        Wording wording = new Wording(setting, "", "");
        String low = wording.ofScale(Digits.three(setting.band().low()));
        String high = wording.ofScale(Digits.three(setting.band().high()));
        String half = Phrases.confidence(setting.alpha() / 2);
        return switch (setting.compared().matters()) {
            case EITHER ->
                    "Too small to matter: from "
                            + low
                            + " to "
                            + high
                            + ", declared beforehand. Wholly beyond it the interval shows a"
                            + " meaningful difference, wholly inside it no meaningful difference.";
            case INCREASE ->
                    "Only an increase matters: above "
                            + high
                            + " the interval shows one, below "
                            + high
                            + " none. The c of both directions is kept, so each wrong claim has at"
                            + " most "
                            + half
                            + ".";
            case DECREASE ->
                    "Only a decrease matters: below "
                            + low
                            + " the interval shows one, above "
                            + low
                            + " none. The c of both directions is kept, so each wrong claim has at"
                            + " most "
                            + half
                            + ".";
        };
    }

    /** What is out of the ordinary here, and how it is met. */
    private void handled(List<String> method) {
        if (values.stream().anyMatch(each -> each.counts() && each.bounded())) {
            method.add(
                    "A mask concentration at or below the detection limit bounds the fit factor: it"
                            + " is analysed as stated and at half that penetration (a convention),"
                            + " and a verdict needs both to agree.");
        }
        if (changed.stream().anyMatch(Evidence::hasStruck)) {
            method.add(
                    "What was struck out after a look is analysed both ways, left out and taken"
                            + " back in, all of it and piece by piece; a verdict needs all to agree.");
        }
        if (changed.stream().anyMatch(each -> !each.unamended().isEmpty())) {
            method.add(
                    "What was amended after a look is analysed both ways, as amended and as that"
                            + " look had it, all of it and piece by piece; a verdict needs all to"
                            + " agree: "
                            + String.join("; ", AmendedWords.all(changed))
                            + ".");
        }
        if (comparisons.stream().anyMatch(Comparison::atResolution)) {
            method.add(
                    "A spread below what rounding explains (one step of the reading over the square"
                            + " root of 12) is taken as that, and settles nothing; below twice that"
                            + " a step is added on each side of the interval, since all values may"
                            + " be off the same way.");
        }
    }

    private static String flags() {
        return "Flags, each where chance alone does it less than once in "
                + Math.round(1 / Watched.ALPHA)
                + " times: far values (Grubbs), straight-line drift over rounds and trials, spread"
                + " (Pitman and Morgan in pairs, else F), order within rounds. None ever acts.";
    }
}
